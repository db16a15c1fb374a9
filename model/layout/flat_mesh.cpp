#include "model/layout/flat_mesh.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

#include "model/geometry/planar_fill.hpp"
#include "model/layout/air_groups.hpp"
#include "model/layout/coarsened_lines.hpp"
#include "model/layout/mesh_request.hpp"
#include "model/layout/region_map.hpp"

namespace wrapgauge {
namespace {

constexpr double kGrowth = 0.35;         // wanted edge length may grow by this a metre of distance
constexpr double kShortLineGrace = 1.4;  // edges beside a short drawn line may be this much longer than it
constexpr double kSmallestShare = 1.0 / 30.0;  // of the wanted edge: no place asks for less
// Of the wanted edge; at 1.0 the demo cuff's figures on its mesh of 3.5 mm are half a per cent farther off.
constexpr double kLongestChord = 0.8;
constexpr double kLeastAngleDeg = 20.0;

using Window = std::optional<ClosingWindow>;

// The regions beside the lines, read off the drawing as the mesh's will be, are the ones that the lines part:
// a chord has not moved a place that is read to the other side of a drawn line.
bool read_alike(const LayoutLines& lines, const LayoutShapes& shapes, const Window& window) {
  const PlanarTriangulation mesh = constrained_delaunay(lines.graph);
  const RegionOfTriangle regions = regions_of(mesh, shapes, window);
  std::map<Segment, RegionSides> read;
  for (const EdgeSides& edge : edge_sides(mesh.triangles))
    read[edge.ends] = {regions[edge.triangles[0]],
                       edge.triangles[1] < 0 ? std::nullopt : regions[edge.triangles[1]]};
  for (std::size_t i = 0; i < lines.graph.segments.size(); ++i) {
    const auto [a, b] = lines.graph.segments[i];
    const auto found = read.find({std::min(a, b), std::max(a, b)});
    if (found == read.end() || !same_pair(found->second, lines.sides[i])) return false;
  }
  return true;
}

// The drawing as fine as the mesh needs it. Insets keep their points: they are drawn for the mesh as it is,
// by area. Closing lines keep theirs, so that both are sampled alike.
LayoutLines mesh_lines(const LayoutShapes& shapes, const Window& window, double longest_m) {
  const auto kept = [&](const Vec2& p) {
    if (window && (window->on_from(p) || window->on_to(p))) return true;
    for (const auto& chamber : shapes.chambers)
      for (const Polygon& inset : chamber.insets_m)
        if (distance_to_loop_m(inset, p) <= kDrawingTolerance) return true;
    return false;
  };
  LayoutLines drawn = layout_lines(shapes, window);
  LayoutLines coarse = coarsened_lines(drawn, longest_m, kept);
  return read_alike(coarse, shapes, window) ? coarse : drawn;
}

// Lines between two open regions (a channel's mouth) are split at least once, so that they open in the
// middle.
std::vector<int> least_parts(const LayoutLines& lines) {
  std::vector<int> parts;
  for (const auto& [a, b] : lines.sides) parts.push_back(a && b && is_open(*a) && is_open(*b) ? 2 : 1);
  return parts;
}

SizeField size_field(const Layout& layout, const LayoutLines& lines, const FlatMeshOptions& options) {
  const double edge = options.edge.si(), seam_edge = std::min(edge, options.seam_edge.si());
  std::vector<SizeSource> sources;
  const auto add = [&](const Vec2& a, const Vec2& b, double size, double band) {
    if (size < edge) sources.push_back({a, b, std::max(size, kSmallestShare * edge), band});
  };
  for (std::size_t i = 0; i < lines.graph.segments.size(); ++i) {
    const Vec2& a = lines.graph.points_m[lines.graph.segments[i][0]];
    const Vec2& b = lines.graph.points_m[lines.graph.segments[i][1]];
    const auto& [left, right] = lines.sides[i];
    add(a, b, kShortLineGrace * (b - a).norm(), 0.0);
    if ((left && is_open(*left)) != (right && is_open(*right))) add(a, b, seam_edge, options.seam_band.si());
    for (const auto& side : {left, right})
      if (side && side->kind == RegionKind::kChannel) {
        const double width = layout.channels[side->part].width.si();
        // Two elements across, on a coarse mesh as long as the channel is wide: they open in their middle all
        // the same (split_spans).
        add(a, b, std::clamp(0.5 * edge, 0.5 * width, width), 0.5 * width);
      }
  }
  return SizeField(bounds(lines.graph.points_m), edge, kGrowth, sources);
}

// Each drawn point on one closing line is a point of the other too, unless one is near already.
void copy_points_across(LayoutLines& lines, const ClosingWindow& window, double least_gap) {
  std::vector<Vec2>& points = lines.graph.points_m;
  const auto copy = [&](const auto& on_source, const auto& on_target, const auto& target_x) {
    const std::vector<Vec2> given = points;
    for (const Vec2& p : given) {
      if (!on_source(p)) continue;
      for (std::size_t i = 0; i < lines.graph.segments.size(); ++i) {
        const Segment s = lines.graph.segments[i];
        if (!on_target(points[s[0]]) || !on_target(points[s[1]])) continue;
        const double low = std::min(points[s[0]].y(), points[s[1]].y());
        const double high = std::max(points[s[0]].y(), points[s[1]].y());
        if (p.y() < low + least_gap || p.y() > high - least_gap) continue;
        points.emplace_back(target_x(p.y()), p.y());
        const int added = static_cast<int>(points.size()) - 1;
        lines.graph.segments[i] = {s[0], added};
        lines.graph.segments.push_back({added, s[1]});
        const auto sides = lines.sides[i];
        lines.sides.push_back(sides);
        break;
      }
    }
  };
  const auto on_from = [&](const Vec2& p) { return window.on_from(p); };
  const auto on_to = [&](const Vec2& p) { return window.on_to(p); };
  copy(on_from, on_to, [&](double y) { return window.to_at_m(y); });
  copy(on_to, on_from, [&](double y) { return window.from_at_m(y); });
}

// Edges inside an open region that span from one weld to another would hold the sheets together: their
// middles.
std::vector<Segment> fused_spans(const PlanarTriangulation& mesh, const RegionOfTriangle& regions) {
  const auto open = [&](int t) { return t >= 0 && regions[t] && is_open(*regions[t]); };
  const std::vector<EdgeSides> edges = edge_sides(mesh.triangles);
  std::vector<bool> fused(mesh.points_m.size(), false);
  for (const EdgeSides& edge : edges)
    if (!open(edge.triangles[0]) || !open(edge.triangles[1]))
      fused[edge.ends[0]] = fused[edge.ends[1]] = true;
  std::vector<Segment> spans;
  for (const EdgeSides& edge : edges)
    if (open(edge.triangles[0]) && open(edge.triangles[1]) && fused[edge.ends[0]] && fused[edge.ends[1]])
      spans.push_back(edge.ends);
  return spans;
}

// Adds the middle of each span, and splits the graph's line where the span is one.
void split_spans(PlanarGraph& graph, const std::vector<Segment>& spans, std::vector<bool>& free) {
  for (const Segment& span : spans) {
    const int added = static_cast<int>(graph.points_m.size());
    graph.points_m.push_back(0.5 * (graph.points_m[span[0]] + graph.points_m[span[1]]));
    const auto line = std::find_if(graph.segments.begin(), graph.segments.end(), [&](const Segment& s) {
      return std::minmax(s[0], s[1]) == std::minmax(span[0], span[1]);
    });
    free.push_back(line == graph.segments.end());
    if (line == graph.segments.end()) continue;
    *line = {span[0], added};
    graph.segments.push_back({added, span[1]});
  }
}

bool has_sharp_triangle(const PlanarTriangulation& mesh, const RegionOfTriangle& regions) {
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& c = mesh.triangles[t];
    if (regions[t] &&
        smallest_angle_deg(mesh.points_m[c[0]], mesh.points_m[c[1]], mesh.points_m[c[2]]) < kLeastAngleDeg)
      return true;
  }
  return false;
}

struct Meshed {
  PlanarTriangulation mesh;
  RegionOfTriangle regions;
};

Meshed meshed_lines(const LayoutLines& lines, const LayoutShapes& shapes, const Window& window,
                    const SizeField& size) {
  const auto on_both_lines = [&](const Vec2& p) {
    if (!window || (!window->on_from(p) && !window->on_to(p))) return size.at(p);
    return std::min(size.at({window->from_at_m(p.y()), p.y()}), size.at({window->to_at_m(p.y()), p.y()}));
  };
  PlanarGraph graph = sampled_graph(lines.graph, least_parts(lines), on_both_lines);
  std::vector<bool> free(graph.points_m.size(), false);
  fill_with_points(graph, size, [&](const Vec2& p) {
    return (!window || (window->before_m(p) < 0.0 && window->beyond_m(p) < 0.0)) &&
           region_at(shapes, p).has_value();
  });
  free.resize(graph.points_m.size(), true);
  const auto triangulated = [&](const PlanarTriangulation& mesh) {
    return Meshed{mesh, regions_of(mesh, shapes, window)};
  };
  for (int round = 0; round < 3; ++round) {
    smooth_free_points(graph, free, size, 5);
    const Meshed now = triangulated(constrained_delaunay(graph));
    split_spans(graph, fused_spans(now.mesh, now.regions), free);
  }
  Meshed now = triangulated(constrained_delaunay(graph));
  for (int round = 0; round < 8; ++round) {
    if (has_sharp_triangle(now.mesh, now.regions)) now = triangulated(refined_delaunay(graph));
    const std::vector<Segment> spans = fused_spans(now.mesh, now.regions);
    if (spans.empty()) break;
    graph = {now.mesh.points_m, now.mesh.lines};
    free.assign(graph.points_m.size(), false);
    split_spans(graph, spans, free);
    now = triangulated(constrained_delaunay(graph));
  }
  return now;
}

// Keeps what belongs to the layout, in an order that depends on the places alone.
FlatMesh as_flat_mesh(const Meshed& meshed) {
  const auto& [mesh, regions] = meshed;
  std::vector<int> used;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    if (regions[t]) used.insert(used.end(), mesh.triangles[t].begin(), mesh.triangles[t].end());
  const auto key = [&](int i) { return std::make_tuple(mesh.points_m[i].x(), mesh.points_m[i].y(), i); };
  std::sort(used.begin(), used.end(), [&](int i, int j) { return key(i) < key(j); });
  used.erase(std::unique(used.begin(), used.end()), used.end());
  std::vector<int> renumbered(mesh.points_m.size(), -1);
  FlatMesh flat;
  flat.vertices_m.resize(static_cast<Eigen::Index>(used.size()), 2);
  for (std::size_t i = 0; i < used.size(); ++i) {
    renumbered[used[i]] = static_cast<int>(i);
    flat.vertices_m.row(static_cast<Eigen::Index>(i)) = mesh.points_m[used[i]].transpose();
  }
  std::vector<std::pair<std::array<int, 3>, FlatRegion>> triangles;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    if (!regions[t]) continue;
    std::array<int, 3> c = mesh.triangles[t];
    for (int& corner : c) corner = renumbered[corner];
    std::rotate(c.begin(), std::min_element(c.begin(), c.end()), c.end());
    triangles.emplace_back(c, *regions[t]);
  }
  std::sort(triangles.begin(), triangles.end(),
            [](const auto& a, const auto& b) { return a.first < b.first; });
  flat.triangles.resize(static_cast<Eigen::Index>(triangles.size()), 3);
  for (std::size_t t = 0; t < triangles.size(); ++t) {
    for (int k = 0; k < 3; ++k) flat.triangles(static_cast<Eigen::Index>(t), k) = triangles[t].first[k];
    flat.regions.push_back(triangles[t].second);
  }
  return flat;
}

