#pragma once
// Nearest point of a triangle surface, exact to rounding.

#include <memory>
#include <optional>
#include <vector>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// A point on a surface. A barycentric coordinate is exactly 0 when the point lies on the edge opposite to
// that corner, so two zeros mean a vertex.
struct SurfacePoint {
  int face = 0;
  Vec3 barycentric = Vec3::Zero();  // weights of the face's three corners, sum 1
  Vec3 point_m = Vec3::Zero();
  double distance_m = 0.0;  // from the point that was asked for, >= 0
};

// Bounding-box tree over the faces. Building sorts, O(n log n); a query costs about a microsecond near the
// surface. Queries are const and may run from any number of threads. Copies share the tree.
class NearestPoint {
 public:
  // `mesh` has at least one face and its indices are in range; its data is copied.
  explicit NearestPoint(const TriangleMesh& mesh);

  SurfacePoint at(const Vec3& point_m) const;
  // `likely_face` only saves time: the distance does not depend on it, and the answer differs at most among
  // points that are equally near.
  SurfacePoint at(const Vec3& point_m, int likely_face) const;

  // None when no point of the surface is nearer than `reach_m`, which is soon known.
  std::optional<SurfacePoint> within(const Vec3& point_m, double reach_m) const;
  bool is_within(const Vec3& point_m, double reach_m) const;
  // Every face that comes nearer than `reach_m`, and a few that nearly do; in no order.
  std::vector<int> near(const Vec3& point_m, double reach_m) const;

 private:
  struct Tree;
  std::shared_ptr<const Tree> tree_;
};

}  // namespace wrapgauge
