#include "model/layout/closing_lines.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

constexpr double kHeight_m = 0.06, kLength_m = 0.2;

// A cuff wider than it needs to be, closed at 200 mm at half its height.
FlatMesh tapered_mesh(double taper) {
  Layout layout;
  layout.name = "cuff";
  layout.outline_m = {{-0.02, 0.0}, {0.23, 0.0}, {0.23, kHeight_m}, {-0.02, kHeight_m}};
  layout.chambers = {{"pad", {{0.08, 0.02}, {0.12, 0.02}, {0.12, 0.04}, {0.08, 0.04}}, {}, {}}};
  layout.inlets = {{"valve", {0.1, 0.03}}};
  layout.skin_sheet = layout.outer_sheet = {"00-30", 1.5 * mm};
  layout.closure = Closure{0.0, Length(kLength_m), std::nullopt, taper};
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

}  // namespace
}  // namespace wrapgauge
