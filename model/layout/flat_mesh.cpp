#include "model/layout/flat_mesh.hpp"

#include <algorithm>
#include <tuple>

#include "model/layout/air_groups.hpp"
#include "model/layout/coarsened_lines.hpp"
#include "model/layout/filled_lines.hpp"
#include "model/layout/mesh_request.hpp"
#include "model/layout/wanted_size.hpp"

namespace wrapgauge {
namespace {

// Of the wanted edge; at 1.0 the demo cuff's figures on its mesh of 3.5 mm are half a per cent farther off.
constexpr double kLongestChord = 0.8;

using Window = std::optional<ClosingWindow>;

struct MeshedLines {
  LayoutLines lines;
  RegionMesh mesh;  // with no points but those of the lines
};

MeshedLines meshed(LayoutLines lines) {
  RegionMesh mesh = with_regions(constrained_delaunay(lines.graph), lines.sides);
  return {std::move(lines), std::move(mesh)};
}

// The drawing as fine as the mesh needs it. Insets keep their points: they are drawn for the mesh as it is,
// by area. Closing lines keep theirs, so that both are sampled alike.
MeshedLines mesh_lines(const LayoutShapes& shapes, const Window& window, double longest_m) {
  const auto kept = [&](const Vec2& p) {
    if (window && (window->on_from(p) || window->on_to(p))) return true;
    for (const auto& chamber : shapes.chambers)
      for (const Polygon& inset : chamber.insets_m)
        if (distance_to_loop_m(inset, p) <= kDrawingTolerance) return true;
    return false;
  };
  LayoutLines drawn = layout_lines(shapes, window);
  MeshedLines coarse = meshed(coarsened_lines(drawn, longest_m, kept));
  // Chords that met would have been split there: then the drawing stays as it is.
  const bool met = coarse.mesh.mesh.points_m.size() > coarse.lines.graph.points_m.size();
  return met ? meshed(std::move(drawn)) : coarse;
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

// Keeps what belongs to the layout, in an order that depends on the places alone.
FlatMesh as_flat_mesh(const RegionMesh& meshed) {
  const auto& mesh = meshed.mesh;  // no structured binding: not every compiler lets a lambda see one
  const auto& regions = meshed.regions;
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

std::optional<Problem> find_closing_vertices(const ClosingWindow& window, FlatMesh& flat) {
  flat.closing_from = closing_vertices(flat, [&](const Vec2& p) { return window.on_from(p); });
  flat.closing_to = closing_vertices(flat, [&](const Vec2& p) { return window.on_to(p); });
  if (std::min(flat.closing_from.size(), flat.closing_to.size()) >= 2) return std::nullopt;
  return bad_input(
      Phrase::worded("The layout only touches a closing line at a point (from x = %1 to %2); close it where "
                     "it has an edge or "
                     "some height.",
                     {millimetres_of(Length(window.from_x_m)), millimetres_of(Length(window.to_x_m))}));
}

// Both closing lines are sampled by the smaller of their wanted lengths at each height.
double size_on_line(const SizeField& size, const Window& window, const Vec2& p) {
  if (!window || (!window->on_from(p) && !window->on_to(p))) return size.at(p);
  return std::min(size.at({window->from_at_m(p.y()), p.y()}), size.at({window->to_at_m(p.y()), p.y()}));
}

}  // namespace

Result<FlatMesh> triangulate_layout(const Layout& layout, std::optional<Length> closing_length,
                                    const FlatMeshOptions& options) {
  if (const auto problem = unusable_request(layout, options)) return *problem;
  const Length shortest = std::min(options.edge, options.seam_edge);
  const LayoutShapes shapes = layout_shapes(layout, shortest.si());
  const Result<Window> window = closing_window(layout, closing_length);
  if (!window) return window.problem();
  if (*window)
    if (const auto problem = cut_open_region(layout, shapes, **window)) return *problem;
  auto [lines, drawn] = mesh_lines(shapes, *window, kLongestChord * shortest.si());
  if (*window) copy_points_across(lines, **window, 0.25 * options.edge.si());
  const SizeField size = wanted_size(layout, lines, options);
  const LayoutLines sampled =
      sampled_lines(lines, [&](const Vec2& p) { return size_on_line(size, *window, p); });
  FlatMesh flat = as_flat_mesh(filled_lines(sampled, drawn, size));
  if (const auto problem = assign_groups(layout, shapes, lines.sides, flat)) return *problem;
  if (*window)
    if (const auto problem = find_closing_vertices(**window, flat)) return *problem;
  return flat;
}

}  // namespace wrapgauge
