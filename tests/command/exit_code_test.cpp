// What the shell is told: the worst of findings and hazards, whichever it is.
#include "app/command/exit_code.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

TEST(ExitCode, FollowsTheWorstSeverity) {
  EXPECT_EQ(exit_code_of(Severity::kNote), 0);
  EXPECT_EQ(exit_code_of(Severity::kWarn), 0);
  EXPECT_EQ(exit_code_of(Severity::kAboveLimit), 4);
  EXPECT_EQ(exit_code_of(Severity::kStop), 5);
}

TEST(ExitCode, TellsBadInputFromNoEquilibriumAndFromCancelled) {
  EXPECT_EQ(exit_code_of(ProblemKind::kBadInput), 2);
  EXPECT_EQ(exit_code_of(ProblemKind::kNotConverged), 3);
  EXPECT_EQ(exit_code_of(ProblemKind::kCancelled), 130);
}

// A glued pad of one chamber, inflated a little: no finding lies above a limit, whatever the hazards say.
class HazardsExit : public CommandTest {
 protected:
  std::string plan_with(const nlohmann::json& more) const {
    const nlohmann::json sheet = {{"material", "00-30"}, {"thickness", 2}};
    const auto square = [](double half) {
      return nlohmann::json{{"x", -half}, {"y", -half}, {"width", 2 * half}, {"height", 2 * half}};
    };
    nlohmann::json plan = {{"wrapgauge-plan", 1},
                           {"name", "small pad"},
                           {"body", {{"form", "cylinder"}, {"part", "forearm"}}},
                           {"tissue", {{"site", "forearm relaxed"}}},
                           {"layout",
                            {{"wrapgauge-layout", 1},
                             {"name", "pad"},
                             {"outline", {{"rectangle", square(30)}}},
                             {"chambers", {{{"name", "cell"}, {"rectangle", square(20)}}}},
                             {"inlets", {{{"name", "tube"}, {"point", {0, 0}}}}},
                             {"skin_sheet", sheet},
                             {"outer_sheet", sheet},
                             {"rim_bonded", true}}},
                           {"wear", {{"anchor", {{"station_mm", 100}, {"angle_deg", 0}}}}},
                           {"inflation", {{{"inlet", "tube"}, {"pressure_kpa", 0.3}}}},
                           {"limits", {{"use", "short hold"}}},
                           {"mesh", {{"edge_mm", 12}}},
                           {"solver", {{"steps", 1}}}};
    plan.update(more);
    return write("plan.json", plan.dump());
  }
  Answer estimate(const nlohmann::json& more, const std::vector<std::string>& options = {}) const {
    std::vector<std::string> words{"estimate", plan_with(more), "--out", path("out"), "--no-mesh-error"};
    words.insert(words.end(), options.begin(), options.end());
    return run(words);
  }
  nlohmann::json summary() const { return nlohmann::json::parse(bytes("out/summary.json")); }
  void expect_no_finding_above_a_limit() const {
    for (const auto& finding : summary().at("findings"))
      EXPECT_TRUE(finding.at("severity") == "note" || finding.at("severity") == "warning")
          << finding.at("sentence") << ": this plan does not tell a hazard from a finding";
  }
};

const nlohmann::json kScalding = {{"filling", {{"medium", "water"}, {"celsius", 60}, {"minutes", 10}}}};
const nlohmann::json kLaxValve = {{"supply", {{"relief_kpa", 60}}}};

TEST_F(HazardsExit, WithoutAHazardIsZero) {
  const Answer answer = estimate(nlohmann::json::object());
  EXPECT_EQ(answer.code, 0) << answer.out << answer.err;
  EXPECT_EQ(summary().at("above_limit"), false);
  expect_no_finding_above_a_limit();
}

TEST_F(HazardsExit, OfAHazardThatSaysStopIsFiveAndNeverZero) {
  for (const std::vector<std::string>& options : {std::vector<std::string>{}, {"--json"}, {"--note"}}) {
    const Answer answer = estimate(kScalding, options);
    EXPECT_EQ(answer.code, 5) << answer.out << answer.err;
    EXPECT_EQ(summary().at("status"), "stopped: not to be worn");
    EXPECT_EQ(summary().at("above_limit"), true);
    expect_no_finding_above_a_limit();
  }
  EXPECT_NE(bytes("out/summary.md").find("STOP: not to be worn"), std::string::npos);
  EXPECT_NE(bytes("out/note.md").find("STOP: this device must not be worn as planned"), std::string::npos);
  EXPECT_EQ(run({"note", path("plan.json"), "--out", path("note"), "--edge-mm", "14"}).code, 5);
}

TEST_F(HazardsExit, OfAHazardAboveALimitIsFourAndNeverZero) {
  const Answer answer = estimate(kLaxValve);
  EXPECT_EQ(answer.code, 4) << answer.out << answer.err;
  EXPECT_EQ(summary().at("status"), "done, above a limit");
  EXPECT_NE(answer.out.find("above limit  A valve or pump that sticks: "), std::string::npos) << answer.out;
  expect_no_finding_above_a_limit();
}

TEST_F(HazardsExit, IsSaidOnTheTerminalWithTheHazardThatMakesIt) {
  const Answer answer = estimate(kScalding);
  EXPECT_NE(answer.out.find("stop         Heat or cold: "), std::string::npos) << answer.out;
  EXPECT_NE(answer.out.find("Status: stopped: not to be worn."), std::string::npos) << answer.out;
}

}  // namespace
}  // namespace wrapgauge
