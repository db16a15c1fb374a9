#include <gtest/gtest.h>

#include <random>
#include <string>

#include "model/core/file.hpp"
#include "model/io/readers/dxf_reader.hpp"
#include "model/io/readers/svg_reader.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/layout/drawn_layout.hpp"
#include "tests/io/drawings.hpp"

namespace wrapgauge {
namespace {

// Changes a few bytes, cuts, doubles or drops a stretch.
std::string mutated(std::string bytes, std::mt19937& random) {
  const auto any = [&](std::size_t below) { return below == 0 ? 0 : random() % below; };
  const std::size_t changes = 1 + any(4);
  for (std::size_t i = 0; i < changes && !bytes.empty(); ++i) {
    const std::size_t at = any(bytes.size()), run = 1 + any(24);
    switch (any(5)) {
      case 0:
        bytes[at] = static_cast<char>(any(256));
        break;
      case 1:
        bytes.resize(any(8) == 0 ? at : bytes.size());
        break;
      case 2:
        bytes.insert(at, bytes.substr(any(bytes.size()), run));
        break;
      case 3:
        bytes.erase(at, run);
        break;
      default:
        bytes[at] = "-.,e0/9<>\"'\n AaZz"[any(17)];
        break;
    }
  }
  return bytes;
}

// Whatever the bytes: finite shapes in bounded number, or a sentence.
bool expect_drawing_or_sentence(const Result<Drawing>& drawing) {
  if (!drawing) {
    EXPECT_TRUE(drawing.problem().message.ends_with('.')) << drawing.problem().message;
    return false;
  }
  for (const DrawnShape& shape : drawing->shapes) {
    EXPECT_NE(shape.paths.empty(), shape.fault.empty()) << shape.kind;
    for (const DrawnPath& path : shape.paths)
      for (const Vec2& p : path.points_m) EXPECT_TRUE(p.allFinite());
    EXPECT_GE(area_m2(shape).value_or(0.0), 0.0);
  }
  overlap_sentences(*drawing, drawn_parts(*drawing, {}));
  const auto layout = layout_from_drawing(*drawing, test::two_sheets());
  EXPECT_TRUE(layout.ok() || layout.problem().message.ends_with('.')) << layout.problem().message;
  return true;
}

TEST(DrawingReaders, SurviveAnyChangeOfTheirBytes) {
  std::mt19937 random(20240301);
  for (const char* name : {"cuff.svg", "use_cycle.svg", "style_sheet.svg", "cuff.dxf", "blocks.dxf",
                           "r12.dxf", "quarter_spline.dxf"}) {
    SCOPED_TRACE(name);
    const std::string seed = *read_file(test::drawing_file(name));
    const bool svg = std::string(name).ends_with(".svg");
    int read_well = 0;
    for (int i = 0; i < 300; ++i) {
      const std::string bytes = i == 0 ? seed : mutated(seed, random);
      read_well += expect_drawing_or_sentence(svg ? read_svg(bytes, "x.svg") : read_dxf(bytes, "x.dxf"));
    }
    EXPECT_GT(read_well, 20);
    EXPECT_LT(read_well, 299);
  }
}

}  // namespace
}  // namespace wrapgauge
