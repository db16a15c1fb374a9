#include "app/desk/session/drawing_rules.hpp"

#include <gtest/gtest.h>

#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/drawn_layout.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

std::filesystem::path drawing_file(const char* name) {
  return std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing" / name;
}

Drawing drawing_of(const char* name) {
  auto read = read_drawing(drawing_file(name), {});
  EXPECT_TRUE(read);
  return read ? *read : Drawing{};
}

// A drawing that nothing in the file says anything about.
struct SaidOfNameless : testing::Test {
  Drawing drawing = drawing_of("no_inlet.svg");
  DrawingMap map;
  std::vector<DrawnAs> parts() const { return drawn_parts(drawing, map); }
};

TEST_F(SaidOfNameless, OneShapeIsSaidAndTheOthersAreGuessedAsBefore) {
  say_part(map, drawing, {1}, DrawnPart::kChamber);
  const auto now = parts();
  EXPECT_EQ(now[1].part, DrawnPart::kChamber);
  EXPECT_FALSE(now[1].guessed);
  EXPECT_EQ(now[0].part, DrawnPart::kOutline);
  EXPECT_EQ(now[2].part, DrawnPart::kChamber);
  EXPECT_TRUE(now[2].guessed);
}

TEST_F(SaidOfNameless, WhatIsSaidLastHoldsAndIsKeptOnce) {
  for (const DrawnPart part : {DrawnPart::kIgnore, DrawnPart::kChamber, DrawnPart::kIgnore})
    say_part(map, drawing, {2}, part);
  EXPECT_EQ(map.rules.size(), 1U);
  EXPECT_EQ(parts()[2].part, DrawnPart::kIgnore);
}

// The rule would fit another shape if it were known by its colours or its kind.
TEST_F(SaidOfNameless, AShapeThatWasMovedIsGuessedAnew) {
  say_part(map, drawing, {2}, DrawnPart::kIgnore);
  for (Vec2& point : drawing.shapes[2].paths[0].points_m) point.y() += 2e-3;
  const auto now = parts();
  EXPECT_EQ(now[2].part, DrawnPart::kChamber);
  EXPECT_TRUE(now[2].guessed);
}

TEST(DrawingRules, AllOfAGroupAreSaidByTheGroup) {
  const Drawing drawing = drawing_of("cuff.svg");
  DrawingMap map;
  const auto alike = alike_shapes(drawing, drawn_parts(drawing, map), 1);
  EXPECT_EQ(alike, (std::vector<std::size_t>{1, 2}));
  EXPECT_EQ(shared_group(drawing, alike), "cells");
  say_part(map, drawing, alike, DrawnPart::kChamber);
  ASSERT_EQ(map.rules.size(), 1U);
  EXPECT_EQ(rule_text(map.rules[0]), "cells=chamber");
}

TEST(DrawingRules, AShapeWithANameIsKnownByItWhereverItLies) {
  Drawing drawing = drawing_of("cuff.svg");
  DrawingMap map;
  say_part(map, drawing, {1}, DrawnPart::kStrap);
  for (Vec2& point : drawing.shapes[1].paths[0].points_m) point.x() += 3e-3;
  EXPECT_EQ(drawn_parts(drawing, map)[1].part, DrawnPart::kStrap);
}

// The plan of the drawing, as the step Layout leaves it, and then changed by hand.
Plan plan_from(const std::filesystem::path& file, const DrawingMap& map) {
  Plan plan = small_plan();
  plan.layout = *read_drawn_layout(file, map);
  plan.layout_drawing = DrawnLayout{file, map};
  return plan;
}

TEST(DrawingRules, ANewReadingKeepsMappingInletsAndClosing) {
  const auto file = drawing_file("no_inlet.svg");
  const Drawing drawing = drawing_of("no_inlet.svg");
  DrawingMap map = starting_map(file, small_plan(), {}).map;
  map.details.skin_sheet = map.details.outer_sheet = Sheet{"00-30", 2.0 * mm};
  say_part(map, drawing, {2}, DrawnPart::kIgnore);
  map.details.inlets = {{"pump", Vec2(0.03, 0.03)}};
  Plan plan = plan_from(file, map);
  plan.layout.closure = Closure{0.0, 150.0 * mm, std::nullopt};  // in the step Wear
  for (const bool edited : {false, true}) {
    SCOPED_TRACE(edited);
    if (edited) plan.layout_drawing.reset();  // as any change of the layout does
    const StartingMap again = starting_map(file, plan, edited ? std::optional(map) : std::nullopt);
    EXPECT_TRUE(again.known);
    EXPECT_EQ(again.map.rules, map.rules);
    EXPECT_EQ(again.map.details.inlets, map.details.inlets);
    EXPECT_EQ(again.map.details.closure, plan.layout.closure);
  }
}

TEST(DrawingRules, AnotherFileStartsAfresh) {
  const auto file = drawing_file("no_inlet.svg");
  DrawingMap map;
  map.details.skin_sheet = map.details.outer_sheet = Sheet{"00-30", 2.0 * mm};
  say_part(map, drawing_of("no_inlet.svg"), {2}, DrawnPart::kIgnore);
  const StartingMap other = starting_map(drawing_file("guess.svg"), plan_from(file, map), {});
  EXPECT_FALSE(other.known);
  EXPECT_TRUE(other.map.rules.empty());
}

}  // namespace
}  // namespace wrapgauge
