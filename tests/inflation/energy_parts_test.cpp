// Each energy by itself: gradient and Hessian against central finite differences, and what projection keeps.
#include <gtest/gtest.h>

#include <Eigen/Dense>

#include "model/inflation/cavity.hpp"
#include "model/inflation/membrane.hpp"
#include "model/inflation/tissue_contact.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

using Mat66 = Eigen::Matrix<double, 6, 6>;
using Vec6 = Eigen::Matrix<double, 6, 1>;

struct NamedLaw {
  const char* name;
  HyperelasticLaw law;
};
const std::vector<NamedLaw> kLaws = {
    {"neo-Hookean", NeoHookean{30.0 * kPa}},
    {"Mooney-Rivlin", MooneyRivlin{13.0 * kPa, 2.0 * kPa}},
    {"Yeoh", Yeoh{8.0 * kPa, 0.3 * kPa, 0.01 * kPa}},
    {"Ogden", Ogden{{{630.0 * kPa, 1.3}, {1.2 * kPa, 5.0}, {-10.0 * kPa, -2.0}}}}};

// Turned out of its plane and sheared: stretched both ways, one way (the other narrower than free), almost
// equally, and compressed both ways.
std::vector<Mat32> gradients() {
  std::vector<Mat32> all;
  for (const auto& [l1, l2, shear] : std::vector<std::array<double, 3>>{
           {1.6, 1.2, 0.1}, {1.5, 0.7, 0.2}, {1.3, 1.3001, 0.0}, {0.9, 0.8, 0.05}, {2.5, 1.1, 0.4}}) {
    Mat32 f;
    f << l1, shear, -0.3 * l1, 0.2 * l2, 0.1, l2;
    all.push_back(f);
  }
  return all;
}

Mat32 from_vector(const Vec6& v) {
  Mat32 f;
  f << v.head<3>(), v.tail<3>();
  return f;
}
Vec6 as_vector(const Mat32& f) {
  Vec6 v;
  v << f.col(0), f.col(1);
  return v;
}

// dP/dF on (f1; f2).
template <class Tangent>
Mat66 matrix_of(const Tangent& tangent) {
  Mat66 matrix;
  for (int i = 0; i < 2; ++i)
    for (int j = 0; j < 2; ++j)
      matrix.block<3, 3>(3 * i, 3 * j) = tangent.between(Vec2::Unit(i), Vec2::Unit(j));
  return matrix;
}

template <class Response>
void expect_own_derivatives(const Response& response, const Mat32& at, const std::string& what) {
  const auto here = response(at);
  const Mat66 tangent = matrix_of(here.tangent);
  const double step = 1e-6, scale = tangent.cwiseAbs().maxCoeff() + 1.0;
  for (int k = 0; k < 6; ++k) {
    const Vec6 way = step * Vec6::Unit(k);
    const auto up = response(from_vector(as_vector(at) + way)),
               down = response(from_vector(as_vector(at) - way));
    EXPECT_NEAR((up.energy - down.energy) / (2 * step), as_vector(here.stress)(k), 1e-6 * scale) << what;
    const Vec6 column = (as_vector(up.stress) - as_vector(down.stress)) / (2 * step);
    EXPECT_LT((column - tangent.col(k)).lpNorm<Eigen::Infinity>(), 1e-5 * scale) << what;
  }
}

TEST(Membrane, OfEveryLawExactAndRelaxedHasItsOwnDerivatives) {
  for (const NamedLaw& named : kLaws)
    for (const bool relaxed : {false, true})
      for (const Mat32& f : gradients())
        expect_own_derivatives(
            [&](const Mat32& at) {
              return membrane_response(named.law, at, {TangentKind::kExact, relaxed});
            },
            f, std::string(named.name) + (relaxed ? ", relaxed" : ", exact"));
}

TEST(Membrane, RelaxedNeverPushesAndNeverStoresMoreThanTheExactLaw) {
  for (const NamedLaw& named : kLaws)
    for (const Mat32& f : gradients()) {
      const MembraneResponse relaxed = membrane_response(named.law, f, {TangentKind::kNone, true});
      EXPECT_LE(relaxed.energy, membrane_response(named.law, f, {TangentKind::kNone, false}).energy + 1e-9);
      const Mat3 kirchhoff = relaxed.stress * f.transpose();
      const Eigen::SelfAdjointEigenSolver<Mat3> eigen(0.5 * (kirchhoff + kirchhoff.transpose()));
      EXPECT_GT(eigen.eigenvalues()(0), -1e-6 * initial_shear_modulus(named.law).si());
    }
}

