#include "model/layout/flat_mesh.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <numbers>
#include <set>

#include "model/geometry/planar_triangulation.hpp"
#include "model/layout/layout_shapes.hpp"
#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

using test::bare_layout;
using test::four_chamber_cuff;
using test::mirrored;
using test::rectangle;

FlatMesh meshed(const Layout& layout, const FlatMeshOptions& options = {},
                std::optional<Length> closing = std::nullopt) {
  Result<FlatMesh> mesh = triangulate_layout(layout, closing, options);
  EXPECT_TRUE(mesh.ok()) << (mesh.ok() ? "" : mesh.problem().message);
  return mesh.ok() ? *mesh : FlatMesh{};
}

std::string refusal(const Layout& layout, std::optional<Length> closing = std::nullopt,
                    FlatMeshOptions options = {}) {
  const Result<FlatMesh> mesh = triangulate_layout(layout, closing, options);
  return mesh.ok() ? "" : mesh.problem().message;
}

Vec2 corner(const FlatMesh& mesh, Eigen::Index t, int k) {
  return mesh.vertices_m.row(mesh.triangles(t, k)).transpose();
}

double area_m2(const FlatMesh& mesh, RegionKind kind, int part = 0) {
  double sum = 0.0;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    if (mesh.regions[t].kind == kind && mesh.regions[t].part == part)
      sum += signed_area_m2({corner(mesh, t, 0), corner(mesh, t, 1), corner(mesh, t, 2)});
  return sum;
}

double smallest_angle(const FlatMesh& mesh) {
  double least = 180.0;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    least = std::min(least, smallest_angle_deg(corner(mesh, t, 0), corner(mesh, t, 1), corner(mesh, t, 2)));
  return least;
}

using Edge = std::pair<int, int>;
std::map<Edge, std::vector<int>> triangles_of_edges(const FlatMesh& mesh) {
  std::map<Edge, std::vector<int>> edges;
  for (int t = 0; t < static_cast<int>(mesh.triangles.rows()); ++t)
    for (int k = 0; k < 3; ++k)
      edges[std::minmax(mesh.triangles(t, k), mesh.triangles(t, (k + 1) % 3))].push_back(t);
  return edges;
}

double mean_edge_m(const FlatMesh& mesh) {
  double sum = 0.0;
  const auto edges = triangles_of_edges(mesh);
  for (const auto& [edge, triangles] : edges)
    sum += (mesh.vertices_m.row(edge.first) - mesh.vertices_m.row(edge.second)).norm();
  return sum / static_cast<double>(edges.size());
}

// Edges inside an open region whose two ends are both fused: they would hold the sheets together.
int fused_spans(const FlatMesh& mesh) {
  const auto edges = triangles_of_edges(mesh);
  std::set<int> fused;
  const auto closed = [&](int t) { return !is_open(mesh.regions[t]); };
  for (const auto& [edge, triangles] : edges)
    if (triangles.size() == 1 || closed(triangles[0]) || closed(triangles[1]))
      fused.insert({edge.first, edge.second});
  int spans = 0;
  for (const auto& [edge, triangles] : edges)
    if (triangles.size() == 2 && !closed(triangles[0]) && !closed(triangles[1]) && fused.count(edge.first) &&
        fused.count(edge.second))
      ++spans;
  return spans;
}

Layout pad_with_insets() {
  Layout layout = bare_layout(0.240, 0.100);
  layout.chambers.push_back({"pad", rectangle(0.02, 0.02, 0.2, 0.06), {}, {}});
  layout.chambers[0].inset_spots = {{{0.06, 0.05}, 3.0 * mm}, {{0.12, 0.04}, 1.0 * mm}};
  layout.chambers[0].inset_lines = {{{{0.16, 0.035}, {0.16, 0.065}}, 2.0 * mm}};
  layout.inlets = {{"inlet", {0.03, 0.03}}};
  return layout;
}

