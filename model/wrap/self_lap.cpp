// Finding where a laid layout lies on itself.
#include <Eigen/Geometry>
#include <algorithm>
#include <vector>

#include "model/geometry/nearest_among_points.hpp"
#include "model/wrap/fit_of.hpp"

namespace wrapgauge {
namespace {

// Whether a point lies over a triangle, inside its edges and no further off than `reach_m`.
bool lies_over(const Vec3& point_m, const Vec3& a, const Vec3& b, const Vec3& c, double reach_m) {
  const Vec3 normal = (b - a).cross(c - a), from = point_m - a;
  const double doubled_area = normal.norm();
  if (!(doubled_area > 0.0) || std::abs(from.dot(normal)) > reach_m * doubled_area) return false;
  const double to_c = (b - a).cross(from).dot(normal) / normal.squaredNorm();
  const double to_b = from.cross(c - a).dot(normal) / normal.squaredNorm();
  return to_b > 0.0 && to_c > 0.0 && to_b + to_c < 1.0;
}

double longest_edge_m(const FlatMesh& mesh, const Points3& laid_m) {
  double longest = 0.0;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    for (int side = 0; side < 3; ++side)
      longest = std::max(
          longest,
          (laid_m.row(mesh.triangles(t, side)) - laid_m.row(mesh.triangles(t, (side + 1) % 3))).norm());
  return longest;
}

std::vector<std::vector<int>> triangles_at_vertices(const FlatMesh& mesh) {
  std::vector<std::vector<int>> at(static_cast<std::size_t>(mesh.vertices_m.rows()));
  for (int t = 0; t < mesh.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner)
      at[static_cast<std::size_t>(mesh.triangles(t, corner))].push_back(t);
  return at;
}

// Each triangle's number of other layers over its middle: edges that only meet do not lap.
class Laps {
 public:
  Laps(const FlatMesh& mesh, const Points3& laid_m, double apart_m)
      : mesh_(mesh),
        laid_m_(laid_m),
        apart_m_(apart_m),
        reach_m_(longest_edge_m(mesh, laid_m)),
        points_(laid_m),
        triangles_at_(triangles_at_vertices(mesh)) {}

  int at(int triangle) const {
    const Vec3 place_m = (corner(triangle, 0) + corner(triangle, 1) + corner(triangle, 2)) / 3.0;
    const Eigen::RowVector2d flat_m = mesh_.vertices_m.row(mesh_.triangles(triangle, 0));
    std::vector<int> candidates;
    for (const FoundPoint& found : points_.within(place_m, reach_m_))
      if ((mesh_.vertices_m.row(found.index) - flat_m).norm() > apart_m_)
        for (const int t : triangles_at_[static_cast<std::size_t>(found.index)]) candidates.push_back(t);
    std::sort(candidates.begin(), candidates.end());
    candidates.erase(std::unique(candidates.begin(), candidates.end()), candidates.end());
    return static_cast<int>(std::count_if(candidates.begin(), candidates.end(), [&](int t) {
      return lies_over(place_m, corner(t, 0), corner(t, 1), corner(t, 2), reach_m_);
    }));
  }

 private:
  Vec3 corner(int triangle, int side) const { return laid_m_.row(mesh_.triangles(triangle, side)); }

  const FlatMesh& mesh_;
  const Points3& laid_m_;
  double apart_m_, reach_m_;
  NearestAmongPoints points_;
  std::vector<std::vector<int>> triangles_at_;
};

double flat_area_m2(const FlatMesh& mesh, int triangle) {
  const auto corner = mesh.triangles.row(triangle);
  const Eigen::RowVector2d p = mesh.vertices_m.row(corner[1]) - mesh.vertices_m.row(corner[0]),
                           q = mesh.vertices_m.row(corner[2]) - mesh.vertices_m.row(corner[0]);
  return 0.5 * std::abs(p.x() * q.y() - p.y() * q.x());
}

}  // namespace

std::optional<SelfLap> self_lap(const FlatMesh& mesh, const Points3& laid_m, Length girth) {
  const double apart_m = 0.5 * girth.si();
  const Eigen::RowVector2d extent =
      mesh.vertices_m.colwise().maxCoeff() - mesh.vertices_m.colwise().minCoeff();
  if (extent.norm() <= apart_m) return std::nullopt;
  const Laps laps(mesh, laid_m, apart_m);
  double area_m2 = 0.0;
  int most = 0;
  for (int triangle = 0; triangle < mesh.triangles.rows(); ++triangle) {
    const int others = laps.at(triangle);
    if (others > 0) area_m2 += flat_area_m2(mesh, triangle);
    most = std::max(most, others);
  }
  if (most == 0) return std::nullopt;
  return SelfLap{.layers = 1 + most, .area = Area(area_m2), .station = {}, .girth = girth};
}

}  // namespace wrapgauge
