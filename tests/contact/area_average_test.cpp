#include "model/contact/area_average.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

TriangleMesh square(int cells, double side_m) {
  const FlatMesh flat = hand_made::grid(cells, cells, side_m, side_m, {});
  TriangleMesh mesh{Points3::Zero(flat.vertices_m.rows(), 3), flat.triangles};
  mesh.vertices_m.leftCols<2>() = flat.vertices_m;
  return mesh;
}

Eigen::Index vertex_at(const TriangleMesh& mesh, double x, double y) {
  Eigen::Index at = 0;
  (mesh.vertices_m.rowwise() - Eigen::RowVector3d(x, y, 0)).rowwise().norm().minCoeff(&at);
  return at;
}

TEST(PressureSamples, KeepAreaAndForceExactly) {
  const TriangleMesh mesh = square(7, 0.05);
  const Eigen::VectorXd pressure = 1e3 * mesh.vertices_m.col(0).array() / 0.05 + 200.0;
  double area = 0.0, force = 0.0;
  for (const PressureSample& sample : pressure_samples(mesh, pressure)) {
    area += sample.area_m2;
    force += sample.area_m2 * sample.pressure_pa;
  }
  EXPECT_NEAR(area, 25e-4, 1e-15);
  EXPECT_NEAR(force, 25e-4 * 700.0, 1e-10);
}

TEST(DiscAverage, OfALinearPressureIsItsValueInTheMiddle) {
  const TriangleMesh mesh = square(10, 0.05);
  const Eigen::VectorXd pressure = 1e3 * mesh.vertices_m.col(0).array() / 0.05;
  const Eigen::VectorXd average = disc_average_pa(mesh, pressure);
  EXPECT_NEAR(average[vertex_at(mesh, 0.025, 0.025)], 500.0, 2.0);
}

TEST(DiscAverage, OfASmallHatIsItsForceOverOneSquareCentimetre) {
  // A pyramid of pressure over the six triangles around one vertex: volume = P x (area of the hexagon) / 3.
  const TriangleMesh mesh = square(25, 0.05);
  Eigen::VectorXd pressure = Eigen::VectorXd::Zero(mesh.vertices_m.rows());
  const Eigen::Index top = vertex_at(mesh, 0.024, 0.026);
  pressure[top] = 9e3;
  const double force = 9e3 * 6 * (0.5 * 2e-3 * 2e-3) / 3.0;
  const Eigen::VectorXd average = disc_average_pa(mesh, pressure, kSquareCentimetreRadius_m, 2e-4);
  EXPECT_NEAR(average[top], force / 1e-4, 0.01 * force / 1e-4);
}

TEST(DiscAverage, NeverExceedsTheHighestPressure) {
  const TriangleMesh mesh = square(6, 0.03);
  const Eigen::VectorXd pressure = (mesh.vertices_m.col(0).array() * 400.0).sin().square() * 5e3;
  const Eigen::VectorXd average = disc_average_pa(mesh, pressure);
  EXPECT_LE(average.maxCoeff(), pressure.maxCoeff());
  EXPECT_GT(average.minCoeff(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
