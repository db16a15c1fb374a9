#include "model/contact/plane_cut.hpp"

#include <Eigen/Geometry>
#include <array>
#include <optional>
#include <utility>
#include <vector>

namespace wrapgauge {
namespace {

using Corner3 = std::array<Vec3, 3>;
using Barycentric = std::array<Vec3, 2>;

Corner3 corners(const Points3& points, const Eigen::RowVector3i& face) {
  return {points.row(face[0]), points.row(face[1]), points.row(face[2])};
}

Vec3 heights(const Corner3& corner, const Plane& plane) {
  return {plane.height_m(corner[0]), plane.height_m(corner[1]), plane.height_m(corner[2])};
}

// Weights of the three corners at the two points where the triangle's sides cross height 0.
std::optional<Barycentric> crossing(const Vec3& height) {
  std::vector<Vec3> ends;
  for (int k = 0; k < 3; ++k) {
    const int n = (k + 1) % 3;
    if ((height[k] > 0.0) == (height[n] > 0.0)) continue;
    Vec3 weights = Vec3::Zero();
    weights[n] = height[k] / (height[k] - height[n]);
    weights[k] = 1.0 - weights[n];
    ends.push_back(weights);
  }
  if (ends.size() != 2) return std::nullopt;
  return Barycentric{ends[0], ends[1]};
}

// Weights of the corners of the part of a triangle above height 0, in order round it.
std::vector<Vec3> clipped(const Vec3& height) {
  std::vector<Vec3> part;
  for (int k = 0; k < 3; ++k) {
    const int n = (k + 1) % 3;
    if (height[k] > 0.0) part.push_back(Vec3::Unit(k));
    if ((height[k] > 0.0) == (height[n] > 0.0)) continue;
    Vec3 weights = Vec3::Zero();
    weights[n] = height[k] / (height[k] - height[n]);
    weights[k] = 1.0 - weights[n];
    part.push_back(weights);
  }
  return part;
}

Vec3 at(const Corner3& corner, const Vec3& weights) {
  return weights[0] * corner[0] + weights[1] * corner[1] + weights[2] * corner[2];
}

// Force of the other half on the half above, across one sheet triangle.
Vec3 tension_of_triangle(const Corner3& rest, const Vec3& height,
                         const Eigen::Matrix<double, 3, 2>& nominal_n_per_m) {
  const auto cut = crossing(height);
  if (!cut) return Vec3::Zero();
  const Vec3 line = at(rest, (*cut)[1]) - at(rest, (*cut)[0]);
  Vec2 outward(line[1], -line[0]);  // length of the cut times its rest normal
  int above = 0;
  height.maxCoeff(&above);
  const Vec3 to_above = rest[above] - at(rest, (*cut)[0]);
  if (outward.dot(to_above.head<2>()) > 0.0) outward = -outward;
  return nominal_n_per_m * outward;
}

// Twice the plane area that a wall triangle of the cavity adds to the cross-section, seen from
// `plane.point_m`.
double section_part_m2(const Corner3& corner, const Plane& plane) {
  const auto cut = crossing(heights(corner, plane));
  if (!cut) return 0.0;
  Vec3 from = at(corner, (*cut)[0]) - plane.point_m, to = at(corner, (*cut)[1]) - plane.point_m;
  const Vec3 wall_normal = (corner[1] - corner[0]).cross(corner[2] - corner[0]);
  if ((to - from).dot(plane.normal.cross(wall_normal)) < 0.0) std::swap(from, to);
  return from.cross(to).dot(plane.normal);
}

}  // namespace

Vec3 traction_on_half_n(const TriangleMesh& surface, const Points3& traction_pa, const Plane& plane) {
  Vec3 force = Vec3::Zero();
  for (Eigen::Index t = 0; t < surface.faces.rows(); ++t) {
    const Corner3 corner = corners(surface.vertices_m, surface.faces.row(t));
    const Corner3 traction = corners(traction_pa, surface.faces.row(t));
    const std::vector<Vec3> part = clipped(heights(corner, plane));
    for (std::size_t k = 2; k < part.size(); ++k) {
      const Vec3 a = at(corner, part[0]), b = at(corner, part[k - 1]), c = at(corner, part[k]);
      const Vec3 weights = (part[0] + part[k - 1] + part[k]) / 3.0;
      force += 0.5 * (b - a).cross(c - a).norm() * at(traction, weights);
    }
  }
  return force;
}

Vec3 tension_across_n(const FlatMesh& flat, const SheetMesh& sheet, const SheetStress& stress,
                      const Points3& positions_m, const Plane& plane) {
  Vec3 force = Vec3::Zero();
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t) {
    Corner3 rest;
    for (int k = 0; k < 3; ++k) {
      const Vec2 point = flat.vertices_m.row(sheet.flat_vertex[sheet.triangles(t, k)]);
      rest[k] = Vec3(point[0], point[1], 0.0);
    }
    const Vec3 height = heights(corners(positions_m, sheet.triangles.row(t)), plane);
    force += tension_of_triangle(rest, height, stress.nominal_tension_n_per_m.middleCols<2>(2 * t));
  }
  return force;
}

Vec3 bending_across_n(const Points3& forces_n, const Points3& positions_m, const Plane& plane) {
  Vec3 force = Vec3::Zero();
  for (Eigen::Index node = 0; node < forces_n.rows(); ++node)
    if (plane.height_m(positions_m.row(node)) > 0.0) force += forces_n.row(node).transpose();
  return force;
}

Vec3 cavity_push_n(const SheetMesh& sheet, const EquilibriumState& state, const Plane& plane) {
  double push = 0.0;
  for (std::size_t g = 0; g < sheet.cavities.size(); ++g) {
    double twice_area = 0.0;
    for (const int t : sheet.cavities[g].outer_triangles)
      twice_area += section_part_m2(corners(state.positions_m, sheet.triangles.row(t)), plane);
    for (const int t : sheet.cavities[g].skin_triangles) {
      Corner3 corner = corners(state.positions_m, sheet.triangles.row(t));
      std::swap(corner[1], corner[2]);  // the cavity lies behind the skin sheet
      twice_area += section_part_m2(corner, plane);
    }
    push += 0.5 * twice_area * state.group_pressure_pa[static_cast<Eigen::Index>(g)];
  }
  return push * plane.normal;
}

}  // namespace wrapgauge
