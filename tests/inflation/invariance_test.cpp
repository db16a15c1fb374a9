// What must not change the answer: where the job stands, which way round it is drawn, its size with
// everything scaled alike, and the order in which mesh and threads go.
#include <gtest/gtest.h>
#include <tbb/global_control.h>

#include <Eigen/Geometry>
#include <numeric>

#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kFriction = 0.3;

EquilibriumState solved(const InflationSetup& setup, double tolerance = 1e-5) {
  InflationOptions options;
  options.steps = 2;
  options.residual_tolerance = tolerance;
  auto path = inflate(setup, {2.0 * kPa}, options);
  if (path) return path->states.back();
  ADD_FAILURE() << path.problem().message;
  return {};
}

InflationSetup cuff(double friction = kFriction) {
  return small::closed_cuff(friction, 0.010);
}

// Largest difference of contact pressure, against the largest pressure. `other_vertex`: where vertex v of `a`
// is in `b`.
void expect_same_pressure(const EquilibriumState& a, const EquilibriumState& b,
                          const std::vector<int>& other_vertex, double tolerance) {
  ASSERT_EQ(a.contact_pressure_pa.size(), b.contact_pressure_pa.size());
  double worst = 0.0;
  for (Eigen::Index v = 0; v < a.contact_pressure_pa.size(); ++v)
    worst = std::max(worst, std::abs(a.contact_pressure_pa(v) - b.contact_pressure_pa(other_vertex[v])));
  EXPECT_LT(worst, tolerance * a.contact_pressure_pa.maxCoeff());
}

std::vector<int> same_order(const InflationSetup& setup) {
  std::vector<int> order(setup.flat.vertices_m.rows());
  std::iota(order.begin(), order.end(), 0);
  return order;
}

// A body moved by a rigid motion.
class MovedBody : public SignedDistance {
 public:
  MovedBody(std::shared_ptr<const SignedDistance> body, const Eigen::Isometry3d& motion)
      : body_(std::move(body)), motion_(motion) {}
  DistanceSample at(const Vec3& point_m) const override {
    const Mat3 turn = motion_.linear();
    DistanceSample sample = body_->at(motion_.inverse() * point_m);
    sample.gradient = turn * sample.gradient;
    sample.hessian_per_m = turn * sample.hessian_per_m * turn.transpose();
    return sample;
  }

 private:
  std::shared_ptr<const SignedDistance> body_;
  Eigen::Isometry3d motion_;
};

TEST(Answer, DoesNotDependOnWhereBodyAndCuffStand) {
  const InflationSetup setup = cuff();
  InflationSetup moved = setup;
  Eigen::Isometry3d motion = Eigen::Isometry3d::Identity();
  motion.linear() = Eigen::AngleAxisd(0.8, Vec3(1, 2, -0.5).normalized()).toRotationMatrix();
  motion.translation() = Vec3(0.3, -0.2, 0.15);
  moved.body = std::make_shared<MovedBody>(setup.body, motion);
  for (Eigen::Index v = 0; v < setup.start_m.rows(); ++v) {
    moved.start_m.row(v) = (motion * setup.start_m.row(v).transpose()).transpose();
    moved.start_outward.row(v) = (motion.linear() * setup.start_outward.row(v).transpose()).transpose();
  }
  expect_same_pressure(solved(setup), solved(moved), same_order(setup), 1e-3);
}

TEST(Answer, OfTheMirroredLayoutIsTheMirroredAnswer) {
  const InflationSetup setup = cuff();
  InflationSetup mirrored = setup;  // y -> -y in the layout, z -> -z in the world
  mirrored.flat.vertices_m.col(1) *= -1.0;
  mirrored.flat.triangles.col(1).swap(mirrored.flat.triangles.col(2));
  std::reverse(mirrored.flat.closing_from.begin(), mirrored.flat.closing_from.end());
  std::reverse(mirrored.flat.closing_to.begin(), mirrored.flat.closing_to.end());
  for (Vec2& point : mirrored.layout.outline_m) point.y() *= -1.0;
  std::reverse(mirrored.layout.outline_m.begin(), mirrored.layout.outline_m.end());
  mirrored.start_m.col(2) *= -1.0;
  // Mirrored in one more direction, so that the skin sheet still faces the body.
  expect_same_pressure(solved(setup), solved(mirrored), same_order(setup), 1e-3);
}

