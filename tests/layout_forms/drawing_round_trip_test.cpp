// A layout written as a drawing and read again is the same layout: every form, and the demos'.
#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <nlohmann/json.hpp>

#include "model/casting/template_drawing.hpp"
#include "model/io/readers/dxf_reader.hpp"
#include "model/io/readers/svg_reader.hpp"
#include "model/io/writers/dxf_writer.hpp"
#include "model/io/writers/svg_writer.hpp"
#include "model/io/writers/template_svg.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

// The layout as its file has it: to a millionth of a millimetre.
Layout filed(const Layout& layout) {
  const auto read = layout_from_json(layout_to_json(layout), "layout");
  EXPECT_TRUE(read) << read.problem().message;
  return read ? *read : layout;
}

// All that a layout can hold, off the origin, with names that a file format may trip over.
Layout full_layout() {
  Layout layout = *make_layout("cuff", {});
  layout.name =
      "K\xC3\xBC"
      "hl \\ \"pad\" {1} <&> \xF0\x9F\x98\x80";
  layout.skin_sheet.prestretch = 1.07;
  layout.backing = {1.5 * N_per_mm, 0.7 * N_per_mm};
  layout.rim_bonded = true;
  for (Chamber& chamber : layout.chambers) chamber.name += " \xC3\xA4 \\P {x}";
  Chamber& first = layout.chambers[0];
  const Bounds2 box = bounds(first.boundary_m);
  const Vec2 middle = 0.5 * (box.low + box.high);
  first.inset_lines.push_back({{middle, middle + Vec2(1e-3, 2e-3), middle + Vec2(0, 4e-3)}, 1.3 * mm});
  first.inset_lines.push_back({{middle + Vec2(0, 4e-3), middle + Vec2(0, 7e-3)}, 1.3 * mm});
  const Bounds2 outline = bounds(layout.outline_m);
  layout.straps.clear();
  for (const double stiffness : {12.5, 30.0}) {
    const double y = outline.low.y() + (stiffness > 20.0 ? 30e-3 : 5e-3);
    const double x = outline.high.x();
    layout.straps.push_back({"strap " + std::to_string(layout.straps.size() + 1),
                             {{x, y}, {x + 0.05, y}, {x + 0.05, y + 0.01}, {x, y + 0.01}},
                             stiffness * N_per_mm,
                             0.8 * mm});
  }
  layout.closure = Closure{outline.low.x() + 2e-3, std::nullopt, 0.035, 0.12, 0.05};
  return layout;
}

std::vector<std::pair<std::string, Layout>> layouts_to_send() {
  std::vector<std::pair<std::string, Layout>> out;
  for (const char* form : {"cuff", "sleeve", "graduated-sleeve", "round-pad", "quilted-pack"})
    out.emplace_back(form, filed(*make_layout(form, {})));
  for (const char* name : {"forearm-cuff.json", "calf-sleeve.json"})
    out.emplace_back(name, *read_layout(std::string(WRAPGAUGE_SOURCE_DIR "/resources/layouts/") + name));
  out.emplace_back("all that a layout holds", filed(full_layout()));
  return out;
}

struct Trip {
  std::size_t points = 0, names = 0;
  double farthest_m = 0.0, area_share = 0.0;  // largest
};

void compare(const std::vector<Vec2>& a, const std::vector<Vec2>& b, Trip& trip) {
  ASSERT_EQ(a.size(), b.size());
  trip.points += a.size();
  for (std::size_t i = 0; i < a.size(); ++i)
    trip.farthest_m = std::max(trip.farthest_m, (a[i] - b[i]).norm());
}

void compare_loops(const Polygon& a, const Polygon& b, Trip& trip) {
  compare(a, b, trip);
  trip.area_share = std::max(trip.area_share, std::abs(signed_area_m2(b) / signed_area_m2(a) - 1.0));
}

template <class Parts, class Compare>
void compare_parts(const Parts& a, const Parts& b, Trip& trip, const Compare& one) {
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    EXPECT_EQ(a[i].name, b[i].name);
    ++trip.names;
    one(a[i], b[i]);
  }
}

Trip trip_of(const Layout& a, const Layout& b) {
  Trip trip;
  compare_loops(a.outline_m, b.outline_m, trip);
  compare_parts(a.chambers, b.chambers, trip, [&](const Chamber& one, const Chamber& other) {
    compare_loops(one.boundary_m, other.boundary_m, trip);
    ASSERT_EQ(one.inset_spots.size(), other.inset_spots.size());
    for (std::size_t i = 0; i < one.inset_spots.size(); ++i)
      compare({one.inset_spots[i].centre_m}, {other.inset_spots[i].centre_m}, trip);
    ASSERT_EQ(one.inset_lines.size(), other.inset_lines.size());
    for (std::size_t i = 0; i < one.inset_lines.size(); ++i)
      compare(one.inset_lines[i].path_m, other.inset_lines[i].path_m, trip);
  });
  compare_parts(a.channels, b.channels, trip,
                [&](const Channel& one, const Channel& other) { compare(one.path_m, other.path_m, trip); });
  compare_parts(a.inlets, b.inlets, trip,
                [&](const Inlet& one, const Inlet& other) { compare({one.point_m}, {other.point_m}, trip); });
  compare_parts(a.straps, b.straps, trip, [&](const Strap& one, const Strap& other) {
    compare_loops(one.boundary_m, other.boundary_m, trip);
  });
  return trip;
}

