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
  EXPECT_EQ(mesh.lines, (std::vector<Segment>{{0, 2}, {2, 4}}));
}

TEST(ConstrainedDelaunay, SurvivesFewAndCollinearPoints) {
  EXPECT_TRUE(constrained_delaunay({}).triangles.empty());
  EXPECT_TRUE(constrained_delaunay({{{0, 0}, {1, 0}, {2, 0}}, {{0, 2}}}).triangles.empty());
  EXPECT_TRUE(refined_delaunay({{{0, 0}, {1, 0}, {2, 0}}, {{0, 2}}}).triangles.empty());
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
  EXPECT_EQ(sampled_graph(line, {1}, [](const Vec2&) { return 2.0; }).segments.size(), 5u);
  EXPECT_EQ(sampled_graph(line, {2}, [](const Vec2&) { return 50.0; }).segments.size(), 2u);
  // Length growing along the line as 1 + x: the number of parts is the integral of 1/(1+x).
  const PlanarGraph graded = sampled_graph(line, {1}, [](const Vec2& p) { return 0.2 * (1 + p.x()); });
  EXPECT_EQ(graded.segments.size(), static_cast<std::size_t>(std::lround(5 * std::log(11.0))));
  EXPECT_LT((graded.points_m[2] - graded.points_m[0]).norm(), 0.3);
}

TEST(FillWithPoints, OfASquareIsNearlyEquilateral) {
  const PlanarGraph drawn = noded_graph(loop_lines({{0, 0}, {20, 0}, {20, 20}, {0, 20}}), 1e-9);
  const SizeField size({{0, 0}, {20, 20}}, 1.0, 0.3, {});
  PlanarGraph graph = sampled_graph(drawn, std::vector<int>(4, 1), [](const Vec2&) { return 1.0; });
  const std::size_t fixed = graph.points_m.size();
  fill_with_points(graph, size, [](const Vec2& p) { return p.minCoeff() > 0 && p.maxCoeff() < 20; });
  std::vector<bool> free(graph.points_m.size(), true);
  std::fill_n(free.begin(), fixed, false);
  smooth_free_points(graph, free, size, 15);
  const PlanarTriangulation mesh = constrained_delaunay(graph);
  EXPECT_NEAR(area(mesh), 400.0, 1e-9);
  EXPECT_GT(least_angle(mesh), 25.0);
  // An equilateral mesh of edge 1 has 400 / 0.433 triangles.
  EXPECT_NEAR(static_cast<double>(mesh.triangles.size()), 400 / 0.433, 0.08 * 400 / 0.433);
}

}  // namespace
}  // namespace wrapgauge
