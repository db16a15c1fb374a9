#pragma once
// The skin as it is drawn and pointed at.

#include <optional>

#include "model/geometry/nearest_point.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// Places on the skin with its normals there, mixed of those at the corners and so a little shorter than one.
struct SkinPoints {
  Points3 points_m, normals;
};
struct SkinPoint {
  Vec3 point_m, normal;
};

class SkinSurface {
 public:
  explicit SkinSurface(const TriangleMesh& surface);

  const TriangleMesh& mesh() const { return mesh_; }
  const Points3& normals() const { return normals_; }  // a vertex each
  // The nearest skin point; a body without faces gives the point back.
  SkinPoint at(const Vec3& point_m) const;
  SkinPoints nearest(const Points3& points_m) const;
  // The first skin point on the way from outside the body along `direction` (unit); none within `reach_m`.
  std::optional<Vec3> first_met(const Vec3& from_m, const Vec3& direction, double reach_m) const;

 private:
  SkinPoint at(const Vec3& point_m, int& likely_face) const;

  TriangleMesh mesh_;
  Points3 normals_;
  std::optional<NearestPoint> tree_;
};

}  // namespace wrapgauge