// A chord c of a round corner of radius r cuts off c^2/(12 r) a metre of it; straight parts are exact.
TEST(FlatMesh, KeepsTheAreaOfEveryPartButForTheChordsOfRoundCorners) {
  const Layout cuff = four_chamber_cuff();
  constexpr double kRadius = 0.008, kArc = 2.0 * std::numbers::pi * kRadius;
  for (const FlatMeshOptions& options : {FlatMeshOptions{}, FlatMeshOptions{3.0 * mm, 1.2 * mm, 4.0 * mm},
                                         FlatMeshOptions{9.0 * mm, 9.0 * mm}}) {
    const FlatMesh mesh = meshed(cuff, options);
    double open = 0.0;
    for (int i = 0; i < 4; ++i) {
      const double drawn = signed_area_m2(cuff.chambers[i].boundary_m);
      const double here = area_m2(mesh, RegionKind::kChamber, i), chord = options.seam_edge.si();
      EXPECT_LT(here, drawn + 1e-12);
      EXPECT_GT(here, drawn - kArc * chord * chord / (12.0 * kRadius));
      open += here;
    }
    for (int i = 0; i < 2; ++i) EXPECT_NEAR(area_m2(mesh, RegionKind::kChannel, i), 0.010 * 0.004, 1e-12);
    EXPECT_NEAR(area_m2(mesh, RegionKind::kStrap), 0.040 * 0.060, 1e-12);
    EXPECT_NEAR(area_m2(mesh, RegionKind::kWeld), 0.260 * 0.100 - open - 2 * 0.010 * 0.004, 1e-12);
  }
}

TEST(FlatMesh, WeldsInsetSpotsByTheAreaOfTheirCircleAndLinesByWidthTimesLength) {
  const FlatMesh mesh = meshed(pad_with_insets());
  const double welded = std::numbers::pi * (9e-6 + 1e-6) + 0.002 * 0.030;
  EXPECT_NEAR(area_m2(mesh, RegionKind::kChamber), 0.2 * 0.06 - welded, 1e-12);
}

TEST(FlatMesh, HasNoAngleBelowTwentyDegrees) {
  for (const double edge : {8.0, 4.0})
    for (const double seam : {0.4, 1.0}) {
      const FlatMeshOptions options{edge * mm, seam * edge * mm, 6.0 * mm};
      EXPECT_GE(smallest_angle(meshed(four_chamber_cuff(), options)), 20.0) << edge << " " << seam;
      EXPECT_GE(smallest_angle(meshed(pad_with_insets(), options)), 20.0) << edge << " " << seam;
    }
}

TEST(FlatMesh, HasAMeanEdgeCloseToTheOneAskedFor) {
  for (const double edge : {5.0, 4.0, 2.5}) {
    const FlatMesh mesh = meshed(pad_with_insets(), {edge * mm, edge * mm});
    EXPECT_NEAR(mean_edge_m(mesh) * 1e3, edge, 0.06 * edge);
  }
  const auto vertices = meshed(pad_with_insets()).vertices_m.rows();
  EXPECT_GT(vertices, 1600);
  EXPECT_LT(vertices, 1950);
}

TEST(FlatMesh, IsFinerBesideSeamsOnly) {
  const FlatMesh mesh = meshed(pad_with_insets(), {5.0 * mm, 1.5 * mm, 4.0 * mm});
  double beside = 0.0, away = 0.0;
  int beside_count = 0, away_count = 0;
  for (const auto& [edge, triangles] : triangles_of_edges(mesh)) {
    const Vec2 a = mesh.vertices_m.row(edge.first).transpose(),
               b = mesh.vertices_m.row(edge.second).transpose();
    const double x = 0.5 * (a + b).x(), y = 0.5 * (a + b).y();
    if (x < 0.08 || x > 0.10) continue;  // between the insets
    if (std::abs(y - 0.02) < 3e-3) beside += (a - b).norm(), ++beside_count;
    if (std::abs(y - 0.05) < 8e-3) away += (a - b).norm(), ++away_count;
  }
  ASSERT_GT(beside_count, 0);
  ASSERT_GT(away_count, 0);
  EXPECT_NEAR(beside / beside_count, 1.5e-3, 0.2e-3);
  EXPECT_NEAR(away / away_count, 5e-3, 1e-3);
}

TEST(FlatMesh, IsTheSameForTheSameInput) {
  const FlatMesh one = meshed(four_chamber_cuff()), two = meshed(four_chamber_cuff());
  EXPECT_EQ(one.vertices_m, two.vertices_m);
  EXPECT_EQ(one.triangles, two.triangles);
}

