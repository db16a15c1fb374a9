#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "model/core/file.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

std::string drawing(const char* name) {
  return WRAPGAUGE_SOURCE_DIR "/tests/data/drawing/" + std::string(name);
}

class LayoutRead : public CommandTest {};

const std::vector<std::string> kSheets = {"--skin", "00-30", "1.5",       "--outer",
                                          "A10",    "2.5",   "--stretch", "0.02"};

std::vector<std::string> with_sheets(std::vector<std::string> arguments) {
  arguments.insert(arguments.end(), kSheets.begin(), kSheets.end());
  return arguments;
}

TEST_F(LayoutRead, ListsEveryShapeAndWhatItWouldBecome) {
  const Answer answer = run({"layout", "read", drawing("cuff.svg"), "--map", "cells=chamber"});
  EXPECT_EQ(answer.code, kExitDone) << answer.err;
  for (const char* words : {"7 shapes, 1 other thing left out",
                            "rect 'left' at line 5: chamber (called 'cells'); area 4234.16 mm2",
                            "channel 5 mm wide", "text at line 11: left out"})
    EXPECT_NE(answer.out.find(words), std::string::npos) << words << "\n" << answer.out;
  const Answer json = run({"layout", "read", drawing("cuff.svg"), "--json"});
  const auto list = nlohmann::json::parse(json.out);
  EXPECT_EQ(list["shapes"].size(), 7u);
  EXPECT_EQ(list["shapes"][0]["part"], "outline");
  EXPECT_FALSE(list["shapes"][0]["guessed"]);
  EXPECT_EQ(list["shapes"][1]["part"], "chamber");  // nobody says so
  EXPECT_TRUE(list["shapes"][1]["guessed"]);
  const Answer quiet = run({"layout", "read", drawing("cuff.svg"), "--json", "--no-guess"});
  EXPECT_TRUE(nlohmann::json::parse(quiet.out)["shapes"][1]["part"].is_null());
}

// Of clip.svg two shapes are whole and two are cut, of which nobody says what they are; one is clipped away.
TEST_F(LayoutRead, CountsAllThatIsLeftOutAndGivesACutShapesAreaUncut) {
  const Answer clipped = run({"layout", "read", drawing("clip.svg")});
  for (const char* words :
       {"4 shapes, 4 of them and 1 other thing left out", "area 300.00 mm2, perimeter 80.00 mm, uncut, from"})
    EXPECT_NE(clipped.out.find(words), std::string::npos) << words << "\n" << clipped.out;
  EXPECT_EQ(clipped.out.find("length"), std::string::npos) << clipped.out;
  const Answer ignored = run({"layout", "read", drawing("clip.svg"), "--map", "*=ignore", "--json"});
  const auto counts = nlohmann::json::parse(ignored.out)["counts"];
  EXPECT_EQ(counts["shapes_left_out"], 4);
  EXPECT_EQ(counts["left_out"], 1);
  const Answer named = run({"layout", "read", drawing("labels.svg")});
  EXPECT_NE(named.out.find("4 shapes, 0 left out"), std::string::npos) << named.out;
}

TEST_F(LayoutRead, MarksGuessesAndShowsTheKeysThatSayWhatTheyAre) {
  const Answer listed = run({"layout", "read", drawing("guess.svg"), "--map", "cels=chamber"});
  for (const char* words : {"rect 'r2' at line 3: chamber (guess: closed, inside the outline)",
                            "; keys: r2, fill:#000000", "note: The mapping 'cels=chamber' fits no shape"})
    EXPECT_NE(listed.out.find(words), std::string::npos) << words << "\n" << listed.out;
  const Answer written = run(with_sheets({"layout", "read", drawing("guess.svg"), "--out", path("g.json")}));
  ASSERT_EQ(written.code, kExitDone) << written.err;
  EXPECT_NE(written.out.find("note: Guessed, since nothing in the drawing says it: 1 outline, 2 chambers, 1 "
                             "inset seam, 1 channel, 1 inlet."),
            std::string::npos)
      << written.out;
  EXPECT_NE(bytes("g.json").find("guess (parts guessed)"), std::string::npos);
}

TEST_F(LayoutRead, NamesAllFaultsOfAFileAtOnce) {
  const Answer answer = run({"layout", "read", drawing("faults.svg")});
  EXPECT_EQ(answer.code, kExitBadInput);
  for (const char* words : {"faults.svg has 2 faults.", "path 'open'", "path 'bow'"})
    EXPECT_NE(answer.err.find(words), std::string::npos) << words << "\n" << answer.err;
}

TEST_F(LayoutRead, ASmallFileDoesNotPrintWithoutEnd) {
  for (const bool json : {false, true}) {
    const Answer answer = json ? run({"layout", "read", drawing("print_bomb.svg"), "--json"})
                               : run({"layout", "read", drawing("print_bomb.svg")});
    EXPECT_LT(answer.out.size(), 400000u) << json;
    EXPECT_NE(answer.out.find(json ? "\"shapes\": 8192" : "... and 7992 more shapes; 200 are listed."),
              std::string::npos);
  }
}

