#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/command/run_command.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

std::string drawing(const char* name) {
  return WRAPGAUGE_SOURCE_DIR "/tests/data/drawing/" + std::string(name);
}

class LayoutRead : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("wrapgauge-layout-read-" + std::to_string(getpid()));
    fs::remove_all(folder_);
    fs::create_directories(folder_);
  }
  void TearDown() override { fs::remove_all(folder_); }
  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  void write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
  }
  std::string bytes(const std::string& name) const {
    const auto read = read_file(path(name));
    return read ? *read : "";
  }
  fs::path folder_;
};

const std::vector<std::string> kSheets = {"--skin", "00-30", "1.5",       "--outer",
                                          "A10",    "2.5",   "--stretch", "0.02"};

std::vector<std::string> with_sheets(std::vector<std::string> arguments) {
  arguments.insert(arguments.end(), kSheets.begin(), kSheets.end());
  return arguments;
}

TEST_F(LayoutRead, ListsEveryShapeAndWhatItWouldBecome) {
  const Answer answer = run({"layout", "read", drawing("cuff.svg"), "--map", "cells=chamber"});
  EXPECT_EQ(answer.code, kExitDone) << answer.err;
  for (const char* words :
       {"7 shapes, 1 left out", "rect 'left' at line 5: chamber (called 'cells'); area 4234.16 mm2",
        "channel 5 mm wide", "text at line 11: left out"})
    EXPECT_NE(answer.out.find(words), std::string::npos) << words << "\n" << answer.out;
  const Answer json = run({"layout", "read", drawing("cuff.svg"), "--json"});
  const auto list = nlohmann::json::parse(json.out);
  EXPECT_EQ(list["shapes"].size(), 7u);
  EXPECT_EQ(list["shapes"][0]["part"], "outline");
  EXPECT_TRUE(list["shapes"][1]["part"].is_null());
}

TEST_F(LayoutRead, WritesALayoutAndItsMappingAndADrawingOfIt) {
  const Answer first = run(with_sheets({"layout", "read", drawing("cuff.svg"), "--map", "cells=chamber",
                                        "--out", path("a.json"), "--save-map", path("map.json")}));
  ASSERT_EQ(first.code, kExitDone) << first.err;
  const Answer second =
      run({"layout", "read", drawing("cuff.svg"), "--map-file", path("map.json"), "--out", path("b.json")});
  ASSERT_EQ(second.code, kExitDone) << second.err;
  EXPECT_EQ(bytes("a.json"), bytes("b.json"));
  ASSERT_EQ(run({"layout", "read", path("a.json"), "--out", path("a.svg")}).code, kExitDone);
  const Answer third =
      run(with_sheets({"layout", "read", path("a.svg"), "--name", "cuff", "--out", path("c.json")}));
  ASSERT_EQ(third.code, kExitDone) << third.err;
  EXPECT_EQ(bytes("c.json"), bytes("a.json"));
}

TEST_F(LayoutRead, WritesNothingWhenSomethingIsMissing) {
  const Answer answer = run({"layout", "read", drawing("cuff.svg"), "--out", path("a.json")});
  EXPECT_EQ(answer.code, kExitBadInput);
  EXPECT_NE(answer.err.find("--skin"), std::string::npos);
  EXPECT_FALSE(fs::exists(path("a.json")));
  EXPECT_EQ(run({"layout", "read", drawing("cuff.svg"), "--map", "cells=pocket"}).code, kExitBadInput);
  EXPECT_EQ(run({"layout", "read", drawing("cuff.svg"), "--skin", "00-30", "thick"}).code, kExitBadInput);
  EXPECT_EQ(run({"layout", "read", drawing("cuff.svg"), "--out", path("a.pdf")}).code, kExitBadInput);
  EXPECT_EQ(run({"layout", "read", path("none.svg")}).code, kExitBadInput);
  EXPECT_EQ(run({"layout", "read", drawing("bow_tie.svg")}).code, kExitBadInput);
}

TEST_F(LayoutRead, APlanWithADrawingGivesTheFiguresOfItsLayout) {
  write("band.svg",
        R"(<svg xmlns="http://www.w3.org/2000/svg" width="270mm" height="50mm" viewBox="0 0 270 50">
    <rect id="outline" width="270" height="50"/>
    <rect class="chamber" id="pad" x="60" y="10" width="50" height="30"/>
    <circle class="inlet" id="valve" cx="85" cy="25" r="1"/></svg>)");
  write("map.json", R"({"wrapgauge-drawing-map": 1, "skin_sheet": {"material": "00-30", "thickness": 1.5},
    "outer_sheet": {"material": "A10", "thickness": 2}, "backing": {"along": 1.5, "across": 1},
    "layout_name": "band", "closure": {"stretch": 0.03}})");
  ASSERT_EQ(
      run({"layout", "read", path("band.svg"), "--map-file", path("map.json"), "--out", path("band.json")})
          .code,
      kExitDone);
  const auto plan = [](const std::string& layout) {
    return R"({"wrapgauge-plan": 1, "name": "small band", "body": {"form": "cylinder"},
      "tissue": {"site": "forearm relaxed"}, "layout": )" +
           layout +
           R"(, "wear": {"anchor": {"station_mm": 120, "angle_deg": 90}, "layout_point_mm": [85, 25]},
      "inflation": [{"inlet": "valve", "pressure_kpa": 1}], "limits": {"use": "short hold"},
      "mesh": {"edge_mm": 8}})";
  };
  write("drawn.json", plan(R"({"drawing": "band.svg", "map": "map.json"})"));
  write("given.json", plan(R"({"file": "band.json"})"));
  for (const char* name : {"drawn", "given"}) {
    const Answer answer =
        run({"estimate", path(std::string(name) + ".json"), "--out", path(name), "--no-mesh-error"});
    ASSERT_TRUE(answer.code == kExitDone || answer.code == kExitAboveLimit) << answer.err;
  }
  EXPECT_GT(bytes("drawn/chambers.csv").size(), 200u);
  EXPECT_EQ(bytes("drawn/chambers.csv"), bytes("given/chambers.csv"));
  EXPECT_NE(bytes("drawn/summary.json").find("\"drawing\""), std::string::npos);  // its hash is kept
}

}  // namespace
}  // namespace wrapgauge