TEST(FlatMesh, OfAMirroredLayoutHasTheSameAreas) {
  Layout cuff = four_chamber_cuff();
  cuff.chambers[1].inset_spots = {{{0.10, 0.04}, 2.0 * mm}};
  const FlatMesh one = meshed(cuff), two = meshed(mirrored(cuff));
  for (int i = 0; i < 4; ++i)
    EXPECT_NEAR(area_m2(one, RegionKind::kChamber, i), area_m2(two, RegionKind::kChamber, i), 1e-12);
  EXPECT_NEAR(area_m2(one, RegionKind::kWeld), area_m2(two, RegionKind::kWeld), 1e-12);
  EXPECT_EQ(one.chamber_group, two.chamber_group);
  EXPECT_EQ(one.group_inlet, two.group_inlet);
}

TEST(FlatMesh, NeverSpansAnOpenRegionFromWeldToWeldWithOneEdge) {
  for (const double edge : {12.0, 8.0, 4.0, 2.5}) {
    EXPECT_EQ(fused_spans(meshed(four_chamber_cuff(), {edge * mm, edge * mm})), 0) << edge;
    EXPECT_EQ(fused_spans(meshed(pad_with_insets(), {edge * mm, edge * mm})), 0) << edge;
  }
}

TEST(FlatMesh, IsCounterClockwise) {
  const FlatMesh mesh = meshed(four_chamber_cuff());
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    ASSERT_GT(signed_area_m2({corner(mesh, t, 0), corner(mesh, t, 1), corner(mesh, t, 2)}), 0.0);
}

TEST(FlatMesh, JoinsChambersThroughChannelsIntoGroupsWithTheirInlet) {
  const FlatMesh mesh = meshed(four_chamber_cuff());
  EXPECT_EQ(mesh.chamber_group, (std::vector<GroupId>{GroupId{0}, GroupId{0}, GroupId{1}, GroupId{1}}));
  EXPECT_EQ(mesh.channel_group, (std::vector<GroupId>{GroupId{0}, GroupId{1}}));
  EXPECT_EQ(mesh.group_inlet, (std::vector<InletId>{InletId{0}, InletId{1}}));
}

TEST(FlatMesh, TakesAnInletAtTheEndOfAChannel) {
  Layout layout = bare_layout(0.1, 0.1);
  layout.chambers.push_back({"round", circle_polygon({0.05, 0.05}, 0.03, 0.004), {}, {}});
  layout.channels.push_back({"feed", {{0.05, 0.005}, {0.05, 0.03}}, 4.0 * mm});
  layout.inlets = {{"inlet", {0.05, 0.0045}}};  // half a millimetre before the channel's end
  EXPECT_EQ(meshed(layout).group_inlet.size(), 1u);
  layout.inlets[0].point_m.y() = 0.0035;
  EXPECT_NE(refusal(layout).find("Inlet 'inlet' at (50.0, 3.5) mm feeds nothing"), std::string::npos);
}

TEST(FlatMesh, SamplesBothClosingLinesAtTheSameHeights) {
  for (const FlatMeshOptions& options : {FlatMeshOptions{}, FlatMeshOptions{3.0 * mm, 1.2 * mm, 6.0 * mm}}) {
    const FlatMesh mesh = meshed(four_chamber_cuff(), options, Length(0.290));
    ASSERT_GT(mesh.closing_to.size(), 10u);
    EXPECT_NEAR(mesh.vertices_m(mesh.closing_to.front(), 1), 0.02, 1e-12);
    EXPECT_NEAR(mesh.vertices_m(mesh.closing_to.back(), 1), 0.08, 1e-12);
    EXPECT_NEAR(mesh.vertices_m(mesh.closing_from.front(), 1), 0.0, 1e-12);
    auto partner = mesh.closing_from.begin();
    for (const int v : mesh.closing_to) {
      EXPECT_EQ(mesh.vertices_m(v, 0), 0.290);
      while (partner != mesh.closing_from.end() &&
             mesh.vertices_m(*partner, 1) < mesh.vertices_m(v, 1) - 1e-9)
        ++partner;
      ASSERT_NE(partner, mesh.closing_from.end());
      EXPECT_NEAR(mesh.vertices_m(*partner, 1), mesh.vertices_m(v, 1), 1e-9);
    }
  }
}

