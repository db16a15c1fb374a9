// What flat_mesh.hpp promises of every mesh, on layouts drawn at random from every layout form.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <random>
#include <string>

#include "model/geometry/planar_triangulation.hpp"
#include "model/layout/coarsened_lines.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/layout/wanted_size.hpp"

namespace wrapgauge {
namespace {

constexpr int kLayouts = 60;

struct Meshed {
  std::string words;
  Layout layout;
  std::optional<Length> closing;
  FlatMeshOptions options;
  FlatMesh mesh;
};

// Evenly between, from the generator alone: the standard's distributions differ from library to library.
double between(std::mt19937& generator, double least, double most) {
  return least + (most - least) * static_cast<double>(generator()) / 4294967296.0;
}

std::map<std::string, double> random_values(std::mt19937& generator, const LayoutForm& form) {
  std::map<std::string, double> values;
  for (const LayoutParameter& p : form.parameters) {
    double wanted = p.default_value * between(generator, 0.5, 1.6);
    if (p.default_value == 0.0) wanted = between(generator, p.least, 0.7 * p.least + 0.3 * p.most);
    values[p.name] = std::clamp(p.whole ? std::round(wanted) : wanted, p.least, p.most);
  }
  return values;
}

// Halfway between the last open region and the end.
std::optional<Length> closing_length(const Layout& layout) {
  if (!layout.closure) return std::nullopt;
  double open = 0.0, end = 0.0;
  for (const Chamber& chamber : layout.chambers) open = std::max(open, bounds(chamber.boundary_m).high.x());
  for (const Polygon& channel : layout_shapes(layout, 1e-3).channels_m)
    open = std::max(open, bounds(channel).high.x());
  end = bounds(layout.outline_m).high.x();
  for (const Strap& strap : layout.straps) end = std::max(end, bounds(strap.boundary_m).high.x());
  return Length(0.5 * (open + end) - layout.closure->from_x_m);
}

std::vector<Meshed> random_meshes() {
  std::vector<Meshed> meshes;
  for (unsigned seed = 0; meshes.size() < kLayouts && seed < 10 * kLayouts; ++seed) {
    std::mt19937 generator(seed);
    const LayoutForm& form = layout_forms()[generator() % layout_forms().size()];
    auto layout = make_layout(form.name, random_values(generator, form));
    if (!layout) continue;
    const Length edge = between(generator, 5e-3, 10e-3) * metre;
    const FlatMeshOptions options{edge, seed % 3 == 0 ? 0.5 * edge : edge};
    for (const auto& closing : {closing_length(*layout), std::optional<Length>()}) {
      auto mesh = triangulate_layout(*layout, closing, options);
      if (!mesh) continue;  // the closing line cannot lie there
      meshes.push_back({form.name + ", seed " + std::to_string(seed), *layout, closing, options, *mesh});
      break;
    }
  }
  return meshes;
}

const std::vector<Meshed>& meshes() {
  static const std::vector<Meshed> made = random_meshes();
  return made;
}

Polygon triangle(const FlatMesh& mesh, Eigen::Index t) {
  Polygon corners;
  for (int k = 0; k < 3; ++k) corners.push_back(mesh.vertices_m.row(mesh.triangles(t, k)).transpose());
  return corners;
}

LayoutShapes shapes_of(const Meshed& of) {
  return layout_shapes(of.layout, std::min(of.options.edge, of.options.seam_edge).si());
}

LayoutLines drawn_lines(const Meshed& of) {
  return layout_lines(shapes_of(of), closing_window(of.layout, of.closing).value());
}

// How far a chord may lie from the curve that it stands for (coarsened_lines.hpp).
double chord_off_m(const Meshed& of) {
  return 0.05 * 0.8 * std::min(of.options.edge, of.options.seam_edge).si() + 1e-9;
}

struct Edge {
  Vec2 from, to;
  RegionSides sides;
};

// Each edge of the mesh once, with what is left and right of it.
std::vector<Edge> edges_of(const FlatMesh& mesh) {
  std::map<std::pair<int, int>, RegionSides> sides;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    for (int k = 0; k < 3; ++k) {
      const int a = mesh.triangles(t, k), b = mesh.triangles(t, (k + 1) % 3);
      sides[std::minmax(a, b)][a < b ? 0 : 1] = mesh.regions[t];
    }
  std::vector<Edge> edges;
  for (const auto& [ends, pair] : sides)
    edges.push_back({mesh.vertices_m.row(ends.first), mesh.vertices_m.row(ends.second), pair});
  return edges;
}

std::vector<Edge> parting_edges(const FlatMesh& mesh) {
  std::vector<Edge> edges = edges_of(mesh);
  std::erase_if(edges, [](const Edge& edge) { return same(edge.sides[0], edge.sides[1]); });
  return edges;
}

std::vector<Edge> edges_of(const LayoutLines& lines) {
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < lines.sides.size(); ++i) {
    const auto [a, b] = lines.graph.segments[i];
    edges.push_back({lines.graph.points_m[a], lines.graph.points_m[b], lines.sides[i]});
  }
  return edges;
}

double distance_to_m(const std::vector<Edge>& edges, const Vec2& p, const RegionSides& sides) {
  double least = std::numeric_limits<double>::infinity();
  for (const Edge& edge : edges)
    if (same_pair(edge.sides, sides)) least = std::min(least, distance_to_segment_m(p, edge.from, edge.to));
  return least;
}

TEST(FlatMeshOfRandomLayouts, AreSixtyOfAllForms) {
  ASSERT_EQ(meshes().size(), static_cast<std::size_t>(kLayouts));
  std::map<std::string, int> of_form;
  for (const Meshed& of : meshes()) ++of_form[of.words.substr(0, of.words.find(','))];
  EXPECT_EQ(of_form.size(), layout_forms().size());
}

TEST(FlatMeshOfRandomLayouts, HasNoTriangleTurnedOverAndNoAngleBelowTwentyDegrees) {
  for (const Meshed& of : meshes())
    for (Eigen::Index t = 0; t < of.mesh.triangles.rows(); ++t) {
      const Polygon p = triangle(of.mesh, t);
      ASSERT_GT(signed_area_m2(p), 0.0) << of.words;
      ASSERT_GE(smallest_angle_deg(p[0], p[1], p[2]), 20.0) << of.words;
    }
}

// Both ways: every drawn line lies on edges between the same two regions, and every such edge on a drawn
// line.
TEST(FlatMeshOfRandomLayouts, KeepsEveryLineAsAChainOfEdgesAndPartsRegionsNowhereElse) {
  for (const Meshed& of : meshes()) {
    const std::vector<Edge> drawn = edges_of(drawn_lines(of)), kept = parting_edges(of.mesh);
    for (const Edge& line : drawn)
      for (const double share : {0.0, 0.2, 0.4, 0.6, 0.8, 1.0}) {
        const Vec2 p = line.from + share * (line.to - line.from);
        ASSERT_LE(distance_to_m(kept, p, line.sides), chord_off_m(of)) << of.words << " at " << p.transpose();
      }
    for (const Edge& edge : kept)
      for (const double share : {0.0, 0.5}) {
        const Vec2 p = edge.from + share * (edge.to - edge.from);
        ASSERT_LE(distance_to_m(drawn, p, edge.sides), chord_off_m(of))
            << of.words << " at " << p.transpose();
      }
  }
}

// Of the lines' own triangulation, by regions.
std::map<std::pair<int, int>, double> areas_m2(const LayoutLines& lines) {
  const auto [mesh, regions] = with_regions(constrained_delaunay(lines.graph), lines.sides);
  std::map<std::pair<int, int>, double> areas;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& [a, b, c] = mesh.triangles[t];
    if (regions[t])
      areas[{static_cast<int>(regions[t]->kind), regions[t]->part}] +=
          signed_area_m2({mesh.points_m[a], mesh.points_m[b], mesh.points_m[c]});
  }
  return areas;
}

