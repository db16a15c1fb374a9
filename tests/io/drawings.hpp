#pragma once
#include <gtest/gtest.h>

#include <filesystem>

#include "model/io/readers/drawing_reader.hpp"

namespace wrapgauge::test {

inline std::filesystem::path drawing_file(const std::string& name) {
  return std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing" / name;
}

// What reading a file of tests/data/drawing says when it refuses it; empty when it reads it.
inline std::string refusal_of(const std::string& name) {
  const auto drawing = read_drawing(drawing_file(name), {});
  return drawing ? "" : drawing.problem().message;
}

inline Drawing drawing_of(const std::string& name) {
  const auto drawing = read_drawing(drawing_file(name), {});
  EXPECT_TRUE(drawing) << drawing.problem().message;
  return drawing ? *drawing : Drawing{};
}

inline DrawingMap two_sheets() {
  DrawingMap map;
  map.details.skin_sheet = Sheet{"00-30", 1.5 * mm};
  map.details.outer_sheet = Sheet{"A10", 2.5 * mm};
  map.details.strap_stiffness = 20.0 * N_per_mm;
  map.details.strap_thickness = 1.0 * mm;
  return map;
}

inline DrawingRule rule(const std::string& text) {
  const auto read = rule_from_text(text);
  EXPECT_TRUE(read) << read.problem().message;
  return read ? *read : DrawingRule{};
}

}  // namespace wrapgauge::test