TEST(FlatMesh, IsTrimmedBeyondTheClosingLine) {
  const FlatMesh mesh = meshed(four_chamber_cuff(), {}, Length(0.290));
  EXPECT_LE(mesh.vertices_m.col(0).maxCoeff(), 0.290);
  EXPECT_NEAR(area_m2(mesh, RegionKind::kStrap), 0.030 * 0.060, 1e-12);
}

TEST(FlatMesh, TakesAClosingLineATenthOfAMillimetreFromADrawnEdgeToLieOnIt) {
  for (const double closing : {0.25995, 0.26005}) {
    const FlatMesh mesh = meshed(four_chamber_cuff(), {}, Length(closing));
    EXPECT_EQ(mesh.vertices_m.col(0).maxCoeff(), 0.260);
    EXPECT_LT(mesh.vertices_m.rows(), 2200);
    EXPECT_NEAR(mesh.vertices_m(mesh.closing_to.back(), 1), 0.100, 1e-12);
  }
  EXPECT_NEAR(meshed(four_chamber_cuff(), {}, Length(0.2603)).vertices_m.col(0).maxCoeff(), 0.2603, 1e-12);
}

// A trapezoid that widens by 0.2 mm a mm, closed along both slanted sides.
Layout slanted_band() {
  Layout layout = bare_layout(0.2, 0.1);
  layout.outline_m = {{0.010, 0.0}, {0.190, 0.0}, {0.200, 0.1}, {0.000, 0.1}};
  layout.chambers.push_back({"pad", rectangle(0.05, 0.02, 0.1, 0.06), {}, {}});
  layout.inlets = {{"inlet", {0.1, 0.05}}};
  layout.closure = Closure{0.005, Length(0.190), std::nullopt, 0.2};
  return layout;
}

TEST(FlatMesh, SlantedClosingLinesLieOnTheDrawnSidesAndCarryTheSameHeights) {
  const FlatMesh mesh = meshed(slanted_band(), {}, Length(0.190));
  double area = 0.0;
  for (const RegionKind kind : {RegionKind::kWeld, RegionKind::kChamber}) area += area_m2(mesh, kind);
  EXPECT_NEAR(area, 0.190 * 0.1, 1e-9);
  ASSERT_EQ(mesh.closing_from.size(), mesh.closing_to.size());
  ASSERT_GT(mesh.closing_from.size(), 20u);
  for (std::size_t i = 0; i < mesh.closing_from.size(); ++i) {
    const Vec2 from = mesh.vertices_m.row(mesh.closing_from[i]), to = mesh.vertices_m.row(mesh.closing_to[i]);
    EXPECT_NEAR(from.y(), to.y(), 1e-9);
    EXPECT_NEAR(to.x() - from.x(), 0.180 + 0.2 * from.y(), 1e-9);
  }
}

TEST(FlatMesh, TrimsTheTailBeyondASlantedClosingLine) {
  Layout layout = slanted_band();
  layout.outline_m = {{0.010, 0.0}, {0.240, 0.0}, {0.240, 0.1}, {0.000, 0.1}};
  const FlatMesh mesh = meshed(layout, {}, Length(0.190));
  double area = 0.0;
  for (const RegionKind kind : {RegionKind::kWeld, RegionKind::kChamber}) area += area_m2(mesh, kind);
  EXPECT_NEAR(area, 0.190 * 0.1, 1e-9);
}

TEST(FlatMesh, RefusesATaperThatClosesTheLayoutToAPoint) {
  Layout layout = slanted_band();
  layout.closure = Closure{0.095, Length(0.010), std::nullopt, 0.4};
  EXPECT_NE(refusal(layout, Length(0.010)).find("use a smaller taper"), std::string::npos);
}

TEST(FlatMesh, RefusesAClosingLineThroughAChamberAndSaysHowFar) {
  const std::string said = refusal(four_chamber_cuff(), Length(0.240));
  EXPECT_NE(said.find("'chamber 4' reaches 5.0 mm beyond"), std::string::npos) << said;
}

