#include "model/layout/closing_lines.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kHeight_m = 0.06, kLength_m = 0.2;

// A cuff wider than it needs to be, closed at 200 mm at half its height.
FlatMesh tapered_mesh(double taper, double bend = 0.0) {
  Layout layout;
  layout.name = "cuff";
  layout.outline_m = {{-0.02, 0.0}, {0.23, 0.0}, {0.23, kHeight_m}, {-0.02, kHeight_m}};
  layout.chambers = {{"pad", {{0.08, 0.02}, {0.12, 0.02}, {0.12, 0.04}, {0.08, 0.04}}, {}, {}}};
  layout.inlets = {{"valve", {0.1, 0.03}}};
  layout.skin_sheet = layout.outer_sheet = {"00-30", 1.5 * mm};
  layout.closure = Closure{0.0, Length(kLength_m), std::nullopt, taper, bend};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 12.0 * mm;
  auto mesh = triangulate_layout(layout, Length(kLength_m), options);
  EXPECT_TRUE(mesh.ok()) << (mesh ? "" : mesh.problem().message);
  return mesh ? std::move(mesh).value() : FlatMesh{};
}

// Each line takes half of the taper, so that the length between them grows by all of it.
TEST(ClosingLines, OfATaperedMeshSlantByHalfTheTaperEach) {
  for (const double taper : {0.0, 0.3, -0.3}) {
    const FlatMesh mesh = tapered_mesh(taper);
    ASSERT_GE(mesh.closing_from.size(), 2u);
    ASSERT_GE(mesh.closing_to.size(), 2u);
    const ClosingLines lines = closing_lines(mesh);
    EXPECT_NEAR(lines.from.slope, -0.5 * taper, 1e-6) << taper;
    EXPECT_NEAR(lines.to.slope, 0.5 * taper, 1e-6) << taper;
    for (const double y : {0.0, 0.5 * kHeight_m, kHeight_m})
      EXPECT_NEAR(lines.length_at(y).si(), kLength_m + taper * (y - 0.5 * kHeight_m), 1e-7) << taper;
    for (const int vertex : mesh.closing_from)
      EXPECT_NEAR(lines.share_at(mesh.vertices_m.row(vertex)), 0.0, 1e-6) << taper;
    for (const int vertex : mesh.closing_to)
      EXPECT_NEAR(lines.share_at(mesh.vertices_m.row(vertex)), 1.0, 1e-6) << taper;
  }
}

// Below half height the length grows by the bend more, above it by the bend less.
TEST(ClosingLines, OfABentMeshBendAtHalfHeightByHalfOfItEach) {
  for (const double bend : {0.2, -0.15})
    for (const double taper : {0.0, 0.1}) {
      const FlatMesh mesh = tapered_mesh(taper, bend);
      ASSERT_GE(mesh.closing_from.size(), 3u);
      ASSERT_EQ(mesh.closing_from.size(), mesh.closing_to.size());
      const ClosingLines lines = closing_lines(mesh);
      for (const double share : {0.0, 0.2, 0.5, 0.7, 1.0}) {
        const double y = share * kHeight_m, up = y - 0.5 * kHeight_m;
        const double wider = taper * up - bend * std::abs(up);
        EXPECT_NEAR(lines.length_at(y).si(), kLength_m + wider, 1e-7) << bend << ", " << taper;
        EXPECT_NEAR(lines.from.x_m(y), -0.5 * wider, 1e-7) << bend << ", " << taper;
      }
      for (std::size_t k = 0; k < mesh.closing_from.size(); ++k) {
        const Vec2 from = mesh.vertices_m.row(mesh.closing_from[k]),
                   to = mesh.vertices_m.row(mesh.closing_to[k]);
        EXPECT_NEAR(from.y(), to.y(), 1e-9);
        EXPECT_NEAR(lines.share_at(from), 0.0, 1e-6);
        EXPECT_NEAR(lines.share_at(to), 1.0, 1e-6);
      }
    }
}

}  // namespace
}  // namespace wrapgauge