TEST(FlatMeshOfRandomLayouts, HasTheAreaOfEveryPartButForTheChordsOfItsCurves) {
  for (const Meshed& of : meshes()) {
    std::map<std::pair<int, int>, double> areas, most_off;
    for (Eigen::Index t = 0; t < of.mesh.triangles.rows(); ++t) {
      const FlatRegion& region = of.mesh.regions[t];
      areas[{static_cast<int>(region.kind), region.part}] += signed_area_m2(triangle(of.mesh, t));
    }
    for (const Edge& edge : parting_edges(of.mesh))
      for (const auto& side : edge.sides)
        if (side)
          most_off[{static_cast<int>(side->kind), side->part}] +=
              2.0 / 3.0 * chord_off_m(of) * (edge.to - edge.from).norm();  // a parabola over its chord
    const auto drawn = areas_m2(drawn_lines(of));
    ASSERT_EQ(drawn.size(), areas.size()) << of.words;
    for (const auto& [part, area] : drawn) EXPECT_NEAR(areas[part], area, most_off[part]) << of.words;
  }
}

TEST(FlatMeshOfRandomLayouts, NeverSpansAnOpenRegionFromWeldToWeldWithOneEdge) {
  const auto open = [](const std::optional<FlatRegion>& region) { return region && is_open(*region); };
  for (const Meshed& of : meshes()) {
    std::map<std::pair<double, double>, bool> fused;
    const std::vector<Edge> edges = edges_of(of.mesh);
    for (const Edge& edge : edges)
      if (!open(edge.sides[0]) || !open(edge.sides[1]))
        fused[{edge.from.x(), edge.from.y()}] = fused[{edge.to.x(), edge.to.y()}] = true;
    for (const Edge& edge : edges)
      if (open(edge.sides[0]) && open(edge.sides[1])) {
        ASSERT_FALSE(fused.count({edge.from.x(), edge.from.y()}) && fused.count({edge.to.x(), edge.to.y()}))
            << of.words << " at " << edge.from.transpose();
      }
  }
}

