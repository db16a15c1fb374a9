#include "model/layout/drawn_layout.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <nlohmann/json.hpp>

#include "model/io/readers/svg_reader.hpp"
#include "model/io/writers/svg_writer.hpp"
#include "model/layout/drawing_map_json.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"
#include "model/layout/page_frame.hpp"
#include "tests/io/drawings.hpp"
#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

std::string refusal(const std::string& file, const DrawingMap& map) {
  const auto layout = layout_from_drawing(test::drawing_of(file), map);
  return layout ? "" : layout.problem().message;
}

DrawingMap cuff_map() {
  DrawingMap map = test::two_sheets();
  map.rules = {test::rule("cells=chamber"), test::rule("duct=channel 5")};
  return map;
}

TEST(DrawnLayout, ACuffComesOutOfSvgAndDxfAlike) {
  for (const char* file : {"cuff.svg", "cuff.dxf"}) {
    SCOPED_TRACE(file);
    const auto layout = layout_from_drawing(test::drawing_of(file), cuff_map());
    ASSERT_TRUE(layout) << layout.problem().message;
    EXPECT_TRUE(check_layout(*layout).empty()) << check_layout(*layout)[0].message;
    EXPECT_NEAR(signed_area_m2(layout->outline_m) / 1e-6, 258 * 78, 6);  // the DXF's corner gapes by 0.04 mm
    ASSERT_EQ(layout->chambers.size(), 2u);
    ASSERT_EQ(layout->chambers[0].inset_spots.size(), 1u);
    EXPECT_NEAR(layout->chambers[0].inset_spots[0].radius / mm, 3.0, 1e-9);
    EXPECT_NEAR((layout->chambers[0].inset_spots[0].centre_m - Vec2(0.070, 0.039)).norm(), 0.0, 1e-9);
    ASSERT_EQ(layout->channels.size(), 1u);
    EXPECT_NEAR(layout->channels[0].width / mm, 5.0, 1e-9);
    ASSERT_EQ(layout->inlets.size(), 1u);
    EXPECT_NEAR((layout->inlets[0].point_m - Vec2(0.125, 0.039)).norm(), 0.0, 1e-9);
    EXPECT_EQ(layout->skin_sheet.material, "00-30");
  }
}

TEST(DrawnLayout, PartsAreCalledByTitleOrId) {
  const auto layout = layout_from_drawing(test::drawing_of("cuff.svg"), cuff_map());
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_EQ(layout->chambers[0].name, "left");
  EXPECT_EQ(layout->channels[0].name, "bridge");
  EXPECT_EQ(layout->inlets[0].name, "pump");
  ASSERT_EQ(layout->chambers[1].inset_lines.size(), 1u);  // a drawn rectangle of 3 by 18 mm
  EXPECT_NEAR(layout->chambers[1].inset_lines[0].width / mm, 3.0, 1e-9);
  EXPECT_NEAR(length_m(layout->chambers[1].inset_lines[0].path_m) / 1e-3, 18.0, 1e-9);
}

TEST(DrawnLayout, UpOnThePageIsUpInTheLayout) {
  const std::string svg =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='50mm' viewBox='0 0 100 50'>"
      "<rect id='outline' x='10' y='5' width='80' height='40'/>"
      "<circle class='inlet' id='p' cx='20' cy='15' r='1'/></svg>";
  const auto layout = layout_from_drawing(*read_svg(svg, "x.svg"), test::two_sheets());
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_NEAR((layout->inlets[0].point_m - Vec2(0.010, 0.030)).norm(), 0.0, 1e-12);
}

