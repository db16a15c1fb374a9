#pragma once
// Exact signed distance to a triangle surface, one point at a time: what a GridDistance is sampled from.

#include <optional>
#include <vector>

#include "model/core/result.hpp"
#include "model/geometry/mesh_topology.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {

// > 0 on the side the faces' normals point to. The sign comes from the normal of the face, edge or vertex
// that is nearest (angle-weighted, see vertex_normals). Beyond an open edge of the surface the distance is
// the one to the surface continued straight across that edge, so that the sign changes only through zero
// there. Const queries may run from any number of threads.
class MeshDistance {
 public:
  struct Sample {
    double distance_m;
    int face;
  };
  Sample at(const Vec3& point_m, std::optional<int> likely_face = std::nullopt) const;

 private:
  friend Result<MeshDistance> make_mesh_distance(const TriangleMesh& mesh);
  explicit MeshDistance(const TriangleMesh& mesh);

  Vec3 normal_at(const SurfacePoint& nearest) const;
  Vec3 away_from_surface(const SurfacePoint& nearest) const;

  TriangleMesh mesh_;
  NearestPoint nearest_;
  MeshTopology topology_;
  Points3 face_normals_, vertex_normals_;
  Points3 vertex_outward_of_boundary_;  // unit, along the surface and off it; zero away from the boundary
};

// Problems: no faces, an index out of range, a coordinate that is not finite.
Result<MeshDistance> make_mesh_distance(const TriangleMesh& mesh);

}  // namespace wrapgauge
