#include "model/layout/layout_lines.hpp"

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
  return longest > 0.0 ? std::abs(cross(ab, ac)) / longest : 0.0;
}

Vec2 middle(const PlanarTriangulation& mesh, int t) {
  const auto& corners = mesh.triangles[t];
  return (mesh.points_m[corners[0]] + mesh.points_m[corners[1]] + mesh.points_m[corners[2]]) / 3.0;
}

// Triangles that no line parts, with `first` among them.
std::vector<int> triangles_from(const PlanarTriangulation& mesh, int first, std::vector<bool>& seen) {
  std::vector<int> part{first};
  seen[first] = true;
  for (std::size_t i = 0; i < part.size(); ++i)
    for (int k = 0; k < 3; ++k) {
      const auto next = mesh.across[part[i]][k];
      if (!next || seen[*next] || mesh.line_on[part[i]][k]) continue;
      seen[*next] = true;
      part.push_back(*next);
    }
  return part;
}

// What the drawing has at each triangle, read at the middle of the roundest of those that no line parts.
std::vector<std::optional<FlatRegion>> drawn_regions(const PlanarTriangulation& mesh,
                                                     const LayoutShapes& shapes,
                                                     const std::optional<ClosingWindow>& window) {
  std::vector<std::optional<FlatRegion>> regions(mesh.triangles.size());
  std::vector<bool> seen(mesh.triangles.size(), false);
  for (int first = 0; first < static_cast<int>(mesh.triangles.size()); ++first) {
    if (seen[first]) continue;
    const std::vector<int> part = triangles_from(mesh, first, seen);
    int roundest = first;
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
    const std::vector<double> heights = window->heights_m(low, high);
    for (std::size_t k = 1; k < heights.size(); ++k) {
      const double from = heights[k - 1], to = heights[k];
      lines.emplace_back(Vec2(window->from_at_m(from), from), Vec2(window->from_at_m(to), to));
      lines.emplace_back(Vec2(window->to_at_m(from), from), Vec2(window->to_at_m(to), to));
    }
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

// An edge with different regions on its sides, and these.
struct PartingEdge {
  Segment ends;  // the smaller index first
  RegionSides sides;
};

std::vector<PartingEdge> parting_edges(const PlanarTriangulation& mesh,
                                       const std::vector<std::optional<FlatRegion>>& regions) {
  std::vector<PartingEdge> edges;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    for (int k = 0; k < 3; ++k) {
      const auto other = mesh.across[t][k];
      const int a = mesh.triangles[t][k], b = mesh.triangles[t][(k + 1) % 3];
      if (other && b < a) continue;  // seen from the other triangle
      const auto beyond = other ? regions[*other] : std::nullopt;
      if (same(regions[t], beyond)) continue;
      edges.push_back(a < b ? PartingEdge{{a, b}, {regions[t], beyond}}
                            : PartingEdge{{b, a}, {beyond, regions[t]}});
    }
  std::sort(edges.begin(), edges.end(),
            [](const PartingEdge& a, const PartingEdge& b) { return a.ends < b.ends; });
  return edges;
}

}  // namespace

bool same_pair(const RegionSides& a, const RegionSides& b) {
  return (same(a[0], b[0]) && same(a[1], b[1])) || (same(a[0], b[1]) && same(a[1], b[0]));
}

LayoutLines layout_lines(const LayoutShapes& shapes, const std::optional<ClosingWindow>& window) {
  PlanarGraph drawn = noded_graph(drawn_lines(shapes, window), kDrawingTolerance);
  if (window)
    for (Vec2& p : drawn.points_m)
      for (const double x : {window->from_at_m(p.y()), window->to_at_m(p.y())})
        if (std::abs(p.x() - x) <= kDrawingTolerance) p.x() = x;
  const PlanarTriangulation mesh = constrained_delaunay(drawn);
  LayoutLines out;
  std::vector<int> renumbered(mesh.points_m.size(), -1);
  for (PartingEdge& edge : parting_edges(mesh, drawn_regions(mesh, shapes, window))) {
    for (int& end : edge.ends) {
      if (renumbered[end] < 0) {
        renumbered[end] = static_cast<int>(out.graph.points_m.size());
        out.graph.points_m.push_back(mesh.points_m[end]);
      }
      end = renumbered[end];
    }
    out.graph.segments.push_back(edge.ends);
    out.sides.push_back(edge.sides);
  }
  return out;
}

bool RegionMesh::is_open_at(const std::optional<int>& triangle) const {
  return triangle && regions[*triangle] && is_open(*regions[*triangle]);
}

RegionMesh with_regions(PlanarTriangulation mesh, const std::vector<RegionSides>& sides) {
  std::vector<std::optional<FlatRegion>> regions(mesh.triangles.size());
  std::vector<bool> seen(mesh.triangles.size(), false);
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    for (int k = 0; k < 3; ++k) {
      if (seen[t] || !mesh.line_on[t][k]) continue;
      const LinePiece& piece = mesh.lines[*mesh.line_on[t][k]];
      // A triangle lies left of its edge; the line may run the other way.
      const bool along = (piece.ends[0] == mesh.triangles[t][k]) != piece.reversed;
      const auto region = sides[piece.segment][along ? 0 : 1];
      for (const int one : triangles_from(mesh, static_cast<int>(t), seen)) regions[one] = region;
    }
  return {std::move(mesh), std::move(regions)};
}

LayoutLines pieces_as_lines(PlanarTriangulation& mesh, const std::vector<RegionSides>& sides) {
  LayoutLines pieces{{mesh.points_m, {}}, {}};
  for (LinePiece& piece : mesh.lines) {
    const auto& [left, right] = sides[piece.segment];
    pieces.sides.push_back(piece.reversed ? RegionSides{right, left} : RegionSides{left, right});
    piece = {piece.ends, static_cast<int>(pieces.graph.segments.size()), false};
    pieces.graph.segments.push_back(piece.ends);
  }
  return pieces;
}

}  // namespace wrapgauge
