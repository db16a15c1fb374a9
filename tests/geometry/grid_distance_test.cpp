#include "model/geometry/grid_distance.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <cmath>
#include <numbers>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

// Points spread over a shell |distance| < reach around a sphere or cylinder, always the same ones.
std::vector<Vec3> directions(int count) {
  std::vector<Vec3> result;
  for (int i = 0; i < count; ++i) {  // Fibonacci lattice
    const double z = 1.0 - (2.0 * i + 1.0) / count, turn = 2.399963229728653 * i;
    result.emplace_back(std::sqrt(1 - z * z) * std::cos(turn), std::sqrt(1 - z * z) * std::sin(turn), z);
  }
  return result;
}

struct Errors {
  double value_m = 0.0, gradient = 0.0;
};

Errors sphere_errors(double spacing_m, double radius_m) {
  const auto sphere = [&](const Vec3& p) { return p.norm() - radius_m; };
  const Vec3 corner = Vec3::Constant(0.06);
  const auto grid = make_grid_distance(sphere, -corner, corner, spacing_m * metre);
  EXPECT_TRUE(grid.ok());
  Errors errors;
  for (const Vec3& way : directions(2000)) {
    const auto sample = (*grid)->at(radius_m * way);
    errors.value_m = std::max(errors.value_m, std::abs(sample.distance_m));
    errors.gradient = std::max(errors.gradient, (sample.gradient - way).norm());
  }
  return errors;
}

TEST(GridDistance, ErrorOnASphereFallsWithTheFourthPowerAndItsGradientWithTheThird) {
  const Errors coarse = sphere_errors(0.005, 0.04), fine = sphere_errors(0.0025, 0.04);
  EXPECT_LT(fine.value_m, 1e-7);
  EXPECT_LT(fine.gradient, 1e-3);
  EXPECT_GT(std::log2(coarse.value_m / fine.value_m), 3.5);
  EXPECT_GT(std::log2(coarse.gradient / fine.gradient), 2.5);
}

TEST(GridDistance, OfASphereMeshIsTheSphereWithinItsFacetSag) {
  const double radius = 0.04;
  const TriangleMesh mesh = shapes::sphere(radius, 120, 240);
  const auto grid = make_grid_distance(mesh, Vec3::Constant(-0.05), Vec3::Constant(0.05));
  ASSERT_TRUE(grid.ok());
  const double sag = radius * (1.0 - std::cos(std::numbers::pi / 120));  // across the diagonal of a facet
  for (const Vec3& way : directions(500)) {
    if (std::abs(way.z()) > 0.95) continue;  // slivers at the poles
    for (double offset : {-0.004, 0.0, 0.004}) {
      const auto sample = (*grid)->at((radius + offset) * way);
      EXPECT_NEAR(sample.distance_m, offset, 2.0 * sag);
      EXPECT_LT((sample.gradient - way).norm(), 0.01);
    }
  }
}

TEST(GridDistance, OfAnOpenTubeIsTheCylinderAlsoBeyondItsEnds) {
  const double radius = 0.04;
  const TriangleMesh mesh = shapes::tube(radius, radius, 0.10, 180, 40);
  const auto grid = make_grid_distance(mesh, Vec3(-0.06, -0.06, -0.03), Vec3(0.06, 0.06, 0.13));
  ASSERT_TRUE(grid.ok());
  for (double z : {-0.02, -0.001, 0.0, 0.03, 0.1, 0.12}) {
    for (int i = 0; i < 90; ++i) {
      for (double offset : {-0.006, 0.0, 0.006}) {
        const Vec3 way(std::cos(0.0698 * i), std::sin(0.0698 * i), 0.0);
        const auto sample = (*grid)->at((radius + offset) * way + Vec3(0, 0, z));
        EXPECT_NEAR(sample.distance_m, offset, 4e-5) << "z " << z << " offset " << offset;
        EXPECT_LT((sample.gradient - way).norm(), 0.03);
        EXPECT_NEAR(sample.hessian_per_m.trace(), 1.0 / (radius + offset), 6.0);
      }
    }
  }
}