// Every length twice as large, the same moduli: the same pressures. Friction's elastic slip is a length of
// its own, so without friction. Then nothing but rounding holds the cuff against turning, and two sheets that
// press on each other along the body's normal, not along the line between them, leave a small torque: no
// residual below 1e-4 of the pressure can be had.
TEST(Answer, ScalesWithTheUnitOfLength) {
  const double factor = 2.0;
  const InflationSetup setup = cuff(0.0);
  InflationSetup large = setup;
  large.flat.vertices_m *= factor;
  large.start_m *= factor;
  large.layout.skin_sheet.thickness = factor * setup.layout.skin_sheet.thickness;
  large.layout.outer_sheet.thickness = factor * setup.layout.outer_sheet.thickness;
  large.layout.backing = {factor * setup.layout.backing.along, factor * setup.layout.backing.across};
  large.body = std::make_shared<small::RoundLimb>(factor * 0.030);
  large.foundation_pa_per_m /= factor;
  const double tolerance = 3e-4;
  const EquilibriumState a = solved(setup, tolerance), b = solved(large, tolerance);
  ASSERT_TRUE(a.group_volume_m3.size() == 1 && b.group_volume_m3.size() == 1);
  expect_same_pressure(a, b, same_order(setup), 2e-3);
  EXPECT_NEAR(b.group_volume_m3(0) / a.group_volume_m3(0), std::pow(factor, 3), 0.002 * std::pow(factor, 3));
}

TEST(Answer, DoesNotDependOnTheOrderOfTheMesh) {
  const InflationSetup setup = cuff();
  const Eigen::Index count = setup.flat.vertices_m.rows();
  std::vector<int> place(count);  // a fixed shuffle: v -> (7 v + 3) mod count with the stride prime to count
  int stride = 7;
  while (std::gcd(stride, static_cast<int>(count)) != 1) ++stride;
  for (int v = 0; v < count; ++v) place[v] = static_cast<int>((stride * v + 3) % count);
  InflationSetup shuffled = setup;
  for (int v = 0; v < count; ++v) {
    shuffled.flat.vertices_m.row(place[v]) = setup.flat.vertices_m.row(v);
    shuffled.start_m.row(place[v]) = setup.start_m.row(v);
    shuffled.start_outward.row(place[v]) = setup.start_outward.row(v);
    shuffled.foundation_pa_per_m(place[v]) = setup.foundation_pa_per_m(v);
  }
  const Eigen::Index triangles = setup.flat.triangles.rows();
  for (Eigen::Index t = 0; t < triangles; ++t) {
    for (int k = 0; k < 3; ++k)
      shuffled.flat.triangles(triangles - 1 - t, k) = place[setup.flat.triangles(t, (k + 1) % 3)];
    shuffled.flat.regions[triangles - 1 - t] = setup.flat.regions[t];
  }
  for (int& v : shuffled.flat.closing_from) v = place[v];
  for (int& v : shuffled.flat.closing_to) v = place[v];
  expect_same_pressure(solved(setup), solved(shuffled), place, 1e-3);
}

TEST(Answer, HasTheSameBytesOnOneAndTwoThreads) {
  const auto run = [](std::size_t threads) {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    return solved(cuff());
  };
  const EquilibriumState one = run(1), two = run(2);
  EXPECT_EQ(one.positions_m, two.positions_m);
  EXPECT_EQ(one.contact_pressure_pa, two.contact_pressure_pa);
  EXPECT_EQ(one.contact_force_n, two.contact_force_n);
  EXPECT_EQ(one.group_volume_m3, two.group_volume_m3);
  EXPECT_EQ(one.residual_n, two.residual_n);
}

}  // namespace
}  // namespace wrapgauge
