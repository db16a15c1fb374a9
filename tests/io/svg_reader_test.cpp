#include "model/io/readers/svg_reader.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/io/drawings.hpp"

namespace wrapgauge {
namespace {

std::string page(const std::string& attributes, const std::string& inside) {
  return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + attributes + ">" + inside + "</svg>";
}

Drawing read(const std::string& svg, std::optional<Length> unit = {}) {
  const auto drawing = read_svg(svg, "x.svg", {unit, 1.0, {}});
  EXPECT_TRUE(drawing) << drawing.problem().message;
  return drawing ? *drawing : Drawing{};
}

void expect_box(const Drawing& drawing, double x0, double y0, double x1, double y1) {
  ASSERT_FALSE(drawing.shapes.empty());
  const Bounds2 box = bounds(drawing.shapes[0]);
  EXPECT_NEAR(box.low.x() / 1e-3, x0, 1e-6);
  EXPECT_NEAR(box.low.y() / 1e-3, y0, 1e-6);
  EXPECT_NEAR(box.high.x() / 1e-3, x1, 1e-6);
  EXPECT_NEAR(box.high.y() / 1e-3, y1, 1e-6);
}

const std::string kUnitSquare = "<rect x='10' y='20' width='30' height='40'/>";

// CSS 2.1, 4.3.2 (from memory): 1 in = 2.54 cm = 96 px = 72 pt = 6 pc; CSS Values 3: 1 q = 0.25 mm.
TEST(SvgReader, PageUnitsHaveTheirPhysicalSize) {
  expect_box(read(page("width='100mm' height='100mm' viewBox='0 0 100 100'", kUnitSquare)), 10, 20, 40, 60);
  expect_box(read(page("width='10cm' height='10cm' viewBox='0 0 100 100'", kUnitSquare)), 10, 20, 40, 60);
  expect_box(read(page("width='100in' height='100in' viewBox='0 0 100 100'", kUnitSquare)), 254, 508, 1016,
             1524);
  expect_box(read(page("width='96' height='96px'", kUnitSquare)), 10 * 25.4 / 96, 20 * 25.4 / 96,
             40 * 25.4 / 96, 60 * 25.4 / 96);
  expect_box(read(page("width='72pt' height='72pt' viewBox='0 0 25.4 25.4'", kUnitSquare)), 10, 20, 40, 60);
  expect_box(read(page("width='6pc' height='6pc' viewBox='0 0 25.4 25.4'", kUnitSquare)), 10, 20, 40, 60);
  expect_box(read(page("width='400q' height='400q' viewBox='0 0 100 100'", kUnitSquare)), 10, 20, 40, 60);
}

TEST(SvgReader, LengthsInsideAPageMayHaveUnitsOfTheirOwn) {
  // 10 mm are 37.7953 user units, whatever a user unit is on this page: here 0.5 mm.
  const auto drawing =
      read(page("width='50mm' height='50mm' viewBox='0 0 100 100'", "<rect width='10mm' height='50%'/>"));
  expect_box(drawing, 0, 0, 0.5 * 10 * 96 / 25.4, 25);
}

TEST(SvgReader, AspectIsKeptAsThePageSays) {
  const std::string size = "width='200mm' height='100mm' viewBox='0 0 100 100' ";
  expect_box(read(page(size, kUnitSquare)), 60, 20, 90, 60);  // xMidYMid meet
  expect_box(read(page(size + "preserveAspectRatio='xMinYMin'", kUnitSquare)), 10, 20, 40, 60);
  expect_box(read(page(size + "preserveAspectRatio='xMaxYMid meet'", kUnitSquare)), 110, 20, 140, 60);
  expect_box(read(page(size + "preserveAspectRatio='none'", kUnitSquare)), 20, 20, 80, 60);
  expect_box(read(page(size + "preserveAspectRatio='xMidYMid slice'", kUnitSquare)), 20, -10, 80, 70);
}

TEST(SvgReader, APageWithoutASizeIsTakenInPxAndSaysSo) {
  const auto drawing = read(page("viewBox='0 0 100 100'", kUnitSquare));
  expect_box(drawing, 10 * 25.4 / 96, 20 * 25.4 / 96, 40 * 25.4 / 96, 60 * 25.4 / 96);
  EXPECT_NE(note_text(drawing.notes[0]).find("gives no size"), std::string::npos);
  expect_box(read(page("viewBox='0 0 100 100'", kUnitSquare), 1.0 * mm), 10, 20, 40, 60);
}

TEST(SvgReader, TransformsActFromTheInsideOut) {
  const std::string mm_page = "width='100mm' height='100mm' viewBox='0 0 100 100'";
  const auto inside = [&](const std::string& text) { return read(page(mm_page, text)); };
  expect_box(inside("<g transform='translate(5 6)'><rect transform='scale(2)' width='3' height='4'/></g>"), 5,
             6, 11, 14);
  expect_box(inside("<rect transform='translate(5,6) scale(2)' width='3' height='4'/>"), 5, 6, 11, 14);
  expect_box(inside("<rect transform='rotate(90 10 10)' x='10' y='10' width='3' height='4'/>"), 6, 10, 10,
             13);
  expect_box(inside("<rect transform='skewX(45)' width='3' height='4'/>"), 0, 0, 7, 4);
  expect_box(inside("<rect transform='matrix(0 1 -1 0 50 0)' width='3' height='4'/>"), 46, 0, 50, 3);
  expect_box(
      inside(
          "<svg x='10' y='10' width='20' height='20' viewBox='0 0 10 10'><rect width='1' height='2'/></svg>"),
      10, 10, 12, 14);
  expect_box(inside("<symbol id='s' viewBox='0 0 10 10'><rect width='5' height='5'/></symbol>"
                    "<use href='#s' x='20' y='30' width='40' height='40'/>"),
             20, 30, 40, 50);
}

TEST(SvgReader, CurvesKeepWithinTheToleranceAndTheirAreasAreTheCurves) {
  const auto drawing =
      read(page("width='200mm' height='200mm' viewBox='0 0 200 200'",
                "<circle cx='100' cy='100' r='50'/><ellipse cx='100' cy='100' rx='80' ry='20'/>"
                "<path d='M150 100A50 50 0 1 1 50 100A50 50 0 0 1 150 100Z'/>"
                "<rect width='60' height='40' rx='10'/>"));
  ASSERT_EQ(drawing.shapes.size(), 4u);
  constexpr double kPi = std::numbers::pi;
  EXPECT_NEAR(*area_m2(drawing.shapes[0]) / 1e-6, kPi * 2500, 1e-5 * kPi * 2500);
  EXPECT_NEAR(*area_m2(drawing.shapes[1]) / 1e-6, kPi * 1600, 1e-5 * kPi * 1600);
  EXPECT_NEAR(*area_m2(drawing.shapes[2]) / 1e-6, kPi * 2500, 1e-5 * kPi * 2500);
  EXPECT_NEAR(*area_m2(drawing.shapes[3]) / 1e-6, 2400 - (4 - kPi) * 100, 1e-2);
  EXPECT_NEAR(length_m(drawing.shapes[0]) / 1e-3, 100 * kPi, 1e-3);
  for (const std::size_t i : {0u, 2u}) {
    const Polyline& points = drawing.shapes[i].paths[0].points_m;
    for (std::size_t k = 0; k < points.size(); ++k) {
      const Vec2 middle = 0.5 * (points[k] + points[(k + 1) % points.size()]);
      EXPECT_GE((middle - Vec2(0.1, 0.1)).norm(), 0.05 - 5e-5);
      EXPECT_NEAR((points[k] - Vec2(0.1, 0.1)).norm(), 0.05, 1e-9);
    }
  }
  EXPECT_TRUE(drawing.shapes[0].circle);
  EXPECT_FALSE(drawing.shapes[1].circle);
}

TEST(SvgReader, FillRulesDecideWhatAHoleIs) {
  const std::string two = " d='M10 10H110V110H10Z M40 40H80V80H40Z'/>";  // both the same way round
  const std::string mm_page = "width='200mm' height='200mm' viewBox='0 0 200 200'";
  EXPECT_NEAR(*area_m2(read(page(mm_page, "<path fill-rule='evenodd'" + two)).shapes[0]) / 1e-6, 8400, 1e-6);
  EXPECT_NEAR(*area_m2(read(page(mm_page, "<path style='fill-rule: evenodd'" + two)).shapes[0]) / 1e-6, 8400,
              1e-6);
  EXPECT_NEAR(*area_m2(read(page(mm_page, "<path" + two)).shapes[0]) / 1e-6, 10000, 1e-6);
}

TEST(SvgReader, ColoursAndStrokeWidthsAreInheritedAndScaled) {
  const auto drawing =
      read(page("width='100mm' height='100mm' viewBox='0 0 100 100'",
                "<g fill='RED' stroke-width='2' style='stroke:rgb(0, 0, 255)' transform='scale(2)'>"
                "<path d='M1 1L5 1' style='fill:none'/></g>"));
  EXPECT_EQ(drawing.shapes[0].fill, "none");
  EXPECT_EQ(drawing.shapes[0].stroke, "#0000ff");
  EXPECT_NEAR(*drawing.shapes[0].stroke_width / mm, 4.0, 1e-9);
}

std::string fill_under(const std::string& sheet, const std::string& rect, std::size_t notes = 1) {
  const auto drawing = read(page("width='100mm' height='100mm' viewBox='0 0 100 100'",
                                 "<style>" + sheet + "</style><rect width='5' height='5' " + rect + "/>"));
  EXPECT_EQ(drawing.notes.size(), notes) << note_text(drawing.notes.back());
  return drawing.shapes.empty() ? "not drawn" : drawing.shapes[0].fill;
}

// The order of CSS 2.1, 6.4.1 and 6.4.3 (from memory).
TEST(SvgReader, StyleSheetsActInTheOrderOfTheCascade) {
  EXPECT_EQ(fill_under("rect{fill:#00ff00}", ""), "#00ff00");
  EXPECT_EQ(fill_under("rect{fill:#00ff00}", "fill='red'"), "#00ff00");  // an attribute gives way
  EXPECT_EQ(fill_under("rect{fill:#00ff00}", "style='fill:#0000ff'"), "#0000ff");
  EXPECT_EQ(fill_under("rect{fill:#00ff00 !important}", "style='fill:#0000ff'"), "#00ff00");
  EXPECT_EQ(fill_under("#a{fill:#111111} .b{fill:#222222} rect{fill:#333333}", "id='a' class='b'"),
            "#111111");
  EXPECT_EQ(fill_under(".b{fill:#222222} rect{fill:#333333} *{fill:#444444}", "class='b'"), "#222222");
  EXPECT_EQ(fill_under(".b{fill:#222222} .c{fill:#333333}", "class='c b'"), "#333333");  // the later
  EXPECT_EQ(fill_under(".b{fill:#222222} rect.b.c#a{fill:#333333} .b{fill:#444444}", "id='a' class='c b'"),
            "#333333");
  EXPECT_EQ(fill_under("circle, .b , path{fill:#222222}", "class='b'"), "#222222");
  EXPECT_EQ(fill_under(".b{fill:#222222}", "class='B'"), "#000000");  // capitals count
  EXPECT_EQ(fill_under(".b{display:none}", "class='b'"), "not drawn");
  EXPECT_EQ(fill_under("<![CDATA[/* a } */ .b/**/{ x:'}'; FILL : #222222 }]]>", "class='b'"), "#222222");
  EXPECT_EQ(fill_under(".b{fill:#222222", "class='b'"), "#222222");  // ends with the sheet
}

TEST(SvgReader, RulesOfAStyleSheetThatAreNotReadAreSaid) {
  EXPECT_EQ(fill_under("g rect{fill:#222222} .b{fill:#333333}", "class='b'", 2), "#333333");
  EXPECT_EQ(fill_under("@media print{rect{fill:#222222} } .b{fill:#333333}", "class='b'", 2), "#333333");
  EXPECT_EQ(fill_under("@import url(x.css); .b{fill:#333333}", "class='b'", 2), "#333333");
  EXPECT_EQ(fill_under("rect:hover{fill:#222222}", "", 2), "#000000");
  EXPECT_EQ(fill_under("text > tspan{font-size:3px}", ""), "#000000");  // says nothing that is asked for
  std::string many;
  for (int i = 0; i < 600; ++i) many += ".a" + std::to_string(i) + "{fill:red}";
  const auto refused = read_svg(page("", "<style>" + many + "</style>"), "x.svg");
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.problem().message.find("500 selectors"), std::string::npos);
}

TEST(SvgReader, StyleSheetsReachGroupsAndRepeats) {
  const auto drawing = read(
      page("width='100mm' height='100mm' viewBox='0 0 100 100'",
           "<defs><style>.cells{fill:#0a0b0c;stroke:#0000ff;stroke-width:4px} "
           ".gone{visibility:hidden}</style></defs>"
           "<symbol id='s' class='cells'><rect width='5' height='5'/></symbol><use href='#s' x='9'/>"
           "<g class='cells'><rect width='5' height='5'/><rect class='gone' width='5' height='5'/></g>"));
  ASSERT_EQ(drawing.shapes.size(), 2u);
  for (const DrawnShape& shape : drawing.shapes) {
    EXPECT_EQ(shape.fill, "#0a0b0c");
    EXPECT_EQ(shape.stroke, "#0000ff");
    EXPECT_NEAR(*shape.stroke_width / mm, 4.0, 1e-9);
  }
}

TEST(SvgReader, WhatIsNoShapeIsListedWithItsReason) {
  const auto drawing = read(page(
      "width='100mm' height='100mm'",
      "<text>no</text><rect width='5' height='0'/><g display='none'><rect width='5' height='5'/></g>"
      "<use href='other.svg#a'/><use href='#gone'/><rect width='3em' height='5'/>"
      "<rect transform='turn(5)' width='1' height='1'/><rect visibility='hidden' width='1' height='1'/>"));
  ASSERT_EQ(drawing.left_out.size(), 6u);
  EXPECT_NE(drawing.left_out[2].why.find("outside the file"), std::string::npos);
  EXPECT_NE(drawing.left_out[5].why.find("text that names no shape"), std::string::npos);
  ASSERT_EQ(drawing.shapes.size(), 2u);
  EXPECT_NE(drawing.shapes[0].fault.find("not a length"), std::string::npos);
  EXPECT_NE(drawing.shapes[1].fault.find("not a transform"), std::string::npos);
}

TEST(SvgReader, HostileFilesAreRefusedInOneSentence) {
  EXPECT_NE(test::refusal_of("truncated.svg").find("not whole XML"), std::string::npos);
  EXPECT_NE(test::refusal_of("entity_bomb.svg").find("entities"), std::string::npos);
  EXPECT_NE(test::refusal_of("use_bomb.svg").find("40 000 points"), std::string::npos);
  std::string deep;
  for (int i = 0; i < 100; ++i) deep += "<g>";
  for (int i = 0; i < 100; ++i) deep += "</g>";
  EXPECT_NE(read_svg(page("", deep), "x.svg").problem().message.find("deep"), std::string::npos);
  EXPECT_FALSE(read_svg("<html/>", "x.svg"));
  EXPECT_FALSE(read_svg(std::string("<svg>\0</svg>", 12), "x.svg"));
  EXPECT_FALSE(read_svg(page("viewBox='0 0 0 10'", ""), "x.svg"));
}

TEST(SvgReader, WronglyDrawnShapesStayInTheListWithTheirFault) {
  EXPECT_NE(test::drawing_of("nan.svg").shapes[0].fault.find("character 7"), std::string::npos);
  EXPECT_NE(test::drawing_of("overflow.svg").shapes[0].fault.find("not a number"), std::string::npos);
  EXPECT_FALSE(test::drawing_of("huge_arc_angle.svg").shapes[0].fault.empty());
  EXPECT_TRUE(crossing_of(test::drawing_of("bow_tie.svg").shapes[0]));
  EXPECT_FALSE(all_closed(test::drawing_of("open_path.svg").shapes[0]));
  const Drawing cycle = test::drawing_of("use_cycle.svg");
  EXPECT_EQ(cycle.shapes.size(), 2u);
  EXPECT_EQ(cycle.left_out.size(), 2u);
}

}  // namespace
}  // namespace wrapgauge