TEST(DrawnLayout, RulesGoByNameFillAndStrokeAndTheFirstHolds) {
  const Drawing drawing = test::drawing_of("cuff.svg");
  DrawingMap map;
  map.rules = {test::rule("LEFT=ignore"), test::rule("stroke:#00F=chamber"), test::rule("fill:black=outline"),
               test::rule("b*ge=channel 7")};
  const auto parts = drawn_parts(drawing, map);
  EXPECT_EQ(parts[0].part, DrawnPart::kOutline);  // by its group's name, no rule fits
  EXPECT_EQ(parts[1].part, DrawnPart::kIgnore);
  EXPECT_EQ(parts[2].part, DrawnPart::kChamber);
  EXPECT_EQ(parts[3].part, DrawnPart::kChannel);
  EXPECT_NEAR(*parts[3].width / mm, 7.0, 1e-12);
}

TEST(DrawnLayout, WhatADrawingCannotSayIsAskedFor) {
  EXPECT_NE(refusal("cuff.svg", {}).find("--skin"), std::string::npos);
  DrawingMap map = cuff_map();
  map.details.outer_sheet.reset();
  EXPECT_NE(refusal("cuff.svg", map).find("--outer"), std::string::npos);
  map = test::two_sheets();
  map.rules = {test::rule("duct=channel")};
  EXPECT_NE(refusal("cuff.dxf", map).find("--channel-width"), std::string::npos);
  map = cuff_map();
  map.rules.insert(map.rules.begin(), test::rule("right=strap"));
  map.details.strap_thickness.reset();
  EXPECT_NE(refusal("cuff.svg", map).find("--strap"), std::string::npos);
}

TEST(DrawnLayout, ShapesThatCannotBeTheirPartAreRefusedByPlace) {
  EXPECT_NE(refusal("bow_tie.svg", test::two_sheets()).find("crosses or touches itself"), std::string::npos);
  EXPECT_NE(refusal("open_path.svg", test::two_sheets()).find("is open"), std::string::npos);
  EXPECT_NE(refusal("nan.svg", test::two_sheets()).find("line 2"), std::string::npos);
  DrawingMap map = cuff_map();
  map.rules.insert(map.rules.begin(), test::rule("left=outline"));
  EXPECT_NE(refusal("cuff.svg", map).find("second outline"), std::string::npos);
  map.rules = {test::rule("*=ignore")};
  EXPECT_NE(refusal("cuff.svg", map).find("no shape is the outline"), std::string::npos);
  map = cuff_map();
  map.rules.insert(map.rules.begin(), test::rule("left=channel"));
  EXPECT_NE(refusal("cuff.svg", map).find("no rectangle"), std::string::npos);
}

Result<Layout> with_chamber(const std::string& path) {
  const auto drawing = read_svg(
      "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm' viewBox='0 0 200 100'>"
      "<rect id='outline' width='200' height='100'/><g id='chambers'><path fill-rule='evenodd' " +
          path + "/></g><circle class='inlet' cx='20' cy='20' r='1'/></svg>",
      "x.svg");
  return layout_from_drawing(*drawing, test::two_sheets());
}

TEST(DrawnLayout, HolesOfAChamberAreItsInsetSeams) {
  // A circle of radius 4 round (60, 50), and a strip of 3 by 30 mm.
  const auto layout =
      with_chamber("id='pad' d='M10 10H110V90H10Z M64 50A4 4 0 1 1 56 50A4 4 0 0 1 64 50Z M80 35H83V65H80Z'");
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_TRUE(check_layout(*layout).empty()) << check_layout(*layout)[0].message;
  ASSERT_EQ(layout->chambers.size(), 1u);
  const Chamber& pad = layout->chambers[0];
  EXPECT_EQ(pad.name, "pad");
  ASSERT_EQ(pad.inset_spots.size(), 1u);
  EXPECT_NEAR(pad.inset_spots[0].radius / mm, 4.0, 1e-5);
  EXPECT_NEAR((pad.inset_spots[0].centre_m - Vec2(0.060, 0.050)).norm(), 0.0, 1e-8);
  ASSERT_EQ(pad.inset_lines.size(), 1u);
  EXPECT_NEAR(pad.inset_lines[0].width / mm, 3.0, 1e-9);
  EXPECT_NEAR(length_m(pad.inset_lines[0].path_m) / 1e-3, 30.0, 1e-9);
}

