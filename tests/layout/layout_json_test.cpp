#include "model/layout/layout_json.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <set>

#include "model/layout/layout_check.hpp"
#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

json small_layout() {
  return json::parse(R"({
    "wrapgauge-layout": 1, "name": "small",
    "outline": {"polygon": [[0, 0], [0, 60], [100, 60], [100, 0]]},
    "chambers": [
      {"name": "a", "rectangle": {"x": 10, "y": 10, "width": 30, "height": 40, "corner_radius": 5},
       "inset_spots": [{"centre": [25, 30], "radius": 3}]},
      {"name": "b", "ellipse": {"centre": [70, 30], "radii": [20, 15]},
       "inset_lines": [{"path": [[65, 30], [75, 30]], "width": 2}]}],
    "channels": [{"name": "c", "path": [[35, 30], [55, 30]], "width": 4}],
    "inlets": [{"name": "i", "point": [45, 30]}],
    "skin_sheet": {"material": "00-30", "thickness": 1.5},
    "outer_sheet": {"material": "A10", "thickness": 2.5},
    "backing": {"along": 10, "across": 5},
    "straps": [{"name": "s", "polygon": [[100, 20], [120, 20], [120, 40], [100, 40]], "stiffness": 20,
                "thickness": 1}],
    "closure": {"from_x": 0, "stretch": 0.05}, "rim_bonded": true})");
}

std::string refusal(const json& value) {
  const Result<Layout> layout = layout_from_json(value, "x.json");
  return layout ? "" : layout.problem().message;
}

TEST(LayoutJson, ReadsEveryField) {
  const Result<Layout> read = layout_from_json(small_layout(), "x.json");
  ASSERT_TRUE(read) << read.problem().message;
  const Layout& layout = *read;
  EXPECT_EQ(layout.name, "small");
  EXPECT_NEAR(signed_area_m2(layout.outline_m), 0.1 * 0.06, 1e-15);  // drawn clockwise, turned
  ASSERT_EQ(layout.chambers.size(), 2u);
  EXPECT_NEAR(layout.chambers[0].inset_spots.at(0).radius / mm, 3.0, 1e-12);
  EXPECT_EQ(layout.chambers[1].inset_lines.at(0).path_m.size(), 2u);
  EXPECT_NEAR(layout.channels.at(0).width / mm, 4.0, 1e-12);
  EXPECT_NEAR(layout.inlets.at(0).point_m.x(), 0.045, 1e-15);
  EXPECT_EQ(layout.outer_sheet.material, "A10");
  EXPECT_NEAR(layout.backing.across / N_per_mm, 5.0, 1e-12);
  EXPECT_NEAR(layout.straps.at(0).stiffness.si(), 20e3, 1e-9);
  ASSERT_TRUE(layout.closure);
  EXPECT_EQ(layout.closure->stretch, 0.05);
  EXPECT_FALSE(layout.closure->closing_length);
  EXPECT_TRUE(layout.rim_bonded);
}

TEST(LayoutJson, WrittenAndReadAgainIsTheSame) {
  const Layout first = *layout_from_json(small_layout(), "x.json");
  const json written = layout_to_json(first);
  const Result<Layout> second = layout_from_json(written, "y.json");
  ASSERT_TRUE(second) << second.problem().message;
  EXPECT_EQ(layout_to_json(*second), written);
  for (std::size_t i = 0; i < first.chambers[1].boundary_m.size(); ++i)
    EXPECT_NEAR((first.chambers[1].boundary_m[i] - second->chambers[1].boundary_m[i]).norm(), 0.0, 1e-9);
}

TEST(LayoutJson, GoesThroughAFile) {
  const auto file = std::filesystem::path(testing::TempDir()) / "wrapgauge-layout-test.json";
  ASSERT_TRUE(write_layout(test::four_chamber_cuff(), file));
  const Result<Layout> read = read_layout(file);
  std::filesystem::remove(file);
  ASSERT_TRUE(read) << read.problem().message;
  EXPECT_EQ(layout_to_json(*read), layout_to_json(test::four_chamber_cuff()));
  EXPECT_FALSE(read_layout(file));
}

TEST(LayoutJson, RefusesUnknownKeysByName) {
  json value = small_layout();
  value["chambers"][1]["colour"] = "blue";
  const std::string said = refusal(value);
  EXPECT_NE(said.find("chambers 2"), std::string::npos) << said;
  EXPECT_NE(said.find("\"colour\""), std::string::npos) << said;
}

TEST(LayoutJson, NamesThePlaceOfAWrongKind) {
  json value = small_layout();
  value["chambers"][0]["inset_spots"][0]["centre"][1] = "30";
  std::string said = refusal(value);
  EXPECT_NE(said.find("chambers 1, inset_spots 1: centre number 2 must be a number"), std::string::npos)
      << said;
  value = small_layout();
  value["outline"]["polygon"][2] = 7;
  said = refusal(value);
  EXPECT_NE(said.find("outline, polygon point 3"), std::string::npos) << said;
}

TEST(LayoutJson, RefusesShapesThatAreNone) {
  json value = small_layout();
  value["chambers"][0]["polygon"] = value["outline"]["polygon"];
  EXPECT_NE(refusal(value).find("exactly one of polygon"), std::string::npos);
  value = small_layout();
  value["chambers"][0]["rectangle"]["corner_radius"] = 16;
  EXPECT_NE(refusal(value).find("at most half the smaller side, 15 mm"), std::string::npos) << refusal(value);
  value = small_layout();
  value["outline"]["polygon"] = json::array({{0, 0}, {1, 1}});
  EXPECT_NE(refusal(value).find("at least 3"), std::string::npos);
}