TEST(FlatMesh, RefusesAClosingLengthTheLayoutDoesNotReach) {
  const std::string said = refusal(four_chamber_cuff(), Length(0.3125));
  EXPECT_NE(said.find("12.5 mm too short"), std::string::npos) << said;
}

TEST(FlatMesh, RefusesToCloseWhereTheLayoutIsAPoint) {
  Layout layout = bare_layout(0.2, 0.1);
  layout.outline_m = flattened_ellipse({0.1, 0.05}, {0.1, 0.05}, 5e-5);
  layout.closure = Closure{0.0, Length(0.15), std::nullopt};
  EXPECT_NE(refusal(layout, Length(0.15)).find("only touches a closing line"), std::string::npos);
}

TEST(FlatMesh, RefusesUnusableInput) {
  Layout layout = four_chamber_cuff();
  EXPECT_NE(refusal(layout, std::nullopt, {0.0 * mm, 1.0 * mm}).find("above zero"), std::string::npos);
  EXPECT_NE(refusal(layout, std::nullopt, {0.01 * mm, 0.01 * mm}).find("500000"), std::string::npos);
  layout.outline_m[1].x() = std::nan("");
  EXPECT_NE(refusal(layout).find("finite"), std::string::npos);
  EXPECT_NE(refusal(Layout{}).find("outline has 0 points"), std::string::npos);
}

TEST(FlatMesh, RefusesAGroupWithoutAnInletAndWithTwo) {
  Layout layout = four_chamber_cuff();
  layout.inlets[1].point_m = {0.10, 0.03};
  EXPECT_NE(refusal(layout).find("both feed chamber 'chamber 2'"), std::string::npos) << refusal(layout);
  layout.inlets.pop_back();
  EXPECT_NE(refusal(layout).find("No inlet reaches chamber 'chamber 3'"), std::string::npos);
}

// Strips far thinner than an edge, corners far sharper than 20 degrees, seams of a twentieth of a millimetre.
TEST(FlatMesh, OfNarrowStripsAndSharpCornersHasItsAreaAndNoTriangleTurnedOver) {
  const auto wedge = [](double degrees) {
    return Polygon{
        {0.02, 0.01}, {0.17, 0.01}, {0.17, 0.01 + 0.15 * std::tan(degrees * std::numbers::pi / 180)}};
  };
  for (const Polygon& loop : {rectangle(0.02, 0.02, 0.16, 3e-4), rectangle(0.02, 0.02, 0.16, 1e-3),
                              wedge(1.0), wedge(3.0), wedge(8.0), wedge(15.0)})
    for (const double edge : {8.0, 4.0}) {
      Layout layout = bare_layout(0.2, 0.06);
      layout.chambers.push_back({"pad", loop, {}, {}});
      layout.inlets = {{"inlet", (loop[0] + loop[1] + loop[2]) / 3.0}};
      const FlatMesh mesh = meshed(layout, {edge * mm, edge * mm});
      EXPECT_NEAR(area_m2(mesh, RegionKind::kChamber), signed_area_m2(loop), 1e-12);
      EXPECT_NEAR(area_m2(mesh, RegionKind::kWeld), 0.2 * 0.06 - signed_area_m2(loop), 1e-12);
      EXPECT_EQ(fused_spans(mesh), 0);
      for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
        ASSERT_GT(signed_area_m2({corner(mesh, t, 0), corner(mesh, t, 1), corner(mesh, t, 2)}), 0.0);
    }
}

TEST(FlatMesh, SurvivesASelfCrossingOutlineAndTouchingChambers) {
  Layout layout = bare_layout(0.1, 0.1);
  layout.outline_m = {{0, 0}, {0.1, 0.05}, {0.1, 0}, {0, 0.05}};
  layout.chambers.push_back({"a", rectangle(0.005, 0.02, 0.01, 0.01), {}, {}});
  layout.chambers.push_back({"b", rectangle(0.0125, 0.02, 0.01, 0.01), {}, {}});
  layout.inlets = {{"inlet", {0.01, 0.025}}};
  EXPECT_GT(meshed(layout).triangles.rows(), 0);
}

}  // namespace
}  // namespace wrapgauge