using Way = Result<Drawing> (*)(const Layout&);

Result<Drawing> by_svg(const Layout& layout) {
  return read_svg(layout_svg(layout), "x.svg");
}
Result<Drawing> by_dxf(const Layout& layout) {
  return read_dxf(layout_dxf(layout), "x.dxf");
}
Result<Drawing> by_template(const Layout& layout) {
  return read_svg(template_svg(template_drawing(layout, {}), layout), "x.svg");
}

class ThereAndBack : public testing::TestWithParam<std::pair<std::string, Way>> {};

// Prints the table of docs/02-drawings.md.
TEST_P(ThereAndBack, WithoutOptionsGivesTheSameLayout) {
  for (const auto& [name, layout] : layouts_to_send()) {
    SCOPED_TRACE(name);
    const auto drawing = GetParam().second(layout);
    ASSERT_TRUE(drawing) << drawing.problem().message;
    const auto again = layout_from_drawing(*drawing, {});
    ASSERT_TRUE(again) << again.problem().message;
    EXPECT_EQ(layout_to_json(*again), layout_to_json(layout));
    const Trip trip = trip_of(layout, *again);
    EXPECT_LE(trip.farthest_m, 1e-9);
    EXPECT_LE(trip.area_share, 1e-8);  // what a millionth of a millimetre makes of the area
    std::cout << "| " << name << " | " << GetParam().first << " | " << trip.points << " | " << trip.names
              << " | " << 1e3 * trip.farthest_m << " | " << 100.0 * trip.area_share << " |\n";
  }
}

INSTANTIATE_TEST_SUITE_P(Drawings, ThereAndBack,
                         testing::Values(std::pair("SVG", Way(by_svg)), std::pair("DXF", Way(by_dxf)),
                                         std::pair("template", Way(by_template))),
                         [](const auto& of) { return of.param.first; });

TEST(RoundTrip, AnEditedSvgKeepsWhatNoLineShows) {
  std::string svg = layout_svg(filed(full_layout()));
  const std::string mark = "<g id=\"inlets\"";
  svg.replace(svg.find(mark), 0, "<g id=\"notes\"><rect width=\"3\" height=\"3\"/></g>\n");
  const auto layout = layout_from_drawing(*read_svg(svg, "x.svg"), {});
  ASSERT_TRUE(layout) << layout.problem().message;
  EXPECT_EQ(layout_to_json(*layout), layout_to_json(filed(full_layout())));
}

// Mirrored for the skin side, with amounts and sites on it: what is read back is the layout, not the print.
TEST(RoundTrip, ATemplateOfTheSkinSideReadsBackAsTheSameLayout) {
  const Layout layout = filed(full_layout());
  TemplateMarks marks;
  marks.skin_side = true;
  marks.sites = {{"ulna <&>", SiteKind::kBone, {0.05, 0.05}, 8.0 * mm, 0.0 * mm}};
  marks.amounts.emplace_back();
  marks.amounts.back().sheet = "skin sheet";
  marks.amounts.back().grams_to_mix = 46.0;
  const auto again =
      layout_from_drawing(*read_svg(template_svg(template_drawing(layout, marks), layout), "x.svg"), {});
  ASSERT_TRUE(again) << again.problem().message;
  EXPECT_EQ(layout_to_json(*again), layout_to_json(layout));
}

TEST(RoundTrip, ATemplateThatWasEditedIsNotTakenForItsLayout) {
  const Layout layout = filed(full_layout());
  std::string svg = template_svg(template_drawing(layout, {}), layout);
  std::string returns = svg;
  for (std::size_t at = 0; (at = returns.find('\n', at)) != std::string::npos; at += 2)
    returns.replace(at, 1, "\r\n");
  EXPECT_TRUE(layout_from_drawing(*read_svg(returns, "x.svg"), {}));
  svg.replace(svg.find("<g id=\"cut\""), 0, "<rect width=\"3\" height=\"3\"/>\n");
  const auto refused = layout_from_drawing(*read_svg(svg, "x.svg"), {});
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.problem().message.find("another program saved"), std::string::npos);
}

TEST(RoundTrip, WhatIsSaidGoesBeforeWhatTheDrawingCarries) {
  DrawingMap map;
  map.details.skin_sheet = Sheet{"A10", 3.0 * mm};
  map.details.strap_stiffness = 9.0 * N_per_mm;
  map.details.strap_thickness = 0.5 * mm;
  for (const Way way : {Way(by_svg), Way(by_dxf), Way(by_template)}) {
    const auto layout = layout_from_drawing(*way(filed(full_layout())), map);
    ASSERT_TRUE(layout) << layout.problem().message;
    EXPECT_EQ(layout->skin_sheet, *map.details.skin_sheet);
    EXPECT_NE(layout->outer_sheet, *map.details.skin_sheet);
    for (const Strap& strap : layout->straps) EXPECT_EQ(strap.stiffness, *map.details.strap_stiffness);
  }
}

}  // namespace
}  // namespace wrapgauge
