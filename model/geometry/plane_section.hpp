#pragma once
// Where a plane cuts a surface.

#include <vector>

#include "model/core/quantity.hpp"
#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {

// One connected line of a section. On a surface with outward normals it runs right-handed about the plane's
// normal: counter-clockwise round the body when looked at against that normal.
struct SectionLine {
  std::vector<Vec3> points_m;  // first point not repeated at the end of a closed line
  bool closed = false;         // false: it ends at an open edge of the surface

  Length length() const;  // of a closed line: all the way round
};

// Cuts the same surface many times. Const, usable from any number of threads.
class PlaneSections {
 public:
  // `mesh` must outlive this.
  explicit PlaneSections(const TriangleMesh& mesh) : mesh_(mesh), topology_(mesh) {}

  // Section by the plane through `point_m` with a unit normal. A vertex that lies in the plane counts as
  // above it. Lines that end at open edges come first, then closed ones, both in order of the faces they
  // start in; empty where the plane misses.
  std::vector<SectionLine> at(const Vec3& point_m, const Vec3& normal) const;
  const MeshTopology& topology() const { return topology_; }

 private:
  const TriangleMesh& mesh_;
  MeshTopology topology_;
};

// The same for a single cut.
std::vector<SectionLine> plane_section(const TriangleMesh& mesh, const Vec3& point_m, const Vec3& normal);

}  // namespace wrapgauge
