#include "model/layout/region_map.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

// Height over the longest side: how far a triangle is from a sliver, in metres.
double height_m(const PlanarTriangulation& mesh, int t) {
  const auto& corners = mesh.triangles[t];
  const Vec2 &a = mesh.points_m[corners[0]], &b = mesh.points_m[corners[1]], &c = mesh.points_m[corners[2]];
  const double longest = std::max({(b - a).norm(), (c - b).norm(), (a - c).norm()});
  const Vec2 ab = b - a, ac = c - a;
  return longest > 0.0 ? std::abs(ab.x() * ac.y() - ab.y() * ac.x()) / longest : 0.0;
}

Vec2 middle(const PlanarTriangulation& mesh, int t) {
  const auto& corners = mesh.triangles[t];
  return (mesh.points_m[corners[0]] + mesh.points_m[corners[1]] + mesh.points_m[corners[2]]) / 3.0;
}

// Components of triangles that are joined across edges that are no lines.
std::vector<std::vector<int>> components(const PlanarTriangulation& mesh) {
  std::vector<Segment> lines = mesh.lines;
  std::sort(lines.begin(), lines.end());
  std::vector<std::vector<int>> neighbours(mesh.triangles.size());
  for (const EdgeSides& edge : edge_sides(mesh.triangles)) {
    if (edge.triangles[1] < 0 || std::binary_search(lines.begin(), lines.end(), edge.ends)) continue;
    neighbours[edge.triangles[0]].push_back(edge.triangles[1]);
    neighbours[edge.triangles[1]].push_back(edge.triangles[0]);
  }
  std::vector<std::vector<int>> parts;
  std::vector<bool> seen(mesh.triangles.size(), false);
  for (std::size_t start = 0; start < mesh.triangles.size(); ++start) {
    if (seen[start]) continue;
    std::vector<int> part{static_cast<int>(start)};
    seen[start] = true;
    for (std::size_t i = 0; i < part.size(); ++i)
      for (const int next : neighbours[part[i]])
        if (!seen[next]) {
          seen[next] = true;
          part.push_back(next);
        }
    parts.push_back(std::move(part));
  }
  return parts;
}

void add_loop(std::vector<std::pair<Vec2, Vec2>>& lines, const Polygon& loop) {
  for (std::size_t i = 0; i < loop.size(); ++i) lines.emplace_back(loop[i], loop[(i + 1) % loop.size()]);
}

std::vector<std::pair<Vec2, Vec2>> drawn_lines(const LayoutShapes& shapes,
                                               const std::optional<ClosingWindow>& window) {
  std::vector<std::pair<Vec2, Vec2>> lines;
  if (window) {
    std::vector<Vec2> all = shapes.outline_m;
    for (const Polygon& strap : shapes.straps_m) all.insert(all.end(), strap.begin(), strap.end());
    const Bounds2 box = bounds(all);
    const double margin = 0.1 * (box.high - box.low).norm();
    const double low = box.low.y() - margin, high = box.high.y() + margin;
    lines.emplace_back(Vec2(window->from_at_m(low), low), Vec2(window->from_at_m(high), high));
    lines.emplace_back(Vec2(window->to_at_m(low), low), Vec2(window->to_at_m(high), high));
  }
  add_loop(lines, shapes.outline_m);
  for (const auto& chamber : shapes.chambers) {
    add_loop(lines, chamber.boundary_m);
    for (const Polygon& inset : chamber.insets_m) add_loop(lines, inset);
  }
  for (const Polygon& channel : shapes.channels_m) add_loop(lines, channel);
  for (const Polygon& strap : shapes.straps_m) add_loop(lines, strap);
  return lines;
}

}  // namespace

std::vector<EdgeSides> edge_sides(const std::vector<std::array<int, 3>>& triangles) {
  std::vector<EdgeSides> halves;
  for (std::size_t t = 0; t < triangles.size(); ++t)
    for (int k = 0; k < 3; ++k) {
      const int a = triangles[t][k], b = triangles[t][(k + 1) % 3];
      halves.push_back({{std::min(a, b), std::max(a, b)}, {static_cast<int>(t), -1}});
    }
  std::stable_sort(halves.begin(), halves.end(),
                   [](const EdgeSides& a, const EdgeSides& b) { return a.ends < b.ends; });
  std::vector<EdgeSides> edges;
  for (const EdgeSides& half : halves) {
    if (!edges.empty() && edges.back().ends == half.ends)
      edges.back().triangles[1] = half.triangles[0];
    else
      edges.push_back(half);
  }
  return edges;
}

RegionOfTriangle regions_of(const PlanarTriangulation& mesh, const LayoutShapes& shapes,
                            const std::optional<ClosingWindow>& window) {
  RegionOfTriangle regions(mesh.triangles.size());
  for (const std::vector<int>& part : components(mesh)) {
    int roundest = part.front();
    for (const int t : part)
      if (height_m(mesh, t) > height_m(mesh, roundest)) roundest = t;
    // Slivers left by rounding along the hull belong to nothing.
    if (height_m(mesh, roundest) < 0.1 * kDrawingTolerance) continue;
    const Vec2 p = middle(mesh, roundest);
    if (window && (window->before_m(p) > 0.0 || window->beyond_m(p) > 0.0)) continue;
    const auto region = region_at(shapes, p);
    for (const int t : part) regions[t] = region;
  }
  return regions;
}

bool same_pair(const RegionSides& a, const RegionSides& b) {
  return (same(a[0], b[0]) && same(a[1], b[1])) || (same(a[0], b[1]) && same(a[1], b[0]));
}

LayoutLines layout_lines(const LayoutShapes& shapes, const std::optional<ClosingWindow>& window) {
  PlanarGraph drawn = noded_graph(drawn_lines(shapes, window), kDrawingTolerance);
  if (window)
    for (Vec2& p : drawn.points_m)
      for (const double x : {window->from_at_m(p.y()), window->to_at_m(p.y())})
        if (std::abs(p.x() - x) <= kDrawingTolerance) p.x() = x;
  const PlanarTriangulation coarse = constrained_delaunay(drawn);
  const RegionOfTriangle regions = regions_of(coarse, shapes, window);
  LayoutLines out;
  std::vector<int> renumbered(coarse.points_m.size(), -1);
  for (const EdgeSides& edge : edge_sides(coarse.triangles)) {
    const auto one = regions[edge.triangles[0]];
    const auto other = edge.triangles[1] < 0 ? std::nullopt : regions[edge.triangles[1]];
    if (same(one, other)) continue;
    Segment ends = edge.ends;
    for (int& end : ends) {
      if (renumbered[end] < 0) {
        renumbered[end] = static_cast<int>(out.graph.points_m.size());
        out.graph.points_m.push_back(coarse.points_m[end]);
      }
      end = renumbered[end];
    }
    out.graph.segments.push_back(ends);
    out.sides.push_back({one, other});
  }
  return out;
}

}  // namespace wrapgauge
