#include "model/body/stray_vertex.hpp"

#include <algorithm>
#include <cstdio>
#include <vector>

#include "model/body/used_vertices.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMost = 10, kOneIn = 100;
constexpr double kTimes = 3.0;

Vec3 median(const RawMesh& raw, const std::vector<int>& vertices) {
  Vec3 middle;
  std::vector<double> values(vertices.size());
  for (int k = 0; k < 3; ++k) {
    for (std::size_t i = 0; i < vertices.size(); ++i) values[i] = raw.vertices(vertices[i], k);
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    middle[k] = *half;
  }
  return middle;
}

}  // namespace

std::optional<StrayVertices> find_stray_vertices(const RawMesh& raw) {
  std::vector<int> vertices = used_vertices(raw.faces, raw.vertices.rows());
  const std::size_t most = std::min(kMost, vertices.size() / kOneIn);
  if (most == 0) return std::nullopt;
  const Vec3 middle = median(raw, vertices);
  const auto distance = [&](int v) { return (raw.vertices.row(v).transpose() - middle).norm(); };
  const auto further = [&](int a, int b) {
    const double one = distance(a), other = distance(b);
    return one != other ? one > other : a < b;
  };
  std::partial_sort(vertices.begin(), vertices.begin() + static_cast<std::ptrdiff_t>(most) + 1,
                    vertices.end(), further);
  for (std::size_t count = most; count >= 1; --count) {
    const double rest = distance(vertices[count]);
    if (distance(vertices[count - 1]) <= kTimes * rest) continue;
    return StrayVertices{static_cast<int>(count), vertices[0] + 1, raw.vertices.row(vertices[0]),
                         distance(vertices[0]) / rest};
  }
  return std::nullopt;
}

Phrase stray_words(const StrayVertices& stray) {
  char at[120];
  std::snprintf(at, sizeof at, "(%.6g, %.6g, %.6g)", stray.at[0], stray.at[1], stray.at[2]);
  const std::vector<Phrase> figures = {figures_of(stray.furthest), figures_of(at),
                                       figures_of(number_text(stray.times_as_far, 3)),
                                       figures_of(stray.count)};
  return stray.count == 1
             ? Phrase::worded(
                   "Vertex %1, at %2, lies %3 times as far out as the rest: take it out of the file.",
                   figures)
             : Phrase::worded(
                   "%4 vertices lie far off the rest, the furthest of them, vertex %1 at %2, %3 times "
                   "as far out: take them out of the file.",
                   figures);
}

}  // namespace wrapgauge