TEST(Membrane, ProjectedTangentIsPositiveAndExactWhereThatIs) {
  for (const NamedLaw& named : kLaws)
    for (const Mat32& f : gradients()) {
      const Mat66 exact = matrix_of(membrane_response(named.law, f, {TangentKind::kExact, false}).tangent);
      const Mat66 projected =
          matrix_of(membrane_response(named.law, f, {TangentKind::kProjected, false}).tangent);
      const Eigen::SelfAdjointEigenSolver<Mat66> of_exact(exact), of_projected(projected);
      const double scale = exact.cwiseAbs().maxCoeff();
      EXPECT_GT(of_projected.eigenvalues()(0), -1e-9 * scale);
      if (of_exact.eigenvalues()(0) > 0.0) {
        EXPECT_LT((exact - projected).norm(), 1e-9 * scale);
      }
      // What projection adds is positive.
      const Eigen::SelfAdjointEigenSolver<Mat66> added(projected - exact);
      EXPECT_GT(added.eigenvalues()(0), -1e-9 * scale);
    }
}

TEST(Cloth, HasItsOwnDerivativesAndNeverPushes) {
  for (const Mat32& f : gradients())
    expect_own_derivatives([](const Mat32& at) { return cloth_response(2e4, 5e3, at, true); }, f, "cloth");
  EXPECT_EQ(cloth_response(2e4, 5e3, 0.9 * Mat32::Identity(), true).stress.norm(), 0.0);
}

TEST(CavityShare, HasItsOwnDerivatives) {
  const Vec3 x[3] = {{0.01, 0.02, 0.03}, {0.05, -0.01, 0.02}, {0.02, 0.04, -0.01}};
  const VolumeShare here = volume_share(x[0], x[1], x[2]);
  const double step = 1e-6;
  const auto moved = [&](int corner, int direction, double by) {
    Vec3 y[3] = {x[0], x[1], x[2]};
    y[corner](direction) += by;
    return volume_share(y[0], y[1], y[2]);
  };
  for (int corner = 0; corner < 3; ++corner)
    for (int direction = 0; direction < 3; ++direction) {
      const VolumeShare up = moved(corner, direction, step), down = moved(corner, direction, -step);
      EXPECT_NEAR((up.value - down.value) / (2 * step), here.gradient[corner](direction), 1e-11);
      const auto column = [&](int of) -> Vec3 { return (up.gradient[of] - down.gradient[of]) / (2 * step); };
      if (corner == 0) {
        EXPECT_LT((column(1) - here.block10.col(direction)).norm(), 1e-9);
      }
      if (corner == 0) {
        EXPECT_LT((column(2) - here.block20.col(direction)).norm(), 1e-9);
      }
      if (corner == 1) {
        EXPECT_LT((column(2) - here.block21.col(direction)).norm(), 1e-9);
      }
      EXPECT_LT(column(corner).norm(), 1e-12);
    }
}

void expect_own_derivatives(const std::function<FrictionTerm(const Vec3&)>& term, const Vec3& at) {
  const FrictionTerm here = term(at);
  const double step = 1e-8;
  for (int k = 0; k < 3; ++k) {
    const Vec3 way = step * Vec3::Unit(k);
    const FrictionTerm up = term(at + way), down = term(at - way);
    EXPECT_NEAR((up.energy - down.energy) / (2 * step), here.gradient(k),
                1e-5 * (1e-3 + here.gradient.norm()));
    EXPECT_LT(((up.gradient - down.gradient) / (2 * step) - here.hessian.col(k)).norm(),
              1e-4 * here.hessian.norm());
  }
}

TEST(FrictionEnergy, HasItsOwnDerivativesSlippingAndSticking) {
  const Vec3 normal = Vec3(0.2, -0.1, 1.0).normalized();
  for (double way : {0.3, 0.9, 1.1, 20.0})
    expect_own_derivatives(
        [&](const Vec3& at) {
          return friction_term(at, Vec3::Zero(), normal, 2.0, TissueSettings{}.elastic_slip_m);
        },
        way * TissueSettings{}.elastic_slip_m * Vec3(0.6, 0.5, 0.3));
}

TEST(TissueEnergy, PressedFreeAndGluedHasItsOwnDerivatives) {
  for (const bool glued : {false, true}) {
    InflationSetup setup = small::closed_cuff(0.4);
    setup.layout.rim_bonded = glued;
    const SheetMesh sheet = make_sheet_mesh(setup.flat);
    Points3 start_m(sheet.node_count, 3);
    for (int n = 0; n < sheet.node_count; ++n) start_m.row(n) = setup.start_m.row(sheet.flat_vertex[n]);
    const TissueContact tissue(setup, sheet, {}, start_m);
    const ContactNode& node = tissue.nodes().front();
    for (double pressed_m : {2e-3, -1e-3}) {
      const Vec3 at = node.grip_m - pressed_m * node.normal + 3e-4 * Vec3(0.2, 0.7, 0.5);
      expect_own_derivatives([&](const Vec3& x) { return tissue.term(node, x, false); }, at);
      const Eigen::SelfAdjointEigenSolver<Mat3> projected(tissue.term(node, at, true).hessian);
      EXPECT_GT(projected.eigenvalues()(0), -1e-9 * (1.0 + projected.eigenvalues()(2)));
    }
  }
}

}  // namespace
}  // namespace wrapgauge
