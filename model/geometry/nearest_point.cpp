#include "model/geometry/nearest_point.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <limits>
#include <numeric>
#include <vector>

namespace wrapgauge {
namespace {

constexpr int kLeafFaces = 4;
constexpr int kStackDepth = 64;  // median splits halve, so depth is log2 of the face count

struct Box {
  Vec3 low = Vec3::Constant(std::numeric_limits<double>::infinity());
  Vec3 high = Vec3::Constant(-std::numeric_limits<double>::infinity());

  void include(const Vec3& point) {
    low = low.cwiseMin(point);
    high = high.cwiseMax(point);
  }
  double squared_distance(const Vec3& point) const {
    return (low - point).cwiseMax(point - high).cwiseMax(0.0).squaredNorm();
  }
};

// A child is a node, or a run of triangles in leaf order.
struct Child {
  Box box;
  int first = 0;
  int count = 0;  // 0: `first` is a node
};

struct Node {
  std::array<Child, 2> child;
};

struct Triangle {
  Vec3 a, ab, ac;
  int face;
};

Vec3 edge_barycentric(int from, int to, double t) {
  Vec3 weights = Vec3::Zero();
  weights[from] = 1.0 - t;
  weights[to] = t;
  return weights;
}

// Closest point of a triangle by the Voronoi regions of its corners and edges (C. Ericson, Real-Time
// Collision Detection, 2005, section 5.1.5; from memory). Returns barycentric weights.
Vec3 closest_barycentric(const Triangle& triangle, const Vec3& point) {
  const Vec3 ap = point - triangle.a;
  const double d1 = triangle.ab.dot(ap), d2 = triangle.ac.dot(ap);
  if (d1 <= 0.0 && d2 <= 0.0) return Vec3::UnitX();
  const double bb = triangle.ab.squaredNorm(), cc = triangle.ac.squaredNorm();
  const double bc = triangle.ab.dot(triangle.ac);
  const double d3 = d1 - bb, d4 = d2 - bc;
  if (d3 >= 0.0 && d4 <= d3) return Vec3::UnitY();
  const double vc = d1 * d4 - d3 * d2;
  if (vc <= 0.0 && d1 >= 0.0 && d3 <= 0.0) return edge_barycentric(0, 1, d1 / (d1 - d3));
  const double d5 = d1 - bc, d6 = d2 - cc;
  if (d6 >= 0.0 && d5 <= d6) return Vec3::UnitZ();
  const double vb = d5 * d2 - d1 * d6;
  if (vb <= 0.0 && d2 >= 0.0 && d6 <= 0.0) return edge_barycentric(0, 2, d2 / (d2 - d6));
  const double va = d3 * d6 - d5 * d4;
  if (va <= 0.0 && d4 >= d3 && d5 >= d6) return edge_barycentric(1, 2, (d4 - d3) / ((d4 - d3) + (d5 - d6)));
  const double scale = 1.0 / (va + vb + vc);
  return {1.0 - (vb + vc) * scale, vb * scale, vc * scale};
}

struct Best {
  double squared_distance = std::numeric_limits<double>::infinity();
  int triangle = 0;
  Vec3 barycentric = Vec3::UnitX();
};

Best nearer_than(double reach_m) {
  return {.squared_distance = reach_m * reach_m};
}

}  // namespace

struct NearestPoint::Tree {
  std::vector<Node> nodes;
  std::vector<Triangle> triangles;  // in leaf order
  std::vector<int> place_of_face;
  Child root;

  void try_triangle(int index, const Vec3& point, Best& best) const {
    const Triangle& triangle = triangles[index];
    const Vec3 weights = closest_barycentric(triangle, point);
    const double squared =
        (triangle.a + weights[1] * triangle.ab + weights[2] * triangle.ac - point).squaredNorm();
    if (squared < best.squared_distance) best = {squared, index, weights};
  }
  enum class Until { kNearest, kAny };  // the nearest one, or any that is nearer than `best`
  void search(const Vec3& point, Best& best, Until until = Until::kNearest) const;
  SurfacePoint surface_point(const Best& best) const;
};

namespace {

struct Builder {
  const std::vector<Vec3>& centres;
  const std::vector<Box>& boxes;
  std::vector<int>& order;
  std::vector<Node>& nodes;

