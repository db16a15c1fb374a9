#include "model/body/vertex_weld.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <vector>

#include "model/body/union_find.hpp"
#include "model/body/used_vertices.hpp"

namespace wrapgauge {
namespace {

double weld_distance(const Points3& vertices, const Triangles& faces, const std::vector<int>& used) {
  Vec3 low = vertices.row(used.front()), high = low;
  for (const int v : used) {
    low = low.cwiseMin(vertices.row(v).transpose());
    high = high.cwiseMax(vertices.row(v).transpose());
  }
  std::vector<double> edges(faces.rows());
  for (int f = 0; f < faces.rows(); ++f)
    edges[f] = (vertices.row(faces(f, 0)) - vertices.row(faces(f, 1))).norm();
  std::nth_element(edges.begin(), edges.begin() + edges.size() / 2, edges.end());
  return std::min(1e-6 * (high - low).norm(), 1e-3 * edges[edges.size() / 2]);
}

// Vertices by place, in a table that is sparse enough to find each within a step or two.
class PlaceTable {
 public:
  PlaceTable(const Points3& vertices, std::size_t most)
      : vertices_(vertices), slots_(std::bit_ceil(2 * most + 1), kFree) {}

  // The vertex that came first at this vertex's place: itself when there was none.
  int first_at_place_of(int v) {
    std::size_t slot = scrambled(v) & (slots_.size() - 1);
    while (slots_[slot] != kFree && vertices_.row(slots_[slot]) != vertices_.row(v))
      slot = (slot + 1) & (slots_.size() - 1);
    if (slots_[slot] == kFree) slots_[slot] = v;
    return slots_[slot];
  }

 private:
  static constexpr int kFree = -1;

  // Any bit of a coordinate may change any bit of this (constants of splitmix64, Vigna, public domain).
  std::uint64_t scrambled(int v) const {
    std::uint64_t all = 0;
    for (int k = 0; k < 3; ++k) {
      all += std::bit_cast<std::uint64_t>(vertices_(v, k) + 0.0);  // -0 lies where 0 does
      all = (all ^ (all >> 30)) * 0xbf58476d1ce4e5b9U;
      all = (all ^ (all >> 27)) * 0x94d049bb133111ebU;
      all ^= all >> 31;
    }
    return all;
  }

  const Points3& vertices_;
  std::vector<int> slots_;
};

// Joins exact copies and returns one vertex a place.
std::vector<int> join_copies(const Points3& vertices, const std::vector<int>& used, UnionFind& groups) {
  PlaceTable table(vertices, used.size());
  std::vector<int> places;
  for (const int v : used) {
    const int first = table.first_at_place_of(v);
    if (first == v)
      places.push_back(v);
    else
      groups.join(first, v);
  }
  return places;
}

// Sweeps along a direction that no drawing is likely to be aligned with, so that few places share a slab. For
// 1.25 million places this takes 0.2 s; building a tree of them and asking it about each takes 0.5 s.
void join_near(const Points3& vertices, const std::vector<int>& places, double distance, UnionFind& groups) {
  const Vec3 sweep = Vec3(0.5377, 0.6180, 0.5736).normalized();
  std::vector<std::pair<double, int>> order;
  order.reserve(places.size());
  for (const int v : places) order.emplace_back(vertices.row(v).dot(sweep), v);
  std::sort(order.begin(), order.end());
  for (std::size_t i = 0; i < order.size(); ++i)
    for (std::size_t j = i + 1; j < order.size() && order[j].first - order[i].first <= distance; ++j)
      if ((vertices.row(order[i].second) - vertices.row(order[j].second)).norm() <= distance)
        groups.join(order[i].second, order[j].second);
}

}  // namespace

int weld_vertices(const Points3& vertices, Triangles& faces) {
  if (faces.rows() == 0) return 0;
  const std::vector<int> used = used_vertices(faces, vertices.rows());
  UnionFind groups(static_cast<int>(vertices.rows()));
  join_near(vertices, join_copies(vertices, used, groups), weld_distance(vertices, faces, used), groups);
  int replaced = 0;
  for (const int v : used) replaced += groups.root(v) != v;
  for (int i = 0; i < faces.size(); ++i) faces.data()[i] = groups.root(faces.data()[i]);
  return replaced;
}

}  // namespace wrapgauge
