#include "model/body/square_ends.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <vector>

#include "model/body/edge_table.hpp"
#include "model/body/union_find.hpp"

namespace wrapgauge {
namespace {

constexpr double kRagged = 0.002;  // of the edge's length
constexpr std::size_t kFewestSides = 12;
constexpr double kLikeness = 1.0 / 3.0;  // of the shorter edge's length to the longer one's
const double kParallel = std::cos(3.0 * std::numbers::pi / 180.0);
const double kAbove = std::cos(45.0 * std::numbers::pi / 180.0);

using Side = std::array<Vec3, 2>;

struct OpenEdge {
  std::vector<Side> sides;
  double length = 0.0;
  Vec3 centre = Vec3::Zero(), normal = Vec3::Zero();
  double off_plane = 0.0;  // root mean square

  // Plane of least squares through the sides, each counting by its length.
  void fit() {
    for (const auto& [a, b] : sides) {
      length += (b - a).norm();
      centre += (b - a).norm() * 0.5 * (a + b);
    }
    centre /= length;
    Mat3 spread = Mat3::Zero();
    for (const auto& [a, b] : sides) {
      const Vec3 from = 0.5 * (a + b) - centre;
      spread += (b - a).norm() / length * from * from.transpose();
    }
    const Eigen::SelfAdjointEigenSolver<Mat3> solver(spread);
    normal = solver.eigenvectors().col(0).normalized();
    off_plane = std::sqrt(std::max(0.0, solver.eigenvalues()[0]));
  }
  bool is_square() const { return sides.size() >= kFewestSides && off_plane <= kRagged * length; }
};

// Sides that only one face uses, gathered by what hangs together; longest edges first.
std::vector<OpenEdge> open_edges(const TriangleMesh& surface) {
  const EdgeTable table(surface.faces);
  UnionFind together(static_cast<int>(surface.vertices_m.rows()));
  std::vector<std::array<int, 2>> open;
  for (std::size_t edge = 0; edge < table.size(); ++edge) {
    if (table.uses(edge).size() != 1) continue;
    const auto [face, side] = table.uses(edge)[0];
    open.push_back({surface.faces(face, side), surface.faces(face, (side + 1) % 3)});
    together.join(open.back()[0], open.back()[1]);
  }
  std::map<int, OpenEdge> edges;
  for (const auto& [from, to] : open)
    edges[together.root(from)].sides.push_back({surface.vertices_m.row(from), surface.vertices_m.row(to)});
  std::vector<OpenEdge> result;
  for (auto& [root, edge] : edges) {
    edge.fit();
    result.push_back(std::move(edge));
  }
  std::stable_sort(result.begin(), result.end(),
                   [](const OpenEdge& a, const OpenEdge& b) { return a.length > b.length; });
  return result;
}

}  // namespace

std::optional<Vec3> direction_across_ends(const TriangleMesh& surface) {
  const std::vector<OpenEdge> edges = open_edges(surface);
  if (edges.size() < 2) return std::nullopt;
  const OpenEdge &one = edges[0], &other = edges[1];
  if (!one.is_square() || !other.is_square() || other.length < kLikeness * one.length) return std::nullopt;
  const double cosine = one.normal.dot(other.normal);
  if (std::abs(cosine) < kParallel) return std::nullopt;
  const Vec3 direction = (one.normal + (cosine < 0.0 ? -1.0 : 1.0) * other.normal).normalized();
  const Vec3 between = other.centre - one.centre;
  if (std::abs(between.dot(direction)) < kAbove * between.norm()) return std::nullopt;
  return direction;
}

}  // namespace wrapgauge
