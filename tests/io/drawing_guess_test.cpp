#include "model/layout/drawing_guess.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "model/io/readers/svg_reader.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_shapes.hpp"
#include "tests/io/drawings.hpp"

namespace wrapgauge {
namespace {

std::vector<DrawnAs> parts_of(const std::string& inside, const DrawingMap& map = {}) {
  const auto drawing =
      read_svg("<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='60mm' viewBox='0 0 100 60'>" +
                   inside + "</svg>",
               "x.svg");
  EXPECT_TRUE(drawing) << drawing.problem().message;
  return drawn_parts(*drawing, map);
}

// Or else the first of many chambers that someone says would cost all others.
TEST(DrawingGuess, WhatIsSaidOfOneShapeSaysNothingOfOthers) {
  DrawingMap map;
  map.rules = {test::rule("shape:rect 'r2'=chamber")};
  const auto parts = drawn_parts(test::drawing_of("guess.svg"), map);
  EXPECT_EQ(parts[1].part, DrawnPart::kChamber);
  EXPECT_FALSE(parts[1].guessed);
  EXPECT_EQ(parts[2].part, DrawnPart::kChamber);
  EXPECT_TRUE(parts[2].guessed);
  map.rules = {test::rule("r2=chamber")};
  EXPECT_FALSE(drawn_parts(test::drawing_of("guess.svg"), map)[2].part);
}

TEST(DrawingGuess, PartsFollowFromHowShapesLie) {
  const Drawing drawing = test::drawing_of("guess.svg");
  const auto parts = drawn_parts(drawing, {});
  const std::optional<DrawnPart> wanted[] = {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kChamber,
                                             DrawnPart::kChannel, DrawnPart::kInlet,   DrawnPart::kInsetSeam,
                                             std::nullopt};
  ASSERT_EQ(parts.size(), std::size(wanted));
  for (std::size_t i = 0; i < parts.size(); ++i) {
    EXPECT_EQ(parts[i].part, wanted[i]) << place_text(drawing.shapes[i]);
    EXPECT_EQ(parts[i].guessed, wanted[i].has_value()) << place_text(drawing.shapes[i]);
  }
  const auto layout = layout_from_drawing(drawing, test::two_sheets());
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_TRUE(check_layout(*layout).empty()) << check_layout(*layout)[0].message;
  EXPECT_EQ(layout->name, "guess (parts guessed)");
  ASSERT_EQ(layout->channels.size(), 1u);
  EXPECT_NEAR(layout->channels[0].width / mm, 4.0, 1e-9);
}

TEST(DrawingGuess, WhatIsSaidIsNeverGuessed) {
  const std::string frame = "<rect width='100' height='60'/>",
                    cell = "<rect x='9' y='9' width='20' height='20'/>";
  const std::string named = "<rect id='chamber' x='50' y='9' width='20' height='20'/>";
  const auto parts = parts_of(frame + cell + named);
  EXPECT_EQ(parts[0].part, DrawnPart::kOutline);
  EXPECT_TRUE(parts[0].guessed);
  EXPECT_EQ(parts[1].part, std::nullopt);  // a chamber is named, so this is none
  EXPECT_FALSE(parts[2].guessed);
  DrawingMap quiet;
  quiet.guess = false;
  EXPECT_EQ(parts_of(frame + cell, quiet)[0].part, std::nullopt);
}

TEST(DrawingGuess, TwoFramesOrNoneAreNoOutline) {
  const std::string pad = "<rect width='40' height='40'/><rect x='5' y='5' width='20' height='20'/>";
  for (const DrawnAs& as : parts_of(pad + "<g transform='translate(50 0)'>" + pad + "</g>"))
    EXPECT_EQ(as.part, std::nullopt);
  for (const DrawnAs& as : parts_of("<rect width='40' height='40'/><rect x='50' width='20' height='20'/>"))
    EXPECT_EQ(as.part, std::nullopt);
}

TEST(DrawingGuess, ManyCirclesAlikeInAChamberAreSpotsAndLinesInOneAreSeams) {
  const auto parts = parts_of(
      "<rect width='100' height='60'/><rect x='5' y='5' width='90' height='50'/><circle cx='20' cy='20' "
      "r='2'/>"
      "<circle cx='40' cy='20' r='2'/><circle cx='60' cy='20' r='2'/><circle cx='80' cy='20' r='1'/>"
      "<path d='M20 40H80'/>");
  for (const int i : {2, 3, 4, 6}) EXPECT_EQ(parts[i].part, DrawnPart::kInsetSeam) << i;
  EXPECT_EQ(parts[5].part, DrawnPart::kInlet);
}

// A ring with a chamber in its hole: the hole is a weld between the two.
void expect_ring(const Layout& layout) {
  EXPECT_TRUE(check_layout(layout).empty()) << check_layout(layout)[0].message;
  ASSERT_EQ(layout.chambers.size(), 2u);
  const bool first =
      signed_area_m2(layout.chambers[0].boundary_m) > signed_area_m2(layout.chambers[1].boundary_m);
  const int ring = first ? 0 : 1, middle = 1 - ring;
  ASSERT_EQ(layout.chambers[ring].inset_spots.size(), 1u);
  EXPECT_NEAR(layout.chambers[ring].inset_spots[0].radius / mm, 15.0, 1e-3);
  EXPECT_TRUE(layout.chambers[middle].inset_spots.empty());
  const LayoutShapes shapes = layout_shapes(layout, 1e-3);
  const auto at = [&](double x) { return region_at(shapes, Vec2(x, 0.030)).value(); };
  EXPECT_EQ(at(0.050).part, middle);
  EXPECT_EQ(at(0.0625).kind, RegionKind::kWeld);
  EXPECT_EQ(at(0.070).part, ring);
  EXPECT_EQ(at(0.090).kind, RegionKind::kWeld);
}

TEST(DrawingGuess, ARingWithAChamberInItsHoleIsUnderstood) {
  for (const char* file : {"ring.svg", "ring_unnamed.svg"}) {
    SCOPED_TRACE(file);
    const auto layout = layout_from_drawing(test::drawing_of(file), test::two_sheets());
    ASSERT_TRUE(layout) << layout.problem().message;
    expect_ring(*layout);
  }
}

// Areas of the drawn circles: pi (25^2 - 15^2), pi 10^2; each chamber has its own inlet.
TEST(DrawingGuess, ARingAndTheChamberInItsHoleAreMeshedApart) {
  const auto layout = layout_from_drawing(test::drawing_of("ring.svg"), test::two_sheets());
  ASSERT_TRUE(layout);
  const auto mesh = triangulate_layout(*layout, std::nullopt, {2.0 * mm, 2.0 * mm, 6.0 * mm});
  ASSERT_TRUE(mesh) << mesh.problem().message;
  double areas[2] = {0.0, 0.0};
  for (Eigen::Index t = 0; t < mesh->triangles.rows(); ++t) {
    const FlatRegion& region = mesh->regions[t];
    const auto corner = [&](int k) { return Vec2(mesh->vertices_m.row(mesh->triangles(t, k)).transpose()); };
    if (region.kind == RegionKind::kChamber)
      areas[region.part] += 0.5 * cross(corner(1) - corner(0), corner(2) - corner(0));
  }
  EXPECT_NEAR(areas[0] / 1e-6, 400.0 * std::numbers::pi, 10.0);
  EXPECT_NEAR(areas[1] / 1e-6, 100.0 * std::numbers::pi, 3.0);
  EXPECT_NE(mesh->chamber_group[0], mesh->chamber_group[1]);
}

TEST(DrawingGuess, ARingTooNearTheChamberInItsHoleIsFound) {
  const auto drawn = layout_from_drawing(test::drawing_of("ring.svg"), test::two_sheets());
  ASSERT_TRUE(drawn);
  Layout layout = *drawn;
  layout.chambers[0].inset_spots[0].radius = 11.0 * mm;  // a weld of 1 mm; the thicker sheet has 2.5
  const auto problems = check_layout(layout);
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_NE(problems[0].message.find("The seam between chamber 'ring' and chamber 'middle' is 1.0 mm"),
            std::string::npos)
      << problems[0].message;
}

}  // namespace
}  // namespace wrapgauge