TEST(GridDistance, OfAPlaneIsExactInsideAndOutsideTheBox) {
  TriangleMesh plane;
  plane.vertices_m.resize(4, 3);
  plane.vertices_m << -1, -1, 0, 1, -1, 0, 1, 1, 0, -1, 1, 0;
  plane.faces.resize(2, 3);
  plane.faces << 0, 1, 2, 0, 2, 3;
  const Eigen::AngleAxisd turn(0.7, Vec3(1, 2, 3).normalized());
  const Vec3 shift(0.01, -0.02, 0.005);
  plane.vertices_m =
      ((turn.toRotationMatrix() * plane.vertices_m.transpose()).colwise() + shift).transpose().eval();
  const Vec3 normal = turn * Vec3::UnitZ();
  const auto grid = make_grid_distance(plane, Vec3::Constant(-0.03), Vec3::Constant(0.03));
  ASSERT_TRUE(grid.ok());
  for (const Vec3& way : directions(300)) {
    for (double reach : {0.01, 0.03, 0.08}) {
      const Vec3 point = reach * way;
      const auto sample = (*grid)->at(point);
      EXPECT_NEAR(sample.distance_m, (point - shift).dot(normal), 1e-9);
      EXPECT_LT((sample.gradient - normal).norm(), 1e-9);
      EXPECT_LT(sample.hessian_per_m.norm(), 1e-7);
    }
  }
}

TEST(GridDistance, GradientAndHessianAreTheDerivativesOfTheValueEvenOutsideTheBox) {
  const auto bumpy = [](const Vec3& p) {
    return p.norm() - 0.03 + 0.002 * std::sin(90 * p.x()) * std::cos(70 * p.z());
  };
  const auto grid = make_grid_distance(bumpy, Vec3::Constant(-0.04), Vec3::Constant(0.04), 3.0 * mm);
  ASSERT_TRUE(grid.ok());
  const double step = 1e-6;
  for (const Vec3& way : directions(200)) {
    for (double reach : {0.031, 0.055}) {
      const Vec3 point = reach * way;
      const auto sample = (*grid)->at(point);
      const bool inside = (point.array().abs() < 0.039).all();
      for (int axis = 0; axis < 3; ++axis) {
        const Vec3 d = step * Vec3::Unit(axis);
        const auto more = (*grid)->at(point + d), less = (*grid)->at(point - d);
        EXPECT_NEAR((more.distance_m - less.distance_m) / (2 * step), sample.gradient[axis], 1e-6);
        if (!inside) continue;
        const Vec3 column = (more.gradient - less.gradient) / (2 * step);
        EXPECT_LT((column - sample.hessian_per_m.col(axis)).norm(), 1e-2);
      }
    }
  }
}

TEST(GridDistance, MovesWithTheBody) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.04, 0.08, 60, 20);
  TriangleMesh moved = mesh;
  const Vec3 shift(0.013, -0.4, 2.0);
  moved.vertices_m.rowwise() += shift.transpose();
  const Vec3 low(-0.05, -0.05, 0.0), high(0.05, 0.05, 0.08);
  const auto here = make_grid_distance(mesh, low, high);
  const auto there = make_grid_distance(moved, low + shift, high + shift);
  ASSERT_TRUE(here.ok() && there.ok());
  for (const Vec3& way : directions(100)) {
    const Vec3 point = 0.03 * way + Vec3(0, 0, 0.04);
    EXPECT_NEAR((*here)->at(point).distance_m, (*there)->at(point + shift).distance_m, 1e-9);
  }
}

TEST(GridDistance, RefusesWhatCannotBeSampledAndSaysWhy) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.04, 0.08, 12, 4);
  const Vec3 low = Vec3::Constant(-0.05), high = Vec3::Constant(0.05);
  const auto says = [](const auto& result, const char* words) {
    ASSERT_FALSE(result.ok());
    EXPECT_NE(result.problem().message.find(words), std::string::npos) << result.problem().message;
  };
  says(make_grid_distance(TriangleMesh{}, low, high), "no faces");
  says(make_grid_distance(mesh, high, low), "box");
  says(make_grid_distance(mesh, low, high, 0.0 * mm), "spacing");
  says(make_grid_distance(mesh, low, high, 0.01 * mm), "million points");
  TriangleMesh broken = mesh;
  broken.faces(0, 0) = 10000;
  says(make_grid_distance(broken, low, high), "vertex 10000");
  broken = mesh;
  broken.vertices_m(0, 0) = std::nan("");
  says(make_grid_distance(broken, low, high), "not a finite");
}

TEST(GridDistance, AnswersAPointThatIsNotANumberWithoutReadingOutsideTheGrid) {
  const auto grid =
      make_grid_distance([](const Vec3& p) { return p.z(); }, Vec3::Constant(-0.05), Vec3::Constant(0.05));
  ASSERT_TRUE(grid.ok());
  EXPECT_TRUE(std::isnan((*grid)->at(Vec3::Constant(std::nan(""))).distance_m));
  EXPECT_NEAR((*grid)->at(Vec3(1e30, 0, 0.01)).distance_m, 0.01, 1e20);
}

}  // namespace
}  // namespace wrapgauge