TEST(LayoutJson, RefusesAnotherVersionAndMissingParts) {
  json value = small_layout();
  value["wrapgauge-layout"] = 2;
  EXPECT_NE(refusal(value).find("wrapgauge-layout"), std::string::npos);
  for (const char* key : {"wrapgauge-layout", "outline", "skin_sheet", "outer_sheet"}) {
    value = small_layout();
    value.erase(key);
    EXPECT_NE(refusal(value).find(key), std::string::npos) << key;
  }
  value = small_layout();
  value["closure"]["closing_length"] = 100;
  EXPECT_NE(refusal(value).find("exactly one of closing_length and stretch"), std::string::npos);
}

TEST(LayoutJson, KeepsPrestretchAndTaperAndTakesNoneForStraightAndUnstretched) {
  json value = small_layout();
  Result<Layout> plain = layout_from_json(value, "x.json");
  ASSERT_TRUE(plain) << plain.problem().message;
  EXPECT_EQ(plain->skin_sheet.prestretch, 1.0);
  ASSERT_TRUE(plain->closure);
  EXPECT_EQ(plain->closure->taper, 0.0);
  EXPECT_EQ(plain->closure->bend, 0.0);
  value["skin_sheet"]["prestretch"] = 1.2;
  value["closure"]["taper"] = 0.15;
  value["closure"]["bend"] = -0.04;
  const Result<Layout> read = layout_from_json(value, "x.json");
  ASSERT_TRUE(read) << read.problem().message;
  const Result<Layout> again = layout_from_json(layout_to_json(*read), "x.json");
  ASSERT_TRUE(again) << again.problem().message;
  EXPECT_EQ(again->skin_sheet.prestretch, 1.2);
  EXPECT_EQ(again->outer_sheet.prestretch, 1.0);
  ASSERT_TRUE(again->closure);
  EXPECT_EQ(again->closure->taper, 0.15);
  EXPECT_EQ(again->closure->bend, -0.04);
  value["skin_sheet"]["prestretch"] = 0.9;
  EXPECT_NE(refusal(value).find("prestretch"), std::string::npos) << refusal(value);
}

TEST(LayoutJson, RefusesTooManyPointsAndNumbersOutOfRange) {
  json value = small_layout();
  json many = json::array();
  for (int i = 0; i < 20001; ++i) many.push_back({i % 100, i % 7});
  value["outline"]["polygon"] = many;
  EXPECT_NE(refusal(value).find("20000 points"), std::string::npos);
  value = small_layout();
  value["inlets"][0]["point"][0] = 1e300;
  EXPECT_NE(refusal(value).find("1e+300"), std::string::npos) << refusal(value);
  value["inlets"][0]["point"][0] = std::nan("");
  EXPECT_NE(refusal(value), "");
}

// Every object the schema describes, with the reader's answer to the keys it needs and to none other.
TEST(LayoutJson, TakesExactlyTheKeysOfTheSchema) {
  std::ifstream in(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources" / "layout.schema.json");
  const json schema = json::parse(in);
  std::set<std::string> written, described;
  const auto collect = [](const auto& self, const json& value, std::set<std::string>& keys) -> void {
    if (value.is_object())
      for (const auto& [key, child] : value.items()) {
        keys.insert(key);
        self(self, child, keys);
      }
    if (value.is_array())
      for (const json& child : value) self(self, child, keys);
  };
  const auto describe = [](const auto& self, const json& value, std::set<std::string>& keys) -> void {
    if (value.is_object() && value.contains("properties") && value["properties"].is_object())
      for (const auto& [key, child] : value["properties"].items()) keys.insert(key);
    for (const json& child : value)
      if (child.is_structured()) self(self, child, keys);
  };
  json full = small_layout();
  full["closure"]["closing_length"] = 1;  // beside stretch, so that each key stands once
  full["closure"]["taper"] = 0.1;
  full["closure"]["bend"] = 0.1;
  full["skin_sheet"]["prestretch"] = 1.1;
  collect(collect, full, written);
  describe(describe, schema, described);
  EXPECT_EQ(written, described);
  for (const json& key : schema["required"]) {
    json value = small_layout();
    value.erase(key.get<std::string>());
    const Result<Layout> read = layout_from_json(value, "x.json");
    EXPECT_TRUE(!read || !check_layout(*read).empty()) << key;
  }
}

TEST(LayoutJson, ReadsTheExampleOfTheDocumentation) {
  std::ifstream in(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "docs" / "02-layout.md");
  const std::string page((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
  const std::size_t start = page.find("```json\n"), end = page.find("```", start + 8);
  ASSERT_NE(start, std::string::npos);
  const Result<Layout> layout = layout_from_text(page.substr(start + 8, end - start - 8), "example");
  ASSERT_TRUE(layout) << layout.problem().message;
  const std::vector<Problem> problems = check_layout(*layout);
  EXPECT_TRUE(problems.empty()) << problems.front().message;
}

TEST(LayoutJson, AnswersAnyValueAnywhereWithoutACrash) {
  const json wrong[] = {
      nullptr, true, -1, 1e308, "text", json::array(), json::object(), json::array({json::array()})};
  const json flat = small_layout().flatten();
  int refused = 0;
  for (const auto& [pointer, unused] : flat.items())
    for (json::json_pointer place(pointer); !place.empty(); place = place.parent_pointer())
      for (const json& value : wrong) {
        json changed = small_layout();
        changed[place] = value;
        refused += !layout_from_json(changed, "x.json");
      }
  EXPECT_GT(refused, 500);
  EXPECT_FALSE(layout_from_text("", "x.json"));
  EXPECT_FALSE(layout_from_text(std::string(100000, '['), "x.json"));
  EXPECT_FALSE(layout_from_text("\xff\xfe\0{", "x.json"));
}

}  // namespace
}  // namespace wrapgauge