// As the mesh has them: curves as chords, insets as they are drawn.
LayoutLines chord_lines(const Meshed& of) {
  const LayoutShapes shapes = shapes_of(of);
  const double longest_m = 0.8 * std::min(of.options.edge, of.options.seam_edge).si();
  return coarsened_lines(drawn_lines(of), longest_m, [&](const Vec2& p) {
    for (const auto& chamber : shapes.chambers)
      for (const Polygon& inset : chamber.insets_m)
        if (distance_to_loop_m(inset, p) <= kDrawingTolerance) return true;
    return false;
  });
}

TEST(FlatMeshOfRandomLayouts, HasEdgesOfAboutTheLengthAskedForAtTheirPlace) {
  double sum = 0.0;
  int count = 0;
  for (const Meshed& of : meshes()) {
    const SizeField size = wanted_size(of.layout, chord_lines(of), of.options);
    for (const Edge& edge : edges_of(of.mesh)) {
      const double share = (edge.to - edge.from).norm() / size.at(0.5 * (edge.from + edge.to));
      ASSERT_LT(share, 2.5) << of.words << " at " << edge.from.transpose();
      sum += share, ++count;
    }
  }
  EXPECT_NEAR(sum / count, 1.0, 0.1);
}

TEST(FlatMeshOfRandomLayouts, IsTheSameForTheSameInput) {
  for (std::size_t i = 0; i < meshes().size(); i += 6) {
    const Meshed& of = meshes()[i];
    const auto again = triangulate_layout(of.layout, of.closing, of.options);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->vertices_m, of.mesh.vertices_m) << of.words;
    EXPECT_EQ(again->triangles, of.mesh.triangles) << of.words;
  }
}

}  // namespace
}  // namespace wrapgauge
