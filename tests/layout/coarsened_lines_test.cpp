#include "model/layout/coarsened_lines.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "model/geometry/stroke.hpp"
#include "model/layout/flat_mesh.hpp"
#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

using test::bare_layout;
using test::rectangle;

Layout with_chamber(Polygon boundary) {
  Layout layout = bare_layout(0.2, 0.2);
  layout.chambers.push_back({"pad", std::move(boundary), {}, {}});
  return layout;
}

LayoutLines drawn(const Layout& layout) {
  return layout_lines(layout_shapes(layout, 0.004), std::nullopt);
}

LayoutLines coarsened(const Layout& layout, double edge_m) {
  return coarsened_lines(drawn(layout), edge_m, [](const Vec2&) { return false; });
}

double chamber_area_m2(const LayoutLines& lines) {
  const auto [mesh, regions] = with_regions(constrained_delaunay(lines.graph), lines.sides);
  double sum = 0.0;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    if (regions[t] && regions[t]->kind == RegionKind::kChamber) {
      const auto& [a, b, c] = mesh.triangles[t];
      sum += signed_area_m2({mesh.points_m[a], mesh.points_m[b], mesh.points_m[c]});
    }
  return sum;
}

bool has_point(const LayoutLines& lines, const Vec2& p) {
  return std::any_of(lines.graph.points_m.begin(), lines.graph.points_m.end(),
                     [&](const Vec2& q) { return (p - q).norm() < 1e-9; });
}

std::set<std::pair<double, double>> places(const LayoutLines& lines) {
  std::set<std::pair<double, double>> out;
  for (const Vec2& p : lines.graph.points_m)
    out.emplace(std::round(p.x() * 1e8) + 0.0, std::round(p.y() * 1e8) + 0.0);
  return out;
}

// Segments without a shared end that meet all the same.
int crossings(const PlanarGraph& graph) {
  const auto side = [&](int a, int b, int p) {
    const Vec2 u = graph.points_m[b] - graph.points_m[a], v = graph.points_m[p] - graph.points_m[a];
    return u.x() * v.y() - u.y() * v.x() > 0.0;
  };
  int found = 0;
  for (std::size_t i = 0; i < graph.segments.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      const auto [a, b] = graph.segments[i];
      const auto [c, d] = graph.segments[j];
      if (a == c || a == d || b == c || b == d) continue;
      if (side(a, b, c) != side(a, b, d) && side(c, d, a) != side(c, d, b)) ++found;
    }
  return found;
}

double least_gap_m(const PlanarGraph& graph, const Vec2& centre, double between_m) {
  double least = 1.0;
  for (const Vec2& p : graph.points_m)
    for (const Segment& s : graph.segments) {
      const Vec2 &a = graph.points_m[s[0]], &b = graph.points_m[s[1]];
      const bool p_inside = (p - centre).norm() < between_m, s_inside = (a - centre).norm() < between_m;
      if (p_inside != s_inside) least = std::min(least, distance_to_segment_m(p, a, b));
    }
  return least;
}

// A chord c of a circle of radius r cuts off c^2/(12 r) a metre of its length.
TEST(CoarsenedLines, CutOffAnAreaThatFallsWithTheSquareOfTheEdge) {
  constexpr double kRadius = 0.03, kArc = 2.0 * std::numbers::pi * kRadius;
  for (const Layout& layout : {with_chamber(flattened_ellipse({0.1, 0.1}, {kRadius, kRadius}, 1e-6)),
                               with_chamber(flattened_rectangle({0.05, 0.06}, {0.1, 0.08}, kRadius, 1e-6))}) {
    const LayoutLines fine = drawn(layout);
    const double exact = chamber_area_m2(fine);
    double cut_before = 0.0;
    for (const double edge : {0.008, 0.004, 0.002}) {
      const LayoutLines lines = coarsened(layout, edge);
      const double cut = exact - chamber_area_m2(lines);
      EXPECT_LT(cut, 1.01 * kArc * edge * edge / (12.0 * kRadius)) << edge;
      EXPECT_GT(cut, 0.6 * kArc * edge * edge / (12.0 * kRadius)) << edge;
      if (cut_before > 0.0) {
        EXPECT_NEAR(std::log2(cut_before / cut), 2.0, 0.35) << edge;
      }
      cut_before = cut;
      EXPECT_LT(lines.graph.points_m.size(), 20 + 1.3 * kArc / edge);
    }
  }
}

TEST(CoarsenedLines, KeepASmallCircleRound) {
  const Layout layout = with_chamber(flattened_ellipse({0.1, 0.1}, {0.002, 0.002}, 1e-6));
  const double exact = std::numbers::pi * 0.002 * 0.002;
  EXPECT_NEAR(chamber_area_m2(coarsened(layout, 0.05)), exact, 0.09 * exact);
}

