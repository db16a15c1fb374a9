#pragma once
// The skin as it is drawn and pointed at.

#include <optional>

#include "model/geometry/nearest_point.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// Points on the skin with its normal at each.
struct SkinPoints {
  Points3 points_m, normals;
};

class SkinSurface {
 public:
  explicit SkinSurface(const TriangleMesh& surface);

  const TriangleMesh& mesh() const { return mesh_; }
  const Points3& normals() const { return normals_; }  // a vertex each
  // The nearest skin point of each; a body without faces gives the points back.
  SkinPoints nearest(const Points3& points_m) const;

 private:
  TriangleMesh mesh_;
  Points3 normals_;
  std::optional<NearestPoint> tree_;
};

}  // namespace wrapgauge
