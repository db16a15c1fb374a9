#include "model/layout/filled_lines.hpp"

#include <algorithm>
#include <utility>

#include "model/geometry/planar_fill.hpp"

namespace wrapgauge {
namespace {

constexpr double kLeastAngleDeg = 20.0;
constexpr int kSmoothingRounds = 5;  // between two looks for spans
constexpr int kSpanRounds = 3;       // that smooth afterwards
constexpr int kMostRepairs = 8;      // that do not

// An edge inside an open region, or between two, that spans from one weld to another.
struct Span {
  Segment ends;                // the smaller index first
  std::optional<int> segment;  // of the lines triangulated, where the span is one
};

// Vertices where the sheets are fused, one flag each.
std::vector<bool> fused_vertices(const RegionMesh& meshed) {
  const PlanarTriangulation& mesh = meshed.mesh;
  std::vector<bool> fused(mesh.points_m.size(), false);
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    for (int k = 0; k < 3; ++k)
      if (!meshed.is_open_at(static_cast<int>(t)) || !meshed.is_open_at(mesh.across[t][k]))
        fused[mesh.triangles[t][k]] = fused[mesh.triangles[t][(k + 1) % 3]] = true;
  return fused;
}

std::vector<Span> fused_spans(const RegionMesh& meshed) {
  const PlanarTriangulation& mesh = meshed.mesh;
  const std::vector<bool> fused = fused_vertices(meshed);
  std::vector<Span> spans;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    for (int k = 0; k < 3; ++k) {
      const int a = mesh.triangles[t][k], b = mesh.triangles[t][(k + 1) % 3];
      if (b < a || !fused[a] || !fused[b]) continue;  // the triangle across has the other order
      if (!meshed.is_open_at(static_cast<int>(t)) || !meshed.is_open_at(mesh.across[t][k])) continue;
      const auto line = mesh.line_on[t][k];
      spans.push_back({{a, b}, line ? std::optional(mesh.lines[*line].segment) : std::nullopt});
    }
  std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.ends < b.ends; });
  return spans;
}

// Adds the middle of each span, and splits the line where the span is one.
void split_spans(LayoutLines& lines, const std::vector<Span>& spans) {
  PlanarGraph& graph = lines.graph;
  for (const auto& [ends, segment] : spans) {
    const int added = static_cast<int>(graph.points_m.size());
    graph.points_m.push_back(0.5 * (graph.points_m[ends[0]] + graph.points_m[ends[1]]));
    if (!segment) continue;
    const int last = std::exchange(graph.segments[*segment][1], added);
    graph.segments.push_back({added, last});
    lines.sides.push_back(RegionSides(lines.sides[*segment]));
  }
}

bool has_sharp_triangle(const RegionMesh& meshed) {
  const auto& [mesh, regions] = meshed;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& c = mesh.triangles[t];
    if (regions[t] &&
        smallest_angle_deg(mesh.points_m[c[0]], mesh.points_m[c[1]], mesh.points_m[c[2]]) < kLeastAngleDeg)
      return true;
  }
  return false;
}

}  // namespace

LayoutLines sampled_lines(const LayoutLines& lines, const std::function<double(const Vec2&)>& size) {
  std::vector<int> least_parts;
  for (const auto& [left, right] : lines.sides)
    least_parts.push_back(left && right && is_open(*left) && is_open(*right) ? 2 : 1);
  SampledGraph sampled = sampled_graph(lines.graph, least_parts, size);
  LayoutLines out{std::move(sampled.graph), {}};
  for (const int whole : sampled.segment_of_part) out.sides.push_back(lines.sides[whole]);
  return out;
}

RegionMesh filled_lines(LayoutLines lines, const RegionMesh& drawn, const SizeField& size) {
  int near = 0;
  fill_with_points(lines.graph, size, [&](const Vec2& p) {
    const auto triangle = triangle_at(drawn.mesh, p, near);
    if (triangle) near = *triangle;
    return triangle && drawn.regions[*triangle];
  });
  const auto triangulated = [&] { return with_regions(constrained_delaunay(lines.graph), lines.sides); };
  for (int round = 0; round < kSpanRounds; ++round) {
    smooth_free_points(lines.graph, size, kSmoothingRounds);
    split_spans(lines, fused_spans(triangulated()));
  }
  RegionMesh now = triangulated();
  for (int round = 0; round < kMostRepairs; ++round) {
    if (has_sharp_triangle(now)) now = with_regions(refined_delaunay(lines.graph), lines.sides);
    lines = pieces_as_lines(now.mesh, lines.sides);
    const std::vector<Span> spans = fused_spans(now);
    if (spans.empty()) break;
    split_spans(lines, spans);
    now = triangulated();
  }
  return now;
}

}  // namespace wrapgauge