TEST(CoarsenedLines, KeepCornersAndWhereThreeLinesMeet) {
  Layout layout = bare_layout(0.2, 0.1);
  layout.chambers.push_back({"a", rectangle(0.05, 0.02, 0.003, 0.003), {}, {}});  // smaller than an edge
  layout.chambers.push_back({"b", rectangle(0.12, 0.02, 0.05, 0.05), {}, {}});
  layout.straps.push_back({"strap", rectangle(0.2, 0.0485, 0.04, 0.003), 20.0 * N_per_mm, 1.0 * mm});
  const LayoutLines lines = coarsened(layout, 0.012);
  for (const Chamber& chamber : layout.chambers)
    for (const Vec2& p : chamber.boundary_m) EXPECT_TRUE(has_point(lines, p)) << p.transpose();
  for (const Vec2& p : layout.straps[0].boundary_m) EXPECT_TRUE(has_point(lines, p)) << p.transpose();
}

TEST(CoarsenedLines, OfADrawingOfLongLinesAreTheSame) {
  const Layout layout = with_chamber(rectangle(0.05, 0.05, 0.1, 0.1));
  const LayoutLines before = drawn(layout), after = coarsened(layout, 0.008);
  EXPECT_EQ(places(before), places(after));
  EXPECT_EQ(before.graph.segments.size(), after.graph.segments.size());
}

// The outline's chords would cut through a chamber that lies a tenth of a millimetre inside it.
TEST(CoarsenedLines, OfTwoCloseCurvesNeitherCrossNorTakeTheWeldBetween) {
  constexpr double kRadius = 0.030, kGap = 1e-4, kEdge = 0.008;
  Layout layout = with_chamber(flattened_ellipse({0.1, 0.1}, {kRadius - kGap, kRadius - kGap}, 1e-6));
  layout.outline_m = flattened_ellipse({0.1, 0.1}, {kRadius, kRadius}, 1e-6);
  const LayoutLines fine = drawn(layout), lines = coarsened(layout, kEdge);
  EXPECT_LT(lines.graph.points_m.size(), fine.graph.points_m.size());
  EXPECT_EQ(crossings(lines.graph), 0);
  const double before = least_gap_m(fine.graph, {0.1, 0.1}, kRadius - 0.5 * kGap);
  const double after = least_gap_m(lines.graph, {0.1, 0.1}, kRadius - 0.5 * kGap);
  EXPECT_GE(after, 0.49 * before);
  const Result<FlatMesh> mesh = [&] {
    layout.inlets = {{"inlet", {0.1, 0.1}}};
    return triangulate_layout(layout, std::nullopt, {kEdge * metre, kEdge * metre});
  }();
  ASSERT_TRUE(mesh.ok());
  EXPECT_TRUE(std::any_of(mesh->regions.begin(), mesh->regions.end(),
                          [](const FlatRegion& region) { return region.kind == RegionKind::kWeld; }));
}

TEST(CoarsenedLines, OfASymmetricDrawingAreSymmetric) {
  const Layout layout = with_chamber(flattened_rectangle({0.05, 0.06}, {0.1, 0.08}, 0.008, 5e-5));
  const auto before = places(drawn(layout)), after = places(coarsened(layout, 0.008));
  EXPECT_LT(after.size(), before.size() - 10);
  for (const auto& [x, y] : after) {
    EXPECT_EQ(after.count({2e7 - x, y}), 1u) << x << " " << y;
    EXPECT_EQ(after.count({x, 2e7 - y}), 1u) << x << " " << y;
  }
}

TEST(CoarsenedLines, KeepPointsThatAreAskedFor) {
  const Layout layout = with_chamber(flattened_ellipse({0.1, 0.1}, {0.03, 0.03}, 5e-5));
  const LayoutLines fine = drawn(layout);
  const LayoutLines lines = coarsened_lines(fine, 0.012, [](const Vec2& p) { return p.x() > 0.1; });
  for (const Vec2& p : fine.graph.points_m) EXPECT_TRUE(p.x() <= 0.1 || has_point(lines, p));
  EXPECT_LT(lines.graph.points_m.size(), fine.graph.points_m.size());
}

TEST(CoarsenedLines, AreTheSameForTheSameInputAndGiveACoarseMeshFewVertices) {
  const Layout layout = test::four_chamber_cuff();
  const LayoutLines one = coarsened(layout, 0.008), two = coarsened(layout, 0.008);
  EXPECT_EQ(one.graph.points_m, two.graph.points_m);
  EXPECT_EQ(one.graph.segments, two.graph.segments);
  const auto mesh = triangulate_layout(layout, std::nullopt, {8.0 * mm, 8.0 * mm});
  ASSERT_TRUE(mesh.ok());
  // Equilateral triangles of 8 mm over 260 x 100 mm and the strap would have 510.
  EXPECT_LT(mesh->vertices_m.rows(), 750);
}

}  // namespace
}  // namespace wrapgauge
