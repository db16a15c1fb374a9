#pragma once
// Straight lines on a triangle surface: in every face straight, and straight again when two neighbouring
// faces are unfolded flat about their common edge. A tape laid on the skin without side force follows such a
// line.

#include <vector>

#include "model/geometry/mesh_topology.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {

struct GeodesicPath {
  std::vector<Vec3> points_m;  // start, every edge crossed, end
  std::vector<double> arc_m;   // length along the path at each point; first 0, strictly growing
  std::vector<int> faces;      // face each piece between two points lies in
  SurfacePoint end;            // its distance_m is 0
  Vec3 end_direction = Vec3::Zero();
  double missing_m = 0.0;  // > 0: the path met an open edge of the surface with this much length left

  double length_m() const { return arc_m.back(); }
  // Point at a length along the path, 0 <= arc <= length_m(); beyond either end, that end.
  Vec3 at(double arc) const;
};

class GeodesicTracer {
 public:
  // `mesh` must outlive the tracer and have no faces of zero area.
  explicit GeodesicTracer(const TriangleMesh& mesh);

  // From a surface point along the part of `direction` that is tangent to its face, for a length >= 0. A path
  // that meets a vertex exactly passes it on one side, always the same one. A direction perpendicular to the
  // face gives a path of no length with everything missing.
  GeodesicPath trace(const SurfacePoint& from, const Vec3& direction, double length_m) const;
  // Outward normal of a face.
  Vec3 face_normal(int face) const { return normals_.row(face); }

 private:
  struct Walker;
  const TriangleMesh& mesh_;
  MeshTopology topology_;
  Points3 normals_;
};

}  // namespace wrapgauge
