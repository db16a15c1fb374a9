#include "model/geometry/geodesic.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <optional>

namespace wrapgauge {

Vec3 GeodesicPath::at(double arc) const {
  if (!(arc > 0.0)) return points_m.front();
  if (arc >= arc_m.back()) return points_m.back();
  const auto after = std::upper_bound(arc_m.begin(), arc_m.end(), arc) - arc_m.begin();
  const double share = (arc - arc_m[after - 1]) / (arc_m[after] - arc_m[after - 1]);
  return points_m[after - 1] + share * (points_m[after] - points_m[after - 1]);
}

GeodesicTracer::GeodesicTracer(const TriangleMesh& mesh)
    : mesh_(mesh), topology_(mesh), normals_(face_normals(mesh)) {}

// Where the path is: a face, the place in it, the direction, and the corner it may not leave opposite of
// because it has just come in there (without this, rounding could send it to and fro across an edge it runs
// along).
struct GeodesicTracer::Walker {
  const GeodesicTracer& tracer;
  int face;
  Vec3 barycentric;
  Vec3 direction;
  int entry_corner = -1;

  Vec3 corner(int which) const { return tracer.mesh_.vertices_m.row(tracer.mesh_.faces(face, which % 3)); }
  Vec3 point() const {
    return barycentric[0] * corner(0) + barycentric[1] * corner(1) + barycentric[2] * corner(2);
  }

  // Change of the barycentric weights a metre along the direction.
  Vec3 rates() const {
    const Vec3 normal = tracer.face_normal(face);
    const double twice_area = (corner(1) - corner(0)).cross(corner(2) - corner(0)).dot(normal);
    Vec3 result;
    for (int i = 0; i < 3; ++i)
      result[i] = normal.cross(corner(i + 2) - corner(i + 1)).dot(direction) / twice_area;
    return result;
  }

  struct Exit {
    double length_m;
    std::optional<int> opposite_corner;  // none: the length ends inside the face
  };
  Exit next_exit(const Vec3& rate, double most_m) const {
    Exit exit{most_m, std::nullopt};
    for (int i = 0; i < 3; ++i) {
      if (i == entry_corner || !(rate[i] < 0.0)) continue;
      const double length = std::max(0.0, -barycentric[i] / rate[i]);
      if (length < exit.length_m) exit = {length, i};
    }
    return exit;
  }

  void advance(const Vec3& rate, const Exit& exit) {
    barycentric = (barycentric + exit.length_m * rate).cwiseMax(0.0);
    if (exit.opposite_corner) barycentric[*exit.opposite_corner] = 0.0;
    barycentric /= barycentric.sum();
  }

  // Into the face across the edge opposite to `opposite`, turning the direction about that edge.
  bool cross(int opposite) {
    const int side = (opposite + 1) % 3;
    const auto partner = tracer.topology_.across(face, side);
    if (!partner) return false;
    const Vec3 edge = (corner(side + 1) - corner(side)).normalized();
    const double along = direction.dot(edge), across = direction.dot(edge.cross(tracer.face_normal(face)));
    Vec3 moved;
    moved[partner->side] = barycentric[(side + 1) % 3];  // the neighbour runs along the edge the other way
    moved[(partner->side + 1) % 3] = barycentric[side];
    moved[(partner->side + 2) % 3] = 0.0;
    face = partner->face;
    barycentric = moved;
    direction = (along * edge + std::max(across, 0.0) * edge.cross(tracer.face_normal(face))).normalized();
    entry_corner = (partner->side + 2) % 3;
    return true;
  }
};

GeodesicPath GeodesicTracer::trace(const SurfacePoint& from, const Vec3& direction, double length_m) const {
  Walker walker{*this, from.face, from.barycentric, direction};
  GeodesicPath path;
  path.points_m = {walker.point()};
  path.arc_m = {0.0};
  const Vec3 normal = face_normal(from.face);
  walker.direction -= walker.direction.dot(normal) * normal;
  double left_m = length_m;
  const bool tangent = walker.direction.norm() > 1e-9 * direction.norm();
  if (tangent) walker.direction.normalize();
  // A long path crosses far fewer faces than this; the bound only stops a path caught by broken input.
  for (long step = 0; tangent && left_m > 0.0 && step < 1000 + 20 * mesh_.faces.rows(); ++step) {
    const Vec3 rate = walker.rates();
    const auto exit = walker.next_exit(rate, left_m);
    walker.advance(rate, exit);
    left_m -= exit.length_m;
    if (path.length_m() + exit.length_m > path.length_m()) {
      path.arc_m.push_back(path.length_m() + exit.length_m);
      path.points_m.push_back(walker.point());
      path.faces.push_back(walker.face);
    }
    if (exit.opposite_corner && !walker.cross(*exit.opposite_corner)) break;
  }
  path.missing_m = std::max(0.0, left_m);
  path.end = {walker.face, walker.barycentric, walker.point(), 0.0};
  path.end_direction = walker.direction;
  return path;
}

}  // namespace wrapgauge
