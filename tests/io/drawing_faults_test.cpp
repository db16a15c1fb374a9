// What misleads in a drawing when it is passed over in silence: each is read, or said plainly.
#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "model/io/readers/dxf_reader.hpp"
#include "model/io/readers/svg_reader.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/layout/drawn_layout.hpp"
#include "tests/io/drawings.hpp"

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;

const DrawnShape& shape_of(const Drawing& drawing, const std::string& name) {
  const auto found = std::find_if(drawing.shapes.begin(), drawing.shapes.end(),
                                  [&](const DrawnShape& shape) { return shape.name == name; });
  static const DrawnShape none{};
  EXPECT_NE(found, drawing.shapes.end()) << name;
  return found == drawing.shapes.end() ? none : *found;
}

void expect_box(const DrawnShape& shape, double x0, double y0, double x1, double y1) {
  const Bounds2 box = bounds(shape);
  EXPECT_NEAR(box.low.x() / 1e-3, x0, 1e-6) << shape.name;
  EXPECT_NEAR(box.low.y() / 1e-3, y0, 1e-6) << shape.name;
  EXPECT_NEAR(box.high.x() / 1e-3, x1, 1e-6) << shape.name;
  EXPECT_NEAR(box.high.y() / 1e-3, y1, 1e-6) << shape.name;
}

bool notes_say(const Drawing& drawing, const std::string& words) {
  return std::any_of(drawing.notes.begin(), drawing.notes.end(),
                     [&](const DrawnNote& note) { return note_text(note).find(words) != std::string::npos; });
}

// CSS Transforms 1 (W3C; from memory): px are user units, a turn is 360 degrees, the origin moves with it.
TEST(DrawingFaults, ATransformInTheStyleMovesTheShape) {
  const Drawing drawing = test::drawing_of("style_transform.svg");
  expect_box(shape_of(drawing, "moved"), 10, 5, 16, 13);
  expect_box(shape_of(drawing, "turned"), 49, 28, 51, 32);
  EXPECT_NE(shape_of(drawing, "percent").fault.find("not a transform that is read here"), std::string::npos);
  expect_box(shape_of(drawing, "sized"), 0, 0, 7, 2 * 96 / 25.4);
}

TEST(DrawingFaults, AStyleGoesBeforeTheAttribute) {
  const auto drawing = read_svg(
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>"
      "<style>.a {transform: translateX(20px) skew(45deg, 0)}</style>"
      "<rect id='r' class='a' transform='scale(9)' width='3' height='4'/></svg>",
      "x.svg");
  ASSERT_TRUE(drawing);
  expect_box(drawing->shapes.at(0), 20, 0, 27, 4);
}

TEST(DrawingFaults, AShapeThatAClipPathCutsIsNamed) {
  const Drawing drawing = test::drawing_of("clip.svg");
  EXPECT_EQ(shape_of(drawing, "whole").fault, "");
  EXPECT_EQ(shape_of(drawing, "free").fault, "");
  EXPECT_NE(shape_of(drawing, "cut").fault.find("is cut by the clip path 'half'"), std::string::npos);
  EXPECT_NE(shape_of(drawing, "masked").fault.find("mask 'half'"), std::string::npos);
  ASSERT_EQ(drawing.left_out.size(), 1u);
  EXPECT_NE(drawing.left_out[0].why.find("clipped away"), std::string::npos);
}

TEST(DrawingFaults, AShapeThatTheFrameOfAnInnerPageCutsIsNamed) {
  const Drawing drawing = test::drawing_of("inner_page.svg");
  EXPECT_EQ(shape_of(drawing, "whole").fault, "");
  EXPECT_EQ(shape_of(drawing, "beyond").fault, "");
  EXPECT_NE(shape_of(drawing, "cut").fault.find("is cut by the frame of the inner page 'window'"),
            std::string::npos);
  ASSERT_EQ(drawing.left_out.size(), 1u);
  EXPECT_NE(drawing.left_out[0].why.find("clipped away by the frame"), std::string::npos);
}

TEST(DrawingFaults, LabelsOfAnEditorAndNumberedIdsAreParts) {
  const Drawing drawing = test::drawing_of("labels.svg");
  const auto layout = layout_from_drawing(drawing, test::two_sheets());
  ASSERT_TRUE(layout) << layout.problem().message;
  ASSERT_EQ(layout->chambers.size(), 2u);
  EXPECT_EQ(layout->chambers[0].name, "chamber-0");
  EXPECT_EQ(layout->chambers[1].name, "right");
  EXPECT_EQ(layout->inlets.size(), 1u);
  EXPECT_EQ(layout->name, "labels");  // nothing was guessed
  for (const char* name : {"chamber-0", "Chamber 12", "CHAMBERS_3", "chamber-0_1_", "chamber"})
    EXPECT_EQ(part_from_numbered_name(name), DrawnPart::kChamber) << name;
  for (const char* name : {"chamber-left", "0", "my chamber", ""})
    EXPECT_EQ(part_from_numbered_name(name), std::nullopt) << name;
  EXPECT_FALSE(rule_from_text("a=chamber-0"));
}

