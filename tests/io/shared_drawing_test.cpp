#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/drawing_parts.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

const fs::path kFolder = fs::path(WRAPGAUGE_SHARED_DIR) / "data" / "layouts";

struct Answer {
  Result<Drawing> drawing;
  std::vector<DrawnAs> parts;
  std::string sentence;  // for the table that the test prints
};

std::string figures_of(const DrawnShape& shape) {
  if (!shape.fault.empty()) return shape.kind + ": " + shape.fault;
  const auto area = area_m2(shape);
  std::string text = shape.kind + ": ";
  text += area                 ? fixed_text(*area / 1e-6, 2) + " mm2"
          : crossing_of(shape) ? std::string("crosses itself")
                               : "open, " + fixed_text(length_m(shape) / 1e-3, 2) + " mm";
  return text;
}

Answer answer_to(const std::string& name) {
  Answer answer{read_drawing(kFolder / name, {}), {}, ""};
  if (!answer.drawing) {
    answer.sentence = answer.drawing.problem().message;
    return answer;
  }
  answer.parts = drawn_parts(*answer.drawing, {});
  for (std::size_t i = 0; i < answer.drawing->shapes.size(); ++i)
    answer.sentence += (i == 0 ? "" : "; ") + figures_of(answer.drawing->shapes[i]);
  for (const std::string& overlap : overlap_sentences(*answer.drawing, answer.parts))
    answer.sentence += "; " + overlap;
  for (const DrawnRemark& remark : answer.drawing->left_out)
    answer.sentence += "; " + remark.kind + " left out, it " + remark.why;
  return answer;
}

void expect_figures(const Answer& answer, const json& truth) {
  ASSERT_TRUE(answer.drawing) << answer.sentence;
  ASSERT_FALSE(answer.drawing->shapes.empty());
  const DrawnShape& shape = answer.drawing->shapes.front();
  for (const char* key : {"area_mm2", "area_evenodd_mm2", "circle_area"})
    if (truth.contains(key)) {
      const double wanted = truth[key], off = truth.value("tol_mm2", 1e-4 * wanted);
      EXPECT_NEAR(area_m2(shape).value_or(0.0) / 1e-6, wanted, off) << answer.sentence;
    }
  if (truth.contains("perimeter_mm")) {
    EXPECT_NEAR(length_m(shape) / 1e-3, truth["perimeter_mm"], 1e-4 * truth["perimeter_mm"].get<double>());
  }
  if (!truth.contains("bbox_mm")) return;
  const Bounds2 box = bounds(shape);
  const double found[] = {box.low.x(), box.low.y(), box.high.x(), box.high.y()};
  for (int i = 0; i < 4; ++i) EXPECT_NEAR(found[i] / 1e-3, truth["bbox_mm"][i], 1e-4);
}

int count_of(const Answer& answer, DrawnPart part) {
  int count = 0;
  for (const DrawnAs& as : answer.parts) count += as.part == part;
  return count;
}

// What the table asks of counts, by file.
void expect_counts(const std::string& name, const Answer& answer, const json& truth) {
  ASSERT_TRUE(answer.drawing) << answer.sentence;
  if (name == "three_chambers_mm.svg") {
    EXPECT_EQ(count_of(answer, DrawnPart::kChamber), truth["chambers"]);
    for (std::size_t i = 0; i < answer.parts.size(); ++i)
      if (answer.parts[i].part == DrawnPart::kChamber) {
        EXPECT_NEAR(*area_m2(answer.drawing->shapes[i]) / 1e-6, truth["chamber_area_mm2"], 1e-3);
      }
  } else if (name == "use_symbol_mm.svg") {
    ASSERT_EQ(answer.drawing->shapes.size(), truth["shapes"]);
    for (const DrawnShape& shape : answer.drawing->shapes)
      EXPECT_NEAR(*area_m2(shape) / 1e-6, truth["area_each_mm2"], 1e-3);
  } else if (name == "layers_mm.dxf") {
    EXPECT_EQ(count_of(answer, DrawnPart::kOutline), truth["outline"]);
    EXPECT_EQ(count_of(answer, DrawnPart::kChamber), truth["chambers"]);
  }
}

bool says(const Answer& answer, const std::string& word) {
  return answer.sentence.find(word) != std::string::npos;
}

// What the table asks in words: refused with a sentence that holds a word, or read and said.
void expect_words(const std::string& name, const Answer& answer) {
  const std::map<std::string, std::string> refused = {{"truncated.svg", "not whole XML"},
                                                      {"entity_bomb.svg", "entities"},
                                                      {"truncated.dxf", "cut short"},
                                                      {"odd_groupcode.dxf", "group code"}};
  const std::map<std::string, std::string> said = {
      {"open_path_mm.svg", "open"},
      {"bowtie_mm.svg", "crosses itself"},
      {"overlapping_chambers_mm.svg", "overlap by 800.00 mm2"},
      {"bad_path_syntax.svg", "makes no sense at character 13, \"x 20 Z\""},
      {"nan_path.svg", "makes no sense at character 10"},
      {"use_cycle.svg", "inside itself"},
      {"rounded_rect_nounits.dxf", "23806.85 mm2"},
      {"lines_loop_gap_0p05mm.dxf", "joined lines: 24002.50 mm2"}};
  if (const auto found = refused.find(name); found != refused.end()) {
    EXPECT_FALSE(answer.drawing.ok());
    EXPECT_TRUE(says(answer, found->second)) << answer.sentence;
  } else {
    ASSERT_TRUE(said.contains(name)) << "the table has a row that this test does not know: " << name;
    ASSERT_TRUE(answer.drawing) << answer.sentence;
    EXPECT_TRUE(says(answer, said.at(name))) << answer.sentence;
  }
  if (name == "rounded_rect_nounits.dxf") {
    EXPECT_NE(note_text(answer.drawing->notes.front()).find("assumed"), std::string::npos);
  }
}

TEST(SharedDrawings, AreAnsweredAsTheirTableSays) {
  if (!fs::exists(kFolder / "truth.json")) GTEST_SKIP() << "SKIPPED: no folder " << kFolder;
  const auto truth = read_json(kFolder / "truth.json");
  ASSERT_TRUE(truth) << truth.problem().message;
  for (const auto& [name, row] : truth->items()) {
    SCOPED_TRACE(name);
    const Answer answer = answer_to(name);
    std::cout << name << " | " << answer.sentence << "\n";
    if (row.contains("expect"))
      expect_words(name, answer);
    else if (row.contains("chambers") || row.contains("shapes"))
      expect_counts(name, answer, row);
    else
      expect_figures(answer, row);
  }
}

}  // namespace
}  // namespace wrapgauge