TEST(DrawnLayout, TheFillRuleSaysWhatAHoleIs) {
  const std::string same = "M10 10H110V90H10Z M80 35H83V65H80Z",
                    against = "M10 10H110V90H10Z M80 35V65H83V35Z";
  EXPECT_EQ(with_chamber("style='fill-rule:nonzero' d='" + against + "'")->chambers[0].inset_lines.size(),
            1u);
  const auto filled = with_chamber("style='fill-rule:nonzero' d='" + same + "'");
  ASSERT_FALSE(filled);
  EXPECT_NE(filled.problem().message.find("no hole by its fill rule"), std::string::npos);
  const auto island = with_chamber("d='" + same + " M81 40H82V60H81Z'");
  ASSERT_FALSE(island);
  const auto triangle = with_chamber("d='M10 10H110V90H10Z M40 40H60L50 60Z'");
  ASSERT_FALSE(triangle);
  EXPECT_NE(triangle.problem().message.find("neither a circle nor a rectangle"), std::string::npos);
  EXPECT_NE(triangle.problem().message.find("(40.0, 40.0) mm"), std::string::npos)
      << triangle.problem().message;
}

TEST(DrawnLayout, OverlappingChambersAreSaidBeforeAndAfter) {
  const Drawing drawing = test::drawing_of("overlap.svg");
  const auto said = overlap_sentences(drawing, drawn_parts(drawing, {}));
  ASSERT_EQ(said.size(), 1u);
  EXPECT_NE(said[0].find("300.00 mm2"), std::string::npos);
  const auto layout = layout_from_drawing(drawing, test::two_sheets());
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_FALSE(check_layout(*layout).empty());
}

// Areas of all parts, in one order.
std::vector<double> areas_of(const Layout& layout) {
  const auto strip = [](const Polyline& path, Length width) { return length_m(path) * width.si(); };
  std::vector<double> out{signed_area_m2(layout.outline_m)};
  for (const Chamber& chamber : layout.chambers) {
    out.push_back(signed_area_m2(chamber.boundary_m));
    for (const InsetSpot& spot : chamber.inset_spots) out.push_back(std::pow(spot.radius.si(), 2));
    for (const InsetLine& line : chamber.inset_lines) out.push_back(strip(line.path_m, line.width));
  }
  for (const Channel& channel : layout.channels) out.push_back(strip(channel.path_m, channel.width));
  for (const Strap& strap : layout.straps) out.push_back(signed_area_m2(strap.boundary_m));
  return out;
}

// A thousand squares that all lie on one another: half a million pairs.
TEST(Overlaps, AreToldUpToANumberThatHelps) {
  std::string svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm' viewBox='0 0 9 9'>";
  for (int k = 0; k < 1000; ++k) svg += "<rect class='chamber' width='5' height='5'/>";
  const auto drawing = read_svg(svg + "</svg>", "many.svg");
  ASSERT_TRUE(drawing.ok());
  const auto said = overlap_sentences(*drawing, drawn_parts(*drawing, {}));
  ASSERT_EQ(said.size(), 201u);
  EXPECT_EQ(said.back(), "More shapes overlap; only the first 200 overlaps are told.");
}

// The largest difference of two areas, as a share; says it, for the table in docs/02-drawings.md.
double largest_difference(const Layout& first, const Layout& second) {
  const std::vector<double> a = areas_of(first), b = areas_of(second);
  EXPECT_EQ(a.size(), b.size());
  double worst = 0.0;
  for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i)
    worst = std::max(worst, std::abs(a[i] - b[i]) / std::abs(a[i]));
  std::cout << first.name << ": " << a.size() << " areas, largest difference " << 100.0 * worst << " %\n";
  return worst;
}

