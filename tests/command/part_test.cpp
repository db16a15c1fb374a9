// Which part of the person a plan is about, as a user of the terminal meets it.
#include <nlohmann/json.hpp>

#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

class PartOnTheTerminal : public CommandTest {
 protected:
  // A small pad that is solved in a blink; `body` as the plan's.
  std::string plan(const std::string& body) const {
    return write("plan.json", R"({"wrapgauge-plan": 1, "name": "small pad", "body": )" + body + R"(,
      "tissue": {"site": "forearm relaxed"},
      "layout": {"wrapgauge-layout": 1, "name": "pad",
        "outline": {"rectangle": {"x": -30, "y": -30, "width": 60, "height": 60}},
        "chambers": [{"name": "cell", "rectangle": {"x": -20, "y": -20, "width": 40, "height": 40}}],
        "inlets": [{"name": "tube", "point": [0, 0]}],
        "skin_sheet": {"material": "00-30", "thickness": 2},
        "outer_sheet": {"material": "00-30", "thickness": 2}, "rim_bonded": true},
      "wear": {"anchor": {"station_mm": 100, "angle_deg": 0}},
      "inflation": [{"inlet": "tube", "pressure_kpa": 1}], "limits": {"use": "short hold"},
      "mesh": {"edge_mm": 12}, "solver": {"steps": 1}})");
  }
  // Every command that solves says the same one sentence and writes nothing.
  void expect_refused_by_all(const std::string& file, const std::string& words) const {
    expect_refused(run({"look", file}), words);
    expect_refused(run({"estimate", file, "--out", path("out")}), words);
    expect_refused(run({"note", file, "--out", path("out")}), words);
    expect_refused(run({"ceiling", file, "--out", path("out")}), words);
    expect_refused(run({"aim", file, "--target", "cell=1", "--out", path("out")}), words);
    expect_refused(run({"spread", file, "--runs", "8", "--out", path("out")}), words);
  }
  void expect_refused(const Answer& answer, const std::string& words) const {
    EXPECT_EQ(answer.code, 2) << answer.out;
    EXPECT_NE(answer.err.find(words), std::string::npos) << answer.err;
    EXPECT_EQ(std::count(answer.err.begin(), answer.err.end(), '\n'), 1) << answer.err;
    EXPECT_FALSE(std::filesystem::exists(path("out")));
  }
};

TEST_F(PartOnTheTerminal, IsAskedForByEveryCommandThatSolves) {
  expect_refused_by_all(plan(R"({"form": "cylinder"})"), "does not say which part of the person it is");
  expect_refused_by_all(plan(R"({"form": "tapered-limb", "part": "neck"})"), "nothing may press on neck");
  expect_refused_by_all(plan(R"({"form": "forearm", "part": "face"})"), "nothing may press on neck");
  expect_refused_by_all(plan(R"({"form": "forearm", "part": "knee"})"), "it may be forearm, test object");
  expect_refused_by_all(plan(R"({"form": "cylinder", "part": "tail"})"), "the part 'tail' is not known");
}

TEST_F(PartOnTheTerminal, OfATestObjectBringsNoCeilingAndNoNote) {
  const std::string file = plan(R"({"form": "cylinder", "part": "test object"})");
  expect_refused(run({"ceiling", file, "--out", path("out")}), "it is given no ceiling");
  expect_refused(run({"note", file, "--out", path("out")}), "it is given no note");
  expect_refused(run({"estimate", file, "--note", "--out", path("out")}), "it is given no note");
}

TEST_F(PartOnTheTerminal, OfATestObjectIsSaidInEveryOutput) {
  const std::string file = plan(R"({"form": "cylinder", "part": "test object"})");
  const std::string words = "Test object: no limit is applied to it";
  const Answer answer = run({"estimate", file, "--out", path("out"), "--no-mesh-error"});
  EXPECT_EQ(answer.code, 0) << answer.out << answer.err;
  for (const char* name : {"out/summary.md", "out/summary.json", "out/chambers.csv"})
    EXPECT_NE(bytes(name).find(words), std::string::npos) << name;
  EXPECT_NE(run({"aim", file, "--target", "cell=1"}).said().find(words), std::string::npos);
  EXPECT_NE(run({"look", file}).said().find(words), std::string::npos);
}

TEST_F(PartOnTheTerminal, OfAnotherTissueRowIsSaidToBeNotConfirmed) {
  run({"estimate", plan(R"({"form": "cylinder", "part": "foot"})"), "--out", path("out"), "--no-mesh-error"});
  EXPECT_NE(bytes("out/summary.md")
                .find("Tissue not confirmed: the row 'forearm relaxed' was not chosen for "
                      "the part 'foot', for which the table has no row (judgement)."),
            std::string::npos);
  run({"estimate", plan(R"({"form": "forearm"})"), "--out", path("out"), "--no-mesh-error"});
  EXPECT_EQ(bytes("out/summary.md").find("Tissue not confirmed"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
