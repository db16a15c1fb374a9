#include "model/body/self_crossing.hpp"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/intersections.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "model/geometry/box_tree.hpp"

namespace wrapgauge {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;

bool share_vertex(const Triangles& faces, int f, int g) {
  for (int i = 0; i < 3; ++i)
    for (int j = 0; j < 3; ++j)
      if (faces(f, i) == faces(g, j)) return true;
  return false;
}

using Corners = std::array<Vec3, 3>;

Corners corners_of(const TriangleMesh& surface, int f) {
  return {surface.vertices_m.row(surface.faces(f, 0)), surface.vertices_m.row(surface.faces(f, 1)),
          surface.vertices_m.row(surface.faces(f, 2))};
}

// Whether all of `other` lies clearly on one side of the plane of `face`: the quick answer for most pairs.
// The bound is ten times the rounding of the sum below.
bool lies_beside(const Corners& face, const Corners& other) {
  const Vec3 ab = face[1] - face[0], ac = face[2] - face[0];
  const Vec3 normal = ab.cross(ac);
  const double rounding = 1e-14 * std::sqrt(ab.squaredNorm() * ac.squaredNorm());
  int above = 0, below = 0;
  for (const Vec3& corner : other) {
    const Vec3 from = corner - face[0];
    const double height = normal.dot(from), unsure = rounding * from.norm();
    above += height > unsure;
    below += height < -unsure;
  }
  return above == 3 || below == 3;
}

bool pass_through(const Corners& a, const Corners& b) {
  if (lies_beside(a, b) || lies_beside(b, a)) return false;
  const auto point = [](const Vec3& p) { return Kernel::Point_3(p[0], p[1], p[2]); };
  const Kernel::Triangle_3 one(point(a[0]), point(a[1]), point(a[2])),
      other(point(b[0]), point(b[1]), point(b[2]));
  return !one.is_degenerate() && !other.is_degenerate() && CGAL::do_intersect(one, other);
}

}  // namespace

SelfCrossing find_self_crossing(const TriangleMesh& surface, int most) {
  SelfCrossing result;
  if (surface.faces.rows() == 0) return result;
  BoxTree(surface).meeting_pairs([&](int face, int other) {
    if (share_vertex(surface.faces, face, other)) return true;
    if (!pass_through(corners_of(surface, face), corners_of(surface, other))) return true;
    const int low = std::min(face, other);
    result.first_face = result.pairs == 0 ? low : std::min(result.first_face, low);
    return ++result.pairs < most;
  });
  if (result.pairs > 0)
    for (int k = 0; k < 3; ++k)
      result.at_m += surface.vertices_m.row(surface.faces(result.first_face, k)).transpose() / 3.0;
  return result;
}

}  // namespace wrapgauge