TEST(DrawnLayout, WrittenAsSvgAndReadAgainHasTheSameAreas) {
  std::vector<Layout> layouts = {test::four_chamber_cuff()};
  for (const char* name : {"forearm-cuff.json", "calf-sleeve.json"}) {
    const auto layout = read_layout(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/layouts" / name);
    ASSERT_TRUE(layout) << layout.problem().message;
    layouts.push_back(*layout);
  }
  layouts.push_back(*layout_from_drawing(test::drawing_of("cuff.svg"), cuff_map()));
  for (const Layout& first : layouts) {
    SCOPED_TRACE(first.name);
    const auto drawing = read_svg(layout_svg(first), "x.svg");
    ASSERT_TRUE(drawing) << drawing.problem().message;
    const auto second = layout_from_drawing(*drawing, test::two_sheets());
    ASSERT_TRUE(second) << second.problem().message;
    EXPECT_LE(largest_difference(first, *second), 1e-4);  // 0.01 %
    EXPECT_EQ(first.inlets.size(), second->inlets.size());
    EXPECT_EQ(layout_svg(*second),
              layout_svg(*layout_from_drawing(*read_svg(layout_svg(*second), "x.svg"), test::two_sheets())));
  }
}

TEST(DrawingMap, IsWrittenAndReadAgain) {
  DrawingMap map = cuff_map();
  map.rules.push_back(test::rule("stroke:#0000ff=inset-seams"));
  map.reading = {1.0 * cm, 2.0, 0.2 * mm};
  map.guess = false;
  map.details.strap_cloths = {{"left", 3.0 * N_per_mm, 0.8 * mm}};
  map.details.corner_m = Vec2(-0.02, 0.003);
  map.channel_width = 4.0 * mm;
  map.details.closure = Closure{0.0, std::nullopt, 0.05};
  map.rules.push_back(test::rule("shape:rect 'left'=chamber"));
  map.details.inlets = {{"pump", Vec2(0.125, 0.039)}};
  const auto written = drawing_map_to_json(map);
  const auto read = drawing_map_from_json(nlohmann::json(written), "map.json");
  ASSERT_TRUE(read) << read.problem().message;
  EXPECT_EQ(drawing_map_to_json(*read), written);
  EXPECT_EQ(read->rules.back(), map.rules.back());
  EXPECT_EQ(read->details.inlets, map.details.inlets);
}

TEST(DrawingMap, BringsInletsThatTheDrawingDoesNotShow) {
  DrawingMap map = test::two_sheets();
  const Drawing drawing = test::drawing_of("no_inlet.svg");
  const auto place = in_layout_m(drawing, map, Vec2(0.031, 0.020));
  ASSERT_TRUE(place);
  EXPECT_NEAR((*place - Vec2(0.031, 0.040)).norm(), 0.0, 1e-9);  // the page's y goes down
  EXPECT_NEAR((*in_drawing_m(drawing, map, *place) - Vec2(0.031, 0.020)).norm(), 0.0, 1e-12);
  map.details.inlets = {{"pump", *place}, {"pump", Vec2(0.089, 0.030)}};
  const auto layout = layout_from_drawing(drawing, map);
  ASSERT_TRUE(layout) << layout.problem().message;
  ASSERT_EQ(layout->inlets.size(), 2u);
  EXPECT_EQ(layout->inlets[1].name, "pump 2");
  EXPECT_TRUE(check_layout(*layout).empty()) << check_layout(*layout)[0].message;
}

TEST(DrawingMap, RefusesWhatItDoesNotKnow) {
  for (const char* text : {"cells", "=chamber", "cells=pocket", "cells=chamber -3", "a=channel 1e9"})
    EXPECT_FALSE(rule_from_text(text)) << text;
  const auto map = drawing_map_from_json(
      nlohmann::json::parse(
          R"({"wrapgauge-drawing-map": 1, "map": [{"name": "a", "fill": "red", "part": "strap"}]})"),
      "map.json");
  ASSERT_FALSE(map);
  EXPECT_NE(map.problem().message.find("map 1"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