TEST(DrawingFaults, PiecesOfAnSvgAreJoinedWhenAskedFor) {
  EXPECT_NE(layout_from_drawing(test::drawing_of("pieces.svg"), test::two_sheets())
                .problem()
                .message.find("is open"),
            std::string::npos);
  // 72 units an inch: an inch each way; and the same by scale from 96.
  for (const DrawingReading& reading :
       {DrawingReading{Length(0.0254 / 72.0), 1.0, 0.3 * mm}, DrawingReading{{}, 96.0 / 72.0, 0.3 * mm}}) {
    const auto drawing = read_drawing(test::drawing_file("pieces.svg"), reading);
    ASSERT_TRUE(drawing);
    ASSERT_EQ(drawing->shapes.size(), 1u);
    EXPECT_NEAR(*area_m2(drawing->shapes[0]) / (0.0254 * 0.0254), 1.0, 0.01);
  }
  EXPECT_TRUE(notes_say(test::drawing_of("pieces.svg"), "--unit pt"));
}

TEST(DrawingFaults, ASmallGapSaysHowToJoinIt) {
  const std::string words =
      layout_from_drawing(test::drawing_of("faults.svg"), test::two_sheets()).problem().message;
  EXPECT_NE(words.find("read with --join-mm 0.5"), std::string::npos) << words;
}

TEST(DrawingFaults, AShapeOfOnePointIsNoGapToJoin) {
  const std::string words =
      layout_from_drawing(test::drawing_of("one_corner.dxf"), test::two_sheets()).problem().message;
  EXPECT_NE(
      words.find("is to be the outline but is a single point, at (1.0, 1.0) mm; draw it as a closed line"),
      std::string::npos)
      << words;
  EXPECT_EQ(words.find("--join-mm"), std::string::npos) << words;
}

TEST(DrawingFaults, ASmallGapIsMarkedAtBothEndsWithTheJoinThatClosesIt) {
  const Drawing drawing = test::drawing_of("faults.svg");
  const auto faults = drawn_faults(drawing, test::two_sheets());
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].shape, 1u);
  ASSERT_EQ(faults[0].places_m.size(), 2u);
  EXPECT_NEAR((faults[0].places_m[1] - Vec2(0.0104, 0.0103)).norm(), 0.0, 1e-9);
  ASSERT_TRUE(faults[0].join);
  EXPECT_NEAR(*faults[0].join / mm, 0.5, 1e-9);
}

// At a screen nobody types an option.
TEST(DrawingFaults, AreSaidWithoutTheCommandLine) {
  std::size_t said = 0;
  for (const auto& entry : std::filesystem::directory_iterator(test::drawing_file(""))) {
    const auto drawing = read_drawing(entry.path(), {});
    if (!drawing) continue;
    for (const DrawingMap& map : {DrawingMap{}, test::two_sheets()})
      for (const DrawnFault& fault : drawn_faults(*drawing, map)) {
        ++said;
        const std::string words = english(fault.words) + english(fault.remedy);
        EXPECT_EQ(words.find("--"), words.npos) << entry.path() << words;
        EXPECT_EQ(words.find(" map"), words.npos) << entry.path() << words;
      }
    for (const DrawnNote& note : drawing->notes)
      EXPECT_EQ(english(note.words).find("--"), std::string::npos) << english(note.words);
  }
  EXPECT_GT(said, 20u);
}

TEST(DrawingFaults, AllOfAFileAreNamedAtOnce) {
  const std::string words = layout_from_drawing(test::drawing_of("faults.svg"), {}).problem().message;
  for (const char* part : {"faults.svg has 4 faults.", "(1) a drawing does not say", "path 'open'",
                           "path 'bow'", "(4) the path 'line' at line 4 is a line without a width"})
    EXPECT_NE(words.find(part), std::string::npos) << part << "\n" << words;
}

TEST(DrawingFaults, ARuleThatFitsNothingIsNamedWithTheKeysThatWould) {
  const Drawing drawing = test::drawing_of("cuff.svg");
  DrawingMap map;
  map.rules = {test::rule("cels=chamber"), test::rule("cells=chamber"), test::rule("LEFT=chamber")};
  const auto said = idle_rule_sentences(drawing, map);
  ASSERT_EQ(said.size(), 2u);
  EXPECT_NE(said[0].find("'cels=chamber' fits no shape of cuff.svg; keys there: "), std::string::npos)
      << said[0];
  EXPECT_NE(said[0].find("cells"), std::string::npos);
  EXPECT_NE(said[1].find("'LEFT=chamber' changes nothing"), std::string::npos) << said[1];
}

