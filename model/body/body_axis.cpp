#include "model/body/body_axis.hpp"

#include <Eigen/Dense>

#include "model/body/square_ends.hpp"
#include "model/body/used_vertices.hpp"

namespace wrapgauge {
namespace {

struct FaceArea {
  Vec3 centre, normal;  // unit normal; zero without area
  double area = 0.0;
};

FaceArea face_area(const TriangleMesh& surface, int f) {
  const Vec3 a = surface.vertices_m.row(surface.faces(f, 0)), b = surface.vertices_m.row(surface.faces(f, 1)),
             c = surface.vertices_m.row(surface.faces(f, 2));
  const Vec3 cross = (b - a).cross(c - a);
  const double twice = cross.norm();
  return {(a + b + c) / 3.0, twice > 0.0 ? Vec3(cross / twice) : Vec3(Vec3::Zero()), 0.5 * twice};
}

double extent(const Points3& points, const Vec3& direction) {
  const Eigen::VectorXd along = points * direction;
  return along.maxCoeff() - along.minCoeff();
}

Vec3 direction_avoided_by_normals(const TriangleMesh& surface) {
  Mat3 spread = Mat3::Zero();
  for (int f = 0; f < surface.faces.rows(); ++f) {
    const FaceArea face = face_area(surface, f);
    spread += face.area * face.normal * face.normal.transpose();
  }
  const Eigen::SelfAdjointEigenSolver<Mat3> solver(spread);
  return solver.eigenvectors().col(0).normalized();
}

}  // namespace

Vec3 find_axis_direction(const TriangleMesh& surface) {
  const std::optional<Vec3> across_ends = direction_across_ends(surface);
  const Vec3 direction = across_ends ? *across_ends : direction_avoided_by_normals(surface);
  Eigen::Index largest = 0;
  direction.cwiseAbs().maxCoeff(&largest);
  return direction[largest] < 0.0 ? Vec3(-direction) : direction;
}

Axis place_axis(const TriangleMesh& surface, const Vec3& direction) {
  Vec3 centroid = Vec3::Zero();
  double area = 0.0;
  // From a near point, so that bodies far from the origin lose no digits.
  const Vec3 near = surface.vertices_m.row(0);
  for (int f = 0; f < surface.faces.rows(); ++f) {
    const FaceArea face = face_area(surface, f);
    centroid += face.area * (face.centre - near);
    area += face.area;
  }
  if (area > 0.0) centroid /= area;
  centroid += near;
  const double lowest = ((surface.vertices_m.rowwise() - centroid.transpose()) * direction).minCoeff();
  return {centroid + lowest * direction, direction};
}

Vec3 extents_about(const TriangleMesh& surface, const Vec3& axis_direction) {
  const Vec3 across = axis_direction.unitOrthogonal(), other = axis_direction.cross(across);
  const Points3 points =
      surface.vertices_m(used_vertices(surface.faces, surface.vertices_m.rows()), Eigen::all);
  if (points.rows() == 0) return Vec3::Zero();
  const Eigen::VectorXd x = points * across, y = points * other;
  const Eigen::ArrayXd dx = x.array() - x.mean(), dy = y.array() - y.mean();
  const double angle = 0.5 * std::atan2(2.0 * (dx * dy).sum(), (dx * dx).sum() - (dy * dy).sum());
  const Vec3 wide = std::cos(angle) * across + std::sin(angle) * other;
  return {extent(points, axis_direction), extent(points, wide), extent(points, axis_direction.cross(wide))};
}

}  // namespace wrapgauge
