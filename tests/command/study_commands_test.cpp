// The commands of the study stage as a user meets them, on a coarse mesh.

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "app/command/wrapped_text.hpp"
#include "model/core/file.hpp"
#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

class StudyCommands : public CommandTest {
 protected:
  nlohmann::json json(const std::string& name) const { return nlohmann::json::parse(bytes(name)); }

  std::string plan(double pressure_kpa, double stretch = -0.02, bool far_pad = false) const {
    return write("plan.json", small_band_plan(pressure_kpa, stretch, far_pad).dump());
  }
};

TEST_F(StudyCommands, CeilingNamesWhatStopsItAndWritesTheSameAnswerAsJson) {
  const std::string file = plan(6.0);
  const Answer answer = run({"ceiling", file, "--out", path("ceiling.json")});
  EXPECT_EQ(answer.code, kExitAboveLimit) << answer.err;  // the plan asks for more
  for (const std::string& line : lines_of(answer.out)) EXPECT_LE(columns_of(line), kColumns) << line;
  EXPECT_NE(answer.said().find("What stops it: '"), std::string::npos) << answer.out;
  EXPECT_NE(answer.said().find("solved 5 % above it: "), std::string::npos) << answer.out;
  EXPECT_NE(answer.said().find("Set the relief valve no higher than "), std::string::npos) << answer.out;
  const auto ceiling = json("ceiling.json");
  EXPECT_TRUE(ceiling["together"]["confirmed"].get<bool>());
  EXPECT_LE(ceiling["together"]["at"]["share_of_limit"].get<double>(), 1.0001);
  EXPECT_GT(ceiling["together"]["five_percent_above"]["share_of_limit"].get<double>(), 1.0);
  const double kpa = ceiling["together"]["inlets"][0]["gauge_kPa"].get<double>();
  EXPECT_GT(kpa, 1.0);
  // A plan that asks for a little less is within, says the estimate too.
  EXPECT_EQ(run({"estimate", plan(0.97 * kpa), "--out", path("a"), "--no-mesh-error"}).code, kExitDone);
}

TEST_F(StudyCommands, ADeviceTooTightBeforeItIsInflatedHasNoCeiling) {
  const Answer answer = run({"ceiling", plan(1.0, 0.15), "--together"});
  EXPECT_EQ(answer.code, kExitAboveLimit) << answer.err;
  EXPECT_NE(answer.said().find("none. Deflated and only fastened, '"), std::string::npos) << answer.out;
  EXPECT_EQ(answer.out.find("relief"), std::string::npos) << answer.out;
}

TEST_F(StudyCommands, AimReachesAMeanThatOneInletCanGive) {
  const Answer answer = run({"aim", plan(1.0), "--target", "pad=0.8", "--out", path("aim.json")});
  EXPECT_EQ(answer.code, kExitDone) << answer.out << answer.err;
  const auto aim = json("aim.json")["as_drawn"];
  EXPECT_TRUE(aim["reached"].get<bool>());
  EXPECT_NEAR(aim["chambers"][0]["mean_kPa"].get<double>(), 0.8, 0.05) << aim.dump(1);
}

TEST_F(StudyCommands, AimIsHonestWhenOneInletCannotDoItAndSaysWhatSplitWould) {
  const Answer answer =
      run({"aim", plan(1.0, -0.02, true), "--target", "pad=0.8", "--target", "far pad=2.0", "--json"});
  EXPECT_EQ(answer.code, kExitNotReached) << answer.out << answer.err;
  const auto aim = nlohmann::json::parse(answer.out);
  EXPECT_FALSE(aim["as_drawn"]["reached"].get<bool>());
  EXPECT_TRUE(aim["split"]["reached"].get<bool>()) << aim.dump(1);
  EXPECT_EQ(aim["split"]["inlets"].size(), 2u);
  EXPECT_EQ(run({"aim", plan(1.0), "--target", "heel=1"}).code, kExitBadInput);
  EXPECT_EQ(run({"aim", plan(1.0), "--target", "pad=wide"}).code, kExitBadInput);
  EXPECT_EQ(run({"aim", plan(1.0)}).code, kExitBadInput);
}

