#include "model/geometry/box_tree.hpp"

#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>

namespace wrapgauge {
namespace {

// The lowest 21 bits with two free ones behind each.
std::uint64_t spread_out(std::uint64_t bits) {
  bits = (bits | bits << 32) & 0x1f00000000ffffU;
  bits = (bits | bits << 16) & 0x1f0000ff0000ffU;
  bits = (bits | bits << 8) & 0x100f00f00f00f00fU;
  bits = (bits | bits << 4) & 0x10c30c30c30c30c3U;
  return (bits | bits << 2) & 0x1249249249249249U;
}

// Place along a curve that fills the box of the mesh (Morton order).
std::uint64_t along_curve(const Vec3& share) {
  constexpr double kSteps = (1 << 21) - 1;
  std::uint64_t place = 0;
  for (int k = 0; k < 3; ++k)
    place |= spread_out(static_cast<std::uint64_t>(std::clamp(share[k], 0.0, 1.0) * kSteps)) << k;
  return place;
}

Vec3 centre_of(const TriangleMesh& mesh, int face) {
  return (mesh.vertices_m.row(mesh.faces(face, 0)) + mesh.vertices_m.row(mesh.faces(face, 1)) +
          mesh.vertices_m.row(mesh.faces(face, 2))) /
         3.0;
}

std::vector<int> in_curve_order(const TriangleMesh& mesh) {
  const Vec3 low = mesh.vertices_m.colwise().minCoeff(), high = mesh.vertices_m.colwise().maxCoeff();
  const double size = std::max((high - low).maxCoeff(), std::numeric_limits<double>::min());
  std::vector<std::pair<std::uint64_t, int>> order;
  order.reserve(static_cast<std::size_t>(mesh.faces.rows()));
  for (int face = 0; face < mesh.faces.rows(); ++face)
    order.emplace_back(along_curve((centre_of(mesh, face) - low) / size), face);
  std::sort(order.begin(), order.end());
  std::vector<int> faces;
  faces.reserve(order.size());
  for (const auto& [place, face] : order) faces.push_back(face);
  return faces;
}

}  // namespace

// Numbers are rounded outward, measured from a point of the mesh so that far from the origin little is lost.
BoxTree::Box BoxTree::box_of(const TriangleMesh& mesh, int face, const Vec3& near_m) {
  constexpr float kInfinity = std::numeric_limits<float>::infinity();
  Box box;
  for (int k = 0; k < 3; ++k) {
    const double a = mesh.vertices_m(mesh.faces(face, 0), k), b = mesh.vertices_m(mesh.faces(face, 1), k),
                 c = mesh.vertices_m(mesh.faces(face, 2), k);
    const auto [low, high] = std::minmax({a, b, c});
    const auto axis = static_cast<std::size_t>(k);
    box.low[axis] = std::nextafter(static_cast<float>(low - near_m[k]), -kInfinity);
    box.high[axis] = std::nextafter(static_cast<float>(high - near_m[k]), kInfinity);
  }
  return box;
}

BoxTree::Box BoxTree::around(const std::vector<Box>& boxes, std::size_t first) {
  Box box = boxes[first];
  for (std::size_t i = first + 1; i < std::min(first + kGroup, boxes.size()); ++i)
    for (std::size_t k = 0; k < 3; ++k) {
      box.low[k] = std::min(box.low[k], boxes[i].low[k]);
      box.high[k] = std::max(box.high[k], boxes[i].high[k]);
    }
  return box;
}

BoxTree::BoxTree(const TriangleMesh& mesh) : face_(in_curve_order(mesh)), levels_(1) {
  assert(!face_.empty());
  const Vec3 near_m = mesh.vertices_m.row(mesh.faces(0, 0));
  levels_[0].reserve(face_.size());
  for (const int face : face_) levels_[0].push_back(box_of(mesh, face, near_m));
  while (levels_.size() < 2 || levels_.back().size() > kGroup) {
    std::vector<Box> groups;
    groups.reserve(levels_.back().size() / kGroup + 1);
    for (std::size_t i = 0; i < levels_.back().size(); i += kGroup)
      groups.push_back(around(levels_.back(), i));
    levels_.push_back(std::move(groups));
  }
  assert(levels_.size() <= kDeepest);
}

}  // namespace wrapgauge