TEST(DrawingFaults, APolylineWithoutItsCountIsCounted) {
  const Drawing drawing = test::drawing_of("no_count.dxf");
  ASSERT_EQ(drawing.shapes.size(), 1u);
  EXPECT_NEAR(*area_m2(drawing.shapes[0]) / 1e-6, 1200.0, 1e-9) << drawing.shapes[0].fault;
}

TEST(DrawingFaults, WidthsOfPolylinesAreReadOrSaid) {
  const Drawing drawing = test::drawing_of("widths.dxf");
  ASSERT_EQ(drawing.shapes.size(), 5u);
  EXPECT_NEAR(*drawing.shapes[0].stroke_width / mm, 4.0, 1e-9);
  EXPECT_FALSE(drawing.shapes[1].stroke_width);
  EXPECT_NE(drawing.shapes[1].remark.find("changes"), std::string::npos);
  EXPECT_NEAR(*drawing.shapes[2].stroke_width / mm, 3.0, 1e-9);
  // A disc of 4 mm radius drawn as two half circles of 2 mm radius, 4 mm wide.
  EXPECT_NEAR(drawing.shapes[3].circle.value().radius_m / 1e-3, 4.0, 0.05);
  EXPECT_NEAR(*area_m2(drawing.shapes[3]) / 1e-6, 16.0 * kPi, 1e-3);
  EXPECT_NE(drawing.shapes[4].remark.find("is drawn 1 mm wide"), std::string::npos);
}

TEST(DrawingFaults, PaperSpaceIsReadWhenNothingElseIsThere) {
  const Drawing alone = test::drawing_of("paper.dxf"), both = test::drawing_of("paper_and_model.dxf");
  ASSERT_EQ(alone.shapes.size(), 1u);
  EXPECT_TRUE(notes_say(alone, "paper space is read"));
  ASSERT_EQ(both.shapes.size(), 1u);
  EXPECT_NEAR(*area_m2(both.shapes[0]) / 1e-6, 1200.0, 1e-9);
  ASSERT_EQ(both.left_out.size(), 1u);
  EXPECT_NE(both.left_out[0].why.find("move it there"), std::string::npos);
  EXPECT_TRUE(notes_say(test::drawing_of("only_blocks.dxf"),
                        "blocks or on sheets that nothing puts into model space: 1"));
}

TEST(DrawingFaults, DoubledLinesAreReadOnce) {
  const Drawing drawing = test::drawing_of("doubled.dxf");
  ASSERT_EQ(drawing.shapes.size(), 1u);
  EXPECT_NEAR(*area_m2(drawing.shapes[0]) / 1e-6, 1200.0, 1e-9);
  EXPECT_TRUE(notes_say(drawing, "2 lines are drawn twice"));
}

TEST(DrawingFaults, TextAndLayersNameTheChambersOfADxf) {
  const Drawing drawing = test::drawing_of("text_names.dxf");
  DrawingMap map = test::two_sheets();
  map.rules = {test::rule("CELL*=chamber")};
  const auto layout = layout_from_drawing(drawing, map);
  ASSERT_TRUE(layout) << layout.problem().message;
  ASSERT_EQ(layout->chambers.size(), 3u);
  EXPECT_EQ(layout->chambers[0].name, "CELL_A");
  EXPECT_EQ(layout->chambers[1].name,
            "m\xC3\xBC"
            "de");
  EXPECT_EQ(layout->chambers[2].name, "far right");
  ASSERT_EQ(drawing.left_out.size(), 1u);
  EXPECT_NE(drawing.left_out[0].why.find("names no shape"), std::string::npos);
}

TEST(DrawingFaults, CopiesWithOneNameAreNumbered) {
  const auto drawing = read_svg(
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='60mm' viewBox='0 0 100 60'>"
      "<rect id='outline' width='100' height='60'/><g id='chambers'><rect id='pad' x='5' y='5' width='20' "
      "height='50'/><use href='#pad' x='30'/></g></svg>",
      "x.svg");
  const auto layout = layout_from_drawing(*drawing, test::two_sheets());
  ASSERT_TRUE(layout) << layout.problem().message;
  ASSERT_EQ(layout->chambers.size(), 2u);
  EXPECT_EQ(layout->chambers[1].name, "pad 2");
}

TEST(DrawingFaults, ALineThatIsWiderAcrossThanAlongHasNoWidth) {
  const auto drawing = read_svg(
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='60mm' viewBox='0 0 100 60'>"
      "<g class='channel' stroke='#000' stroke-width='4'><path d='M0 0H9'/><path transform='scale(2 1)' "
      "d='M0 5H9'/><path vector-effect='non-scaling-stroke' d='M0 9H9'/></g></svg>",
      "x.svg");
  ASSERT_TRUE(drawing);
  EXPECT_NEAR(*drawing->shapes.at(0).stroke_width / mm, 4.0, 1e-9);
  EXPECT_FALSE(drawing->shapes.at(1).stroke_width);
  EXPECT_FALSE(drawing->shapes.at(2).stroke_width);
}

}  // namespace
}  // namespace wrapgauge