  Child build(int first, int count) {
    Child child{.box = {}, .first = first, .count = count};
    Box spread;
    for (int i = first; i < first + count; ++i) {
      child.box.include(boxes[order[i]].low);
      child.box.include(boxes[order[i]].high);
      spread.include(centres[order[i]]);
    }
    if (count <= kLeafFaces) return child;
    int axis = 0;
    (spread.high - spread.low).maxCoeff(&axis);
    const int half = count / 2;
    const auto begin = order.begin() + first;
    std::nth_element(begin, begin + half, begin + count, [&](int left, int right) {
      const double a = centres[left][axis], b = centres[right][axis];
      return a < b || (a == b && left < right);
    });
    const int index = static_cast<int>(nodes.size());
    nodes.emplace_back();
    const Child low = build(first, half), high = build(first + half, count - half);
    nodes[index].child = {low, high};
    child.first = index;
    child.count = 0;
    return child;
  }
};

}  // namespace

NearestPoint::NearestPoint(const TriangleMesh& mesh) {
  assert(mesh.faces.rows() > 0);
  auto tree = std::make_shared<Tree>();
  const int count = static_cast<int>(mesh.faces.rows());
  std::vector<Vec3> centres(count);
  std::vector<Box> boxes(count);
  for (int face = 0; face < count; ++face) {
    for (int corner = 0; corner < 3; ++corner)
      boxes[face].include(mesh.vertices_m.row(mesh.faces(face, corner)).transpose());
    centres[face] = 0.5 * (boxes[face].low + boxes[face].high);
  }
  std::vector<int> order(count);
  std::iota(order.begin(), order.end(), 0);
  tree->root = Builder{centres, boxes, order, tree->nodes}.build(0, count);
  tree->triangles.reserve(count);
  tree->place_of_face.resize(count);
  for (int face : order) {
    const Vec3 a = mesh.vertices_m.row(mesh.faces(face, 0));
    const Vec3 b = mesh.vertices_m.row(mesh.faces(face, 1));
    const Vec3 c = mesh.vertices_m.row(mesh.faces(face, 2));
    tree->place_of_face[face] = static_cast<int>(tree->triangles.size());
    tree->triangles.push_back({a, b - a, c - a, face});
  }
  tree_ = std::move(tree);
}

void NearestPoint::Tree::search(const Vec3& point, Best& best, Until until) const {
  const double from = best.squared_distance;
  struct Waiting {
    const Child* child;
    double squared_distance;
  };
  std::array<Waiting, kStackDepth> stack;
  int depth = 0;
  const Child* child = &root;
  while (true) {
    if (child->count > 0) {
      for (int i = child->first; i < child->first + child->count; ++i) try_triangle(i, point, best);
      if (until == Until::kAny && best.squared_distance < from) return;
    } else {
      const auto& [left, right] = nodes[child->first].child;
      const double to_left = left.box.squared_distance(point), to_right = right.box.squared_distance(point);
      const bool left_first = to_left <= to_right;
      const double near = left_first ? to_left : to_right, far = left_first ? to_right : to_left;
      if (far < best.squared_distance) stack[depth++] = {left_first ? &right : &left, far};
      if (near < best.squared_distance) {
        child = left_first ? &left : &right;
        continue;
      }
    }
    while (depth > 0 && !(stack[depth - 1].squared_distance < best.squared_distance)) --depth;
    if (depth == 0) return;
    child = stack[--depth].child;
  }
}

SurfacePoint NearestPoint::Tree::surface_point(const Best& best) const {
  const Triangle& triangle = triangles[best.triangle];
  return {triangle.face, best.barycentric,
          triangle.a + best.barycentric[1] * triangle.ab + best.barycentric[2] * triangle.ac,
          std::sqrt(best.squared_distance)};
}

SurfacePoint NearestPoint::at(const Vec3& point_m) const {
  Best best;
  tree_->search(point_m, best);
  return tree_->surface_point(best);
}

SurfacePoint NearestPoint::at(const Vec3& point_m, int likely_face) const {
  Best best;
  tree_->try_triangle(tree_->place_of_face[likely_face], point_m, best);
  tree_->search(point_m, best);
  return tree_->surface_point(best);
}

std::optional<SurfacePoint> NearestPoint::within(const Vec3& point_m, double reach_m) const {
  const Best none = nearer_than(reach_m);
  Best best = none;
  tree_->search(point_m, best);
  if (!(best.squared_distance < none.squared_distance)) return std::nullopt;
  return tree_->surface_point(best);
}

bool NearestPoint::is_within(const Vec3& point_m, double reach_m) const {
  const Best none = nearer_than(reach_m);
  Best best = none;
  tree_->search(point_m, best, Tree::Until::kAny);
  return best.squared_distance < none.squared_distance;
}

std::vector<int> NearestPoint::near(const Vec3& point_m, double reach_m) const {
  const double most = nearer_than(reach_m).squared_distance;
  std::vector<int> faces;
  std::array<const Child*, kStackDepth> stack{&tree_->root};
  for (int depth = 1; depth > 0;) {
    const Child& child = *stack[static_cast<std::size_t>(--depth)];
    if (!(child.box.squared_distance(point_m) < most)) continue;
    for (int i = child.first; i < child.first + child.count; ++i) faces.push_back(tree_->triangles[i].face);
    if (child.count > 0) continue;
    for (const Child& half : tree_->nodes[child.first].child)
      stack[static_cast<std::size_t>(depth++)] = &half;
  }
  return faces;
}

}  // namespace wrapgauge
