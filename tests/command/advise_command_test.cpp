// `wrapgauge advise` as a user meets it, on a coarse mesh.

#include <nlohmann/json.hpp>

#include "app/command/wrapped_text.hpp"
#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

class AdviseCommands : public CommandTest {
 protected:
  std::string plan(double pressure_kpa, const char* part = "forearm") const {
    nlohmann::json plan = small_band_plan(pressure_kpa);
    plan["body"]["part"] = part;
    plan["layout"]["chambers"][0]["rectangle"].erase("corner_radius");
    plan["supply"] = {{"relief_kpa", 8}};
    return write("plan.json", plan.dump());
  }
};

TEST_F(AdviseCommands, WhatItWritesEndsAsAnEstimateWithExitCodeZero) {
  const std::string file = plan(6.0);
  const Answer answer = run({"advise", file, "--out", path("advice"), "--write", path("advised.json")});
  EXPECT_EQ(answer.code, kExitAboveLimit) << answer.err;
  for (const std::string& line : lines_of(answer.out)) EXPECT_LE(columns_of(line), kColumns) << line;
  EXPECT_NE(answer.said().find("within its limits, "), std::string::npos) << answer.out;
  EXPECT_NE(answer.said().find("Not a medical device"), std::string::npos) << answer.out;
  EXPECT_EQ(run({"estimate", path("advised.json"), "--out", path("a"), "--no-mesh-error"}).code, kExitDone);
  const auto advice = nlohmann::json::parse(bytes("advice/advice.json"));
  EXPECT_EQ(advice["changes"][0]["fate"], "advised");
  EXPECT_TRUE(advice["changes"][0]["then"]["within_limits"].get<bool>());
  EXPECT_FALSE(advice["plan_within_limits"].get<bool>());
  EXPECT_NE(bytes("advice/advice.md").find("| advised |"), std::string::npos);
  // From the kept runs, and from none: the same bytes.
  const Answer again = run({"advise", file, "--out", path("advice"), "--json"});
  EXPECT_EQ(again.out, bytes("advice/advice.json"));
  EXPECT_EQ(run({"advise", file, "--json"}).out, again.out);
}

TEST_F(AdviseCommands, AValveThatOpensTooLateIsAboveTheLimitsToo) {
  const Answer answer = run({"advise", plan(0.8), "--write", path("advised.json")});
  EXPECT_EQ(answer.code, kExitAboveLimit) << answer.out << answer.err;
  EXPECT_NE(answer.said().find("1. Set the relief valves lower: no higher than "), std::string::npos)
      << answer.out;
  EXPECT_EQ(run({"estimate", path("advised.json"), "--out", path("a"), "--no-mesh-error"}).code, kExitDone);
}

TEST_F(AdviseCommands, RefusesTheSamePlanAndATestObjectAndWritesNothing) {
  const std::string file = plan(6.0);
  const std::string before = bytes("plan.json");
  EXPECT_EQ(run({"advise", file, "--write", file}).code, kExitBadInput);
  EXPECT_EQ(bytes("plan.json"), before);
  const Answer object = run({"advise", plan(6.0, "test object"), "--out", path("out")});
  EXPECT_EQ(object.code, kExitBadInput);
  EXPECT_NE(object.err.find("it is given no advice"), std::string::npos) << object.err;
  EXPECT_FALSE(std::filesystem::exists(path("out")));
}

}  // namespace
}  // namespace wrapgauge
