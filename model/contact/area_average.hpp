#pragma once
// Pressure averaged over 1 cm2: what a fingertip-sized sensor would read, and what limits are stated for.

#include <vector>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// Radius of a 1 cm2 disc: sqrt(1e-4 / pi).
inline constexpr double kSquareCentimetreRadius_m = 5.6418958e-3;

// Points about 1 mm apart on a surface, triangle by triangle, each with its share of the area; pressure is
// linear over a triangle.
struct PressureSample {
  Vec3 point_m = Vec3::Zero();
  double area_m2 = 0.0;
  double pressure_pa = 0.0;
  int triangle = 0;
};
std::vector<PressureSample> pressure_samples(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa,
                                             double spacing_m = 1e-3);

// At each vertex of `surface`: the mean of `pressure_pa` (a vertex each) over the part of it within
// `radius_m` in space, by samples `spacing_m` apart. Beyond the rim there is nothing to average, so the mean
// at the rim is over the part that exists.
Eigen::VectorXd disc_average_pa(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa,
                                double radius_m = kSquareCentimetreRadius_m, double spacing_m = 1e-3);

}  // namespace wrapgauge
