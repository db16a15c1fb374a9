#include "model/geometry/planar_triangulation.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

#include "model/geometry/planar_fill.hpp"

namespace wrapgauge {
namespace {

std::vector<std::pair<Vec2, Vec2>> loop_lines(const Polygon& loop) {
  std::vector<std::pair<Vec2, Vec2>> lines;
  for (std::size_t i = 0; i < loop.size(); ++i) lines.emplace_back(loop[i], loop[(i + 1) % loop.size()]);
  return lines;
}

double area(const PlanarTriangulation& mesh) {
  double sum = 0.0;
  for (const auto& t : mesh.triangles)
    sum += signed_area_m2({mesh.points_m[t[0]], mesh.points_m[t[1]], mesh.points_m[t[2]]});
  return sum;
}

double least_angle(const PlanarTriangulation& mesh) {
  double least = std::numeric_limits<double>::infinity();
  for (const auto& t : mesh.triangles)
    least =
        std::min(least, smallest_angle_deg(mesh.points_m[t[0]], mesh.points_m[t[1]], mesh.points_m[t[2]]));
  return least;
}

TEST(NodedGraph, SplitsLinesWhereTheyCross) {
  const PlanarGraph graph = noded_graph({{{0, 0}, {2, 2}}, {{0, 2}, {2, 0}}}, 1e-6);
  EXPECT_EQ(graph.points_m.size(), 5u);
  EXPECT_EQ(graph.segments.size(), 4u);
}

TEST(NodedGraph, MakesLinesDrawnOnOneAnotherOneLine) {
  const PlanarGraph graph = noded_graph({{{0, 0}, {3, 0}}, {{2, 1e-7}, {1, -1e-7}}}, 1e-6);
  EXPECT_EQ(graph.points_m.size(), 4u);
  EXPECT_EQ(graph.segments.size(), 3u);
}

TEST(NodedGraph, JoinsPointsCloserThanTheToleranceOnly) {
  EXPECT_EQ(noded_graph({{{0, 0}, {1, 0}}, {{1 + 5e-7, 0}, {2, 1}}}, 1e-6).points_m.size(), 3u);
  EXPECT_EQ(noded_graph({{{0, 0}, {1, 0}}, {{1 + 5e-6, 0}, {2, 1}}}, 1e-6).points_m.size(), 4u);
}

TEST(ConstrainedDelaunay, CoversTheHullAndKeepsEveryLine) {
  const PlanarGraph graph{{{0, 0}, {4, 0}, {4, 1}, {0, 1}, {1, 0.9}, {3, 0.1}}, {{0, 2}, {4, 2}}};
  const PlanarTriangulation mesh = constrained_delaunay(graph);
  EXPECT_NEAR(area(mesh), 4.0, 1e-12);
  ASSERT_EQ(mesh.lines.size(), 2u);
  EXPECT_EQ(mesh.lines[0].ends, (Segment{0, 2}));
  EXPECT_EQ(mesh.lines[1].ends, (Segment{2, 4}));
}

TEST(ConstrainedDelaunay, SurvivesFewAndCollinearPoints) {
  EXPECT_TRUE(constrained_delaunay({}).triangles.empty());
  EXPECT_TRUE(constrained_delaunay({{{0, 0}, {1, 0}, {2, 0}}, {{0, 2}}}).triangles.empty());
  EXPECT_TRUE(refined_delaunay({{{0, 0}, {1, 0}, {2, 0}}, {{0, 2}}}).triangles.empty());
}

// Each triangle and the one across an edge name each other, and the edges on lines are those of `lines`.
void expect_neighbours_that_agree(const PlanarTriangulation& mesh) {
  std::size_t on_lines = 0;
  for (int t = 0; t < static_cast<int>(mesh.triangles.size()); ++t)
    for (int k = 0; k < 3; ++k) {
      const int a = mesh.triangles[t][k], b = mesh.triangles[t][(k + 1) % 3];
      const auto line = mesh.line_on[t][k];
      if (line) {
        EXPECT_EQ(mesh.lines[*line].ends, (Segment{std::min(a, b), std::max(a, b)}));
      }
      const auto other = mesh.across[t][k];
      on_lines += line ? (other ? 1 : 2) : 0;  // seen from both sides, or once on the hull
      if (!other) continue;
      int back = 0;
      for (int m = 0; m < 3; ++m)
        if (mesh.triangles[*other][m] == b && mesh.triangles[*other][(m + 1) % 3] == a) {
          EXPECT_EQ(mesh.across[*other][m], t);
          EXPECT_EQ(mesh.line_on[*other][m], line);
          ++back;
        }
      EXPECT_EQ(back, 1);
    }
  EXPECT_EQ(on_lines, 2 * mesh.lines.size());
}

// The pieces of a segment lead from its first point to its second, none left out.
void expect_chains(const PlanarTriangulation& mesh, const PlanarGraph& graph) {
  std::vector<Vec2> sum(graph.segments.size(), Vec2::Zero());
  for (const LinePiece& piece : mesh.lines)
    sum[piece.segment] +=
        (piece.reversed ? -1.0 : 1.0) * (mesh.points_m[piece.ends[1]] - mesh.points_m[piece.ends[0]]);
  for (std::size_t s = 0; s < sum.size(); ++s) {
    const Vec2 whole = graph.points_m[graph.segments[s][1]] - graph.points_m[graph.segments[s][0]];
    EXPECT_LT((sum[s] - whole).norm(), 1e-12) << s;
  }
}

TEST(PlanarTriangulation, KnowsItsNeighboursAndTheLineEachPieceIsOf) {
  PlanarGraph graph = noded_graph(loop_lines({{0, 0}, {10, 0}, {10, 0.7}, {3, 0.7}, {0, 0.4}}), 1e-9);
  graph.segments.push_back({4, 1});
  for (const PlanarTriangulation& mesh : {constrained_delaunay(graph), refined_delaunay(graph)}) {
    expect_neighbours_that_agree(mesh);
    expect_chains(mesh, graph);
  }
}

TEST(TriangleAt, FindsTheTriangleThatHoldsAPointFromAnywhere) {
  const PlanarTriangulation mesh =
      refined_delaunay(noded_graph(loop_lines({{0, 0}, {10, 0}, {10, 0.7}, {3, 0.7}, {0, 0.4}}), 1e-9));
  for (int t = 0; t < static_cast<int>(mesh.triangles.size()); ++t) {
    const auto& [a, b, c] = mesh.triangles[t];
    const Vec2 inside = 0.2 * mesh.points_m[a] + 0.3 * mesh.points_m[b] + 0.5 * mesh.points_m[c];
    for (const std::size_t start : {std::size_t{0}, mesh.triangles.size() / 2, mesh.triangles.size() - 1})
      EXPECT_EQ(triangle_at(mesh, inside, static_cast<int>(start)), t);
  }
  EXPECT_EQ(triangle_at(mesh, {5, -1}), std::nullopt);
  EXPECT_EQ(triangle_at({}, {0, 0}), std::nullopt);
}

TEST(RefinedDelaunay, MendsTheAnglesOfALongStrip) {
  const PlanarGraph strip = noded_graph(loop_lines({{0, 0}, {10, 0}, {10, 0.7}, {0, 0.7}}), 1e-9);
  EXPECT_LT(least_angle(constrained_delaunay(strip)), 10.0);
  const PlanarTriangulation mesh = refined_delaunay(strip);
  EXPECT_GE(least_angle(mesh), 20.0);
  EXPECT_NEAR(area(mesh), 7.0, 1e-12);
}

TEST(RefinedDelaunay, EndsBesideASharpCorner) {
  const PlanarGraph wedge = noded_graph(loop_lines({{0, 0}, {10, 0}, {10, 1}}), 1e-9);
  EXPECT_NEAR(area(refined_delaunay(wedge)), 5.0, 1e-12);
}

TEST(SmallestAngle, OfAKnownTriangleIsThirtyDegrees) {
  EXPECT_NEAR(smallest_angle_deg({0, 0}, {std::sqrt(3.0), 0}, {0, 1}), 30.0, 1e-12);
}

TEST(SizeField, GrowsWithDistanceFromItsSourceUpToTheLargest) {
  const SizeField size({{0, 0}, {10, 10}}, 2.0, 0.5, {{{0, 5}, {10, 5}, 0.5, 1.0}});
  EXPECT_NEAR(size.at({3, 5}), 0.5, 1e-12);
  EXPECT_NEAR(size.at({3, 6}), 0.5, 1e-12);
  EXPECT_NEAR(size.at({3, 8}), 1.5, 1e-12);
  EXPECT_NEAR(size.at({3, 0}), 2.0, 1e-12);
  EXPECT_NEAR(size.at({-50, 99}), 2.0, 1e-12);
}

TEST(SampledGraph, CutsALineIntoPartsOfTheWantedLength) {
  const PlanarGraph line{{{0, 0}, {10, 0}}, {{0, 1}}};
  EXPECT_EQ(sampled_graph(line, {1}, [](const Vec2&) { return 2.0; }).graph.segments.size(), 5u);
  EXPECT_EQ(sampled_graph(line, {2}, [](const Vec2&) { return 50.0; }).graph.segments.size(), 2u);
  // Length growing along the line as 1 + x: the number of parts is the integral of 1/(1+x).
  const PlanarGraph graded = sampled_graph(line, {1}, [](const Vec2& p) { return 0.2 * (1 + p.x()); }).graph;
  EXPECT_EQ(graded.segments.size(), static_cast<std::size_t>(std::lround(5 * std::log(11.0))));
  EXPECT_LT((graded.points_m[2] - graded.points_m[0]).norm(), 0.3);
}

TEST(FillWithPoints, OfASquareIsNearlyEquilateral) {
  const PlanarGraph drawn = noded_graph(loop_lines({{0, 0}, {20, 0}, {20, 20}, {0, 20}}), 1e-9);
  const SizeField size({{0, 0}, {20, 20}}, 1.0, 0.3, {});
  PlanarGraph graph = sampled_graph(drawn, std::vector<int>(4, 1), [](const Vec2&) { return 1.0; }).graph;
  fill_with_points(graph, size, [](const Vec2& p) { return p.minCoeff() > 0 && p.maxCoeff() < 20; });
  smooth_free_points(graph, size, 15);
  const PlanarTriangulation mesh = constrained_delaunay(graph);
  EXPECT_NEAR(area(mesh), 400.0, 1e-9);
  EXPECT_GT(least_angle(mesh), 25.0);
  // An equilateral mesh of edge 1 has 400 / 0.433 triangles.
  EXPECT_NEAR(static_cast<double>(mesh.triangles.size()), 400 / 0.433, 0.08 * 400 / 0.433);
}

}  // namespace
}  // namespace wrapgauge