TEST_F(LayoutRead, ALayoutGoesToADrawingAndComesBackWithoutOptions) {
  const std::string layout = WRAPGAUGE_SOURCE_DIR "/resources/layouts/forearm-cuff.json";
  ASSERT_EQ(run({"layout", "read", layout, "--out", path("first.json")}).code, kExitDone);
  ASSERT_EQ(run({"layout", "template", layout, "--out", path("t.svg")}).code, kExitDone);
  for (const char* drawn : {"a.svg", "a.dxf"})
    ASSERT_EQ(run({"layout", "read", layout, "--out", path(drawn)}).code, kExitDone) << drawn;
  for (const char* drawn : {"a.svg", "a.dxf", "t.svg"}) {
    const Answer answer = run({"layout", "read", path(drawn), "--out", path("again.json")});
    EXPECT_EQ(answer.code, kExitDone) << drawn << answer.err;
    EXPECT_EQ(bytes("again.json"), bytes("first.json")) << drawn;
  }
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
  EXPECT_FALSE(std::filesystem::exists(path("a.json")));
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
    return R"({"wrapgauge-plan": 1, "name": "small band", "body": {"form": "cylinder", "part": "forearm"},
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

// Rows of chambers.csv: name, gauge pressure in kPa, volume in mL.
struct ChamberRow {
  std::string name;
  double gauge_kpa, volume_ml;
};

std::vector<ChamberRow> chamber_rows(const std::string& csv) {
  std::vector<ChamberRow> rows;
  std::istringstream lines(csv);
  std::string line;
  std::getline(lines, line);  // the titles
  while (std::getline(lines, line)) {
    std::vector<std::string> cells;
    std::istringstream row(line);
    for (std::string cell; std::getline(row, cell, ',');) cells.push_back(cell);
    rows.push_back({cells.at(0), std::stod(cells.at(1)), std::stod(cells.at(3))});
  }
  return rows;
}

// The mapping stands in the plan itself.
std::string drawn_plan(const std::string& file, const std::string& map, const std::string& inflation) {
  return R"({"wrapgauge-plan": 1, "name": "c", "body": {"form": "cylinder", "part": "forearm", "parameters": {"girth": 250}},
    "tissue": {"site": "forearm relaxed"}, "layout": {"drawing": ")" +
         file + R"(", "map": {"wrapgauge-drawing-map": 1, )" + map +
         R"(, "skin_sheet": {"material": "00-30", "thickness": 1.5}, "outer_sheet": {"material": "A10", "thickness": 2},
    "backing": {"along": 1.5, "across": 1}, "closure": {"stretch": 0.04}}},
    "wear": {"anchor": {"station_mm": 100, "angle_deg": 90}}, "inflation": [)" +
         inflation + R"(], "limits": {"use": "short hold"}, "mesh": {"edge_mm": 10}})";
}

TEST_F(LayoutRead, ADxfOfFourChambersPutInAsBlocksIsEstimated) {
  write("cuff.dxf", *read_file(drawing("blocks.dxf")));
  write("plan.json",
        drawn_plan("cuff.dxf", R"("channel_width": 5)", R"({"inlet": "inlet 1", "pressure_kpa": 0.5})"));
  const Answer answer = run({"estimate", path("plan.json"), "--out", path("out"), "--no-mesh-error"});
  const auto rows = chamber_rows(bytes("out/chambers.csv"));
  ASSERT_EQ(rows.size(), 4u) << answer.err;
  for (const ChamberRow& row : rows) EXPECT_NEAR(row.gauge_kpa, 0.5, 1e-3) << row.name;  // all on one channel
}

TEST_F(LayoutRead, AnSvgOfTwoChambersAndTwoInletsColouredByAStyleSheetIsEstimated) {
  write("cuff.svg",
        R"(<svg xmlns="http://www.w3.org/2000/svg" width="250mm" height="60mm" viewBox="0 0 250 60">
    <style>.cell {fill: #9ecae1} .edge {fill: none; stroke: #333}</style>
    <rect class="edge" width="250" height="60"/><rect class="cell" id="left" x="40" y="15" width="50" height="30"/>
    <rect class="cell" id="right" x="130" y="15" width="50" height="30"/>
    <circle class="inlet" id="air" cx="65" cy="30" r="1"/><circle class="inlet" id="water" cx="155" cy="30" r="1"/></svg>)");
  write("plan.json",
        drawn_plan("cuff.svg",
                   R"("map": [{"name": "edge", "part": "outline"}, {"fill": "#9ecae1", "part": "chamber"}])",
                   R"({"inlet": "air", "pressure_kpa": 0.5}, {"inlet": "water", "volume_ml": 2})"));
  const Answer answer = run({"estimate", path("plan.json"), "--out", path("out"), "--no-mesh-error"});
  const auto rows = chamber_rows(bytes("out/chambers.csv"));
  ASSERT_EQ(rows.size(), 2u) << answer.err;
  EXPECT_EQ(rows[0].name, "\"left\"");
  EXPECT_NEAR(rows[0].gauge_kpa, 0.5, 1e-3);
  EXPECT_EQ(rows[1].name, "\"right\"");
  EXPECT_NEAR(rows[1].volume_ml, 2.0, 0.01);
}

}  // namespace
}  // namespace wrapgauge
