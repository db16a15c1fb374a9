#include "app/desk/session/drawing_memory.hpp"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>

namespace wrapgauge {
namespace {

std::filesystem::path drawing_file(const char* name) {
  return std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing" / name;
}

TEST(DrawingMemory, GivesBackWhatWasSaidOfAFileByWhateverPathItIsNamed) {
  QTemporaryDir folder;
  const std::filesystem::path root = folder.path().toStdString();
  const auto file = drawing_file("no_inlet.svg");
  DrawingMap map;
  map.rules = {{DrawingRule::Of::kShape, "rect of 46.0 x 40.0 mm at (89.0, 30.0)", DrawnPart::kIgnore, {}}};
  map.details.inlets = {{"pump", Vec2(0.03, 0.03)}};
  const DrawingMemory memory(root / "drawings");
  EXPECT_FALSE(memory.of(file));
  memory.keep(file, map);
  const auto roundabout = file.parent_path() / ".." / "drawing" / "no_inlet.svg";
  ASSERT_TRUE(memory.of(roundabout));
  EXPECT_EQ(memory.of(roundabout)->rules, map.rules);
  EXPECT_EQ(memory.of(roundabout)->details.inlets, map.details.inlets);
  EXPECT_FALSE(memory.of(drawing_file("guess.svg")));
}

TEST(DrawingMemory, WhatCannotBeReadIsForgotten) {
  QTemporaryDir folder;
  const std::filesystem::path root = folder.path().toStdString();
  const DrawingMemory memory(root);
  memory.keep(drawing_file("no_inlet.svg"), {});
  for (const auto& entry : std::filesystem::directory_iterator(root)) std::ofstream(entry.path()) << "{";
  EXPECT_FALSE(memory.of(drawing_file("no_inlet.svg")));
}

}  // namespace
}  // namespace wrapgauge