template <class OnLine>
std::vector<int> closing_vertices(const FlatMesh& flat, const OnLine& on_line) {
  std::vector<int> found;
  for (Eigen::Index i = 0; i < flat.vertices_m.rows(); ++i)
    if (on_line(Vec2(flat.vertices_m.row(i)))) found.push_back(static_cast<int>(i));
  std::sort(found.begin(), found.end(),
            [&](int a, int b) { return flat.vertices_m(a, 1) < flat.vertices_m(b, 1); });
  return found;
}

}  // namespace

Result<FlatMesh> triangulate_layout(const Layout& layout, std::optional<Length> closing_length,
                                    const FlatMeshOptions& options) {
  if (const auto problem = unusable_request(layout, options)) return *problem;
  const LayoutShapes shapes = layout_shapes(layout, std::min(options.edge, options.seam_edge).si());
  const Result<Window> window = closing_window(layout, closing_length);
  if (!window) return window.problem();
  if (*window)
    if (const auto problem = cut_open_region(layout, shapes, **window)) return *problem;
  LayoutLines lines =
      mesh_lines(shapes, *window, kLongestChord * std::min(options.edge, options.seam_edge).si());
  if (*window) copy_points_across(lines, **window, 0.25 * options.edge.si());
  const SizeField size = size_field(layout, lines, options);
  FlatMesh flat = as_flat_mesh(meshed_lines(lines, shapes, *window, size));
  if (const auto problem = assign_groups(layout, shapes, flat)) return *problem;
  if (*window) {
    flat.closing_from = closing_vertices(flat, [&](const Vec2& p) { return (*window)->on_from(p); });
    flat.closing_to = closing_vertices(flat, [&](const Vec2& p) { return (*window)->on_to(p); });
    if (std::min(flat.closing_from.size(), flat.closing_to.size()) < 2)
      return bad_input("The layout only touches a closing line at a point (from x = " +
                       in_millimetres((*window)->from_x_m) + " to " + in_millimetres((*window)->to_x_m) +
                       "); close it where it has an edge or some height.");
  }
  return flat;
}

}  // namespace wrapgauge
