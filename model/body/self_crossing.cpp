#include "model/body/self_crossing.hpp"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/box_intersection_d.h>
#include <CGAL/intersections.h>

#include <algorithm>
#include <vector>

namespace wrapgauge {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Box = CGAL::Box_intersection_d::Box_d<double, 3>;

struct FaceBox : Box {
  FaceBox(const CGAL::Bbox_3& bounds, int face_index) : Box(bounds), face(face_index) {}
  int face;
};

bool share_vertex(const Triangles& faces, int f, int g) {
  for (int i = 0; i < 3; ++i)
    for (int j = 0; j < 3; ++j)
      if (faces(f, i) == faces(g, j)) return true;
  return false;
}

Kernel::Triangle_3 triangle(const TriangleMesh& surface, int f) {
  const auto corner = [&](int k) {
    const auto point = surface.vertices_m.row(surface.faces(f, k));
    return Kernel::Point_3(point[0], point[1], point[2]);
  };
  return {corner(0), corner(1), corner(2)};
}

}  // namespace

SelfCrossing find_self_crossing(const TriangleMesh& surface, int most) {
  std::vector<FaceBox> boxes;
  boxes.reserve(surface.faces.rows());
  for (int f = 0; f < surface.faces.rows(); ++f) boxes.emplace_back(triangle(surface, f).bbox(), f);
  std::vector<const FaceBox*> order;
  for (const FaceBox& box : boxes) order.push_back(&box);
  SelfCrossing result;
  const auto compare = [&](const FaceBox* a, const FaceBox* b) {
    if (result.pairs >= most || share_vertex(surface.faces, a->face, b->face)) return;
    const auto one = triangle(surface, a->face), other = triangle(surface, b->face);
    if (one.is_degenerate() || other.is_degenerate() || !CGAL::do_intersect(one, other)) return;
    const int low = std::min(a->face, b->face);
    result.first_face = result.pairs == 0 ? low : std::min(result.first_face, low);
    ++result.pairs;
  };
  CGAL::box_self_intersection_d(order.begin(), order.end(), compare);
  if (result.pairs > 0)
    for (int k = 0; k < 3; ++k)
      result.at_m += surface.vertices_m.row(surface.faces(result.first_face, k)).transpose() / 3.0;
  return result;
}

}  // namespace wrapgauge