TEST_F(StudyCommands, SpreadInPartsMergesToTheBytesOfTheWholeAndFeedsCeilingAndNote) {
  const std::string file = plan(2.0);
  const auto spread = [&](const std::string& out, std::vector<std::string> more, const char* runs = "8") {
    std::vector<std::string> all{"spread", file, "--out", path(out), "--runs", runs, "--preview-mm", "20"};
    all.insert(all.end(), more.begin(), more.end());
    return run(all);
  };
  const Answer half = spread("one", {"--part", "1/2"});
  EXPECT_EQ(half.code, kExitDone) << half.err;
  EXPECT_NE(half.said().find("are still to come from other parts"), std::string::npos) << half.out;
  EXPECT_NE(half.err.find("runs to solve take about"), std::string::npos) << half.err;
  EXPECT_FALSE(std::filesystem::exists(path("one/spread.json")));
  EXPECT_EQ(spread("two", {"--part", "2/2"}).code, kExitDone);
  const Answer merged = spread("all", {"--merge", path("one"), "--merge", path("two")});
  ASSERT_TRUE(merged.code == kExitDone || merged.code == kExitAboveLimit) << merged.err;
  EXPECT_EQ(merged.err.find("to solve"), std::string::npos) << merged.err;  // nothing is left to solve
  const Answer whole = spread("whole", {});
  EXPECT_EQ(whole.code, merged.code) << whole.err;
  EXPECT_TRUE(bytes("all/spread.json") == bytes("whole/spread.json"));
  EXPECT_TRUE(bytes("all/spread.md") == bytes("whole/spread.md"));
  EXPECT_EQ(spread("bad", {"--part", "3/2"}).code, kExitBadInput);

  ASSERT_NE(run({"ceiling", file, "--spread", path("all"), "--together", "--out", path("ceiling.json")}).code,
            kExitBadInput);
  EXPECT_GE(json("ceiling.json")["spread_factor"].get<double>(), 1.0);
  std::vector<std::string> note{"note",     file,        "--out",     path("note"),
                                "--spread", path("all"), "--ceiling", path("ceiling.json")};
  const Answer few = run(note);
  EXPECT_EQ(few.code, kExitBadInput);
  EXPECT_NE(few.err.find("has 8 runs"), std::string::npos) << few.err;
  EXPECT_FALSE(std::filesystem::exists(path("note/note.md")));
  ASSERT_NE(spread("enough", {}, "64").code, kExitBadInput);
  note[5] = path("enough");
  const Answer written = run(note);
  ASSERT_TRUE(written.code == kExitDone || written.code == kExitAboveLimit) << written.err;
  const std::string text = bytes("note/note.md");
  EXPECT_NE(text.find(" runs, all uncertain inputs drawn at once"), std::string::npos);
  EXPECT_NE(text.find("Highest inflation within the limits: 'valve' "), std::string::npos);
  EXPECT_NE(text.find("as solved for with the ceiling"), std::string::npos);
  EXPECT_EQ(text.find("not calculated |"), std::string::npos);

  plan(2.1);  // the same file, changed
  const Answer stale = run(note);
  EXPECT_EQ(stale.code, kExitBadInput);
  EXPECT_NE(stale.err.find("stale"), std::string::npos) << stale.err;
  EXPECT_EQ(bytes("note/note.md"), text);  // nothing lost
}

TEST_F(StudyCommands, EstimateTakesStudiesOnlyWithANote) {
  const Answer answer = run({"estimate", plan(1.0), "--out", path("a"), "--spread", path("s")});
  EXPECT_EQ(answer.code, kExitBadInput);
  EXPECT_NE(answer.err.find("--note"), std::string::npos) << answer.err;
}

}  // namespace
}  // namespace wrapgauge
