// `wrapgauge vary` as a user meets it, on a coarse mesh.

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "app/command/wrapped_text.hpp"
#include "app/job/kept_plans.hpp"
#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

class VaryCommands : public CommandTest {
 protected:
  std::string plan() const { return write("plan.json", small_band_plan(2.0).dump()); }
  Answer vary(const std::string& out, std::vector<std::string> more) const {
    std::vector<std::string> all{"vary", plan(), "--out", path(out)};
    all.insert(all.end(), more.begin(), more.end());
    return run(all);
  }
};

constexpr const char* kFiles[] = {"variants.csv", "variants.json", "variants.md", "variants.svg",
                                  "variants.png", "curves.csv",    "curves.svg",  "curves.png"};

TEST_F(VaryCommands, WritesTablesAndPicturesAndSaysTheVerdictFirst) {
  const Answer answer = vary(
      "out", {"--set", "inflation.valve.pressure_kpa=1,6", "--set", "layout.skin_sheet.material=00-30,A10"});
  ASSERT_GE(answer.code, kExitAboveLimit) << answer.err;
  EXPECT_TRUE(answer.out.starts_with("Of 4 variants ")) << answer.out;
  EXPECT_NE(answer.err.find("4 variants to solve take"), std::string::npos) << answer.err;
  for (const std::string& line : lines_of(answer.out))
    EXPECT_TRUE(columns_of(line) <= kColumns || line.starts_with("Written to ")) << line;
  for (const char* name : kFiles) EXPECT_FALSE(bytes(std::string("out/") + name).empty()) << name;
  const auto all = nlohmann::json::parse(bytes("out/variants.json"))["variants"];
  ASSERT_EQ(all.size(), 4u);
  int worst = 0;
  for (const auto& variant : all) worst = std::max(worst, variant["exit_code"].get<int>());
  EXPECT_EQ(answer.code, worst);
  EXPECT_EQ(answer.said().find("not to be worn") != std::string::npos, worst == kExitStop) << answer.out;
  EXPECT_EQ(all[1]["set"]["layout.skin_sheet.material"], "A10");
  EXPECT_EQ(all[2]["set"]["inflation.valve.pressure_kpa"], 6);
  EXPECT_GT(all[2]["whole"]["peak_1cm2_kPa"].get<double>(), all[0]["whole"]["peak_1cm2_kPa"].get<double>());
  const std::string curves = bytes("out/curves.csv");
  EXPECT_EQ(std::count(curves.begin(), curves.end(), '\n'), 1 + 4 * 3);  // head; closed and two steps each
  const std::string table = bytes("out/variants.csv");
  EXPECT_EQ(std::count(table.begin(), table.end(), '\n'), 5);
  const std::string svg = bytes("out/variants.svg");
  EXPECT_NE(svg.find("skin_sheet.material A10"), std::string::npos);
  for (const char* word : {"safe", "nan", "inf,"})
    for (const char* name : {"variants.csv", "variants.md", "curves.csv"})
      EXPECT_EQ(bytes(std::string("out/") + name).find(word), std::string::npos) << name << " says " << word;
}

TEST_F(VaryCommands, KeepsVariantsBesideThePlanThatReadAsTheySolved) {
  std::filesystem::remove_all(kept_folder(path("plan.json")));
  const Answer answer = vary("out", {"--set", "inflation.valve.pressure_kpa=1,6", "--keep"});
  ASSERT_GE(answer.code, kExitAboveLimit) << answer.err;
  EXPECT_NE(answer.out.find("Kept in "), std::string::npos);
  const auto kept = kept_plans(path("plan.json"));
  ASSERT_EQ(kept.size(), 2u);
  const auto all = nlohmann::json::parse(bytes("out/variants.json"))["variants"];
  for (std::size_t v = 0; v < 2; ++v) {
    EXPECT_NEAR(kept[v].figures.peak / kPa, all[v]["whole"]["peak_1cm2_kPa"].get<double>(), 1e-3);
    EXPECT_EQ(kept[v].figures.above, all[v]["exit_code"].get<int>() >= kExitAboveLimit);
    const auto plan = read_plan(kept[v].plan);
    ASSERT_TRUE(plan.ok()) << plan.problem().message;
    EXPECT_NEAR(std::get<Pressure>(plan->inflation[0].target) / kPa, v == 0 ? 1.0 : 6.0, 1e-9);
  }
  std::string values = "0.1";
  for (int i = 2; i <= 41; ++i) values.append(",").append(std::to_string(0.1 * i));
  EXPECT_EQ(vary("more", {"--set", "inflation.valve.pressure_kpa=" + values, "--keep"}).code, kExitBadInput);
}

// The variant with the plan's own value is the plan: an estimate on that mesh ends alike.
TEST_F(VaryCommands, TheVerdictIsThatOfAnEstimateOnThatMesh) {
  const Answer answer = vary("out", {"--set", "friction=0.5", "--json"});
  const auto variant = nlohmann::json::parse(answer.out)["variants"][0];
  const Answer estimate = run({"estimate", plan(), "--out", path("e"), "--no-mesh-error"});
  EXPECT_EQ(variant["exit_code"], estimate.code) << estimate.err;
  EXPECT_EQ(answer.code, estimate.code);
  const auto summary = nlohmann::json::parse(bytes("e/summary.json"));
  EXPECT_NEAR(variant["whole"]["peak_1cm2_kPa"].get<double>(),
              summary["whole"]["peak_1cm2_kPa"].get<double>(), 2e-3);
}

TEST_F(VaryCommands, PartsMergeToTheSameBytes) {
  const std::vector<std::string> sets{"--set", "friction=0.3,0.5", "--set", "body.parameters.girth=250,260"};
  const auto with = [&](std::vector<std::string> more) {
    more.insert(more.begin(), sets.begin(), sets.end());
    return more;
  };
  const Answer whole = vary("whole", with({}));
  ASSERT_NE(whole.code, kExitBadInput) << whole.err;
  EXPECT_EQ(vary("one", with({"--part", "1/2"})).code, kExitDone);
  EXPECT_FALSE(std::filesystem::exists(path("one/variants.csv")));
  EXPECT_EQ(vary("two", with({"--part", "2/2"})).code, kExitDone);
  const Answer merged = vary("all", with({"--merge", path("two"), "--merge", path("one")}));
  EXPECT_EQ(merged.code, whole.code) << merged.err;
  for (const char* name : kFiles)
    EXPECT_TRUE(bytes(std::string("all/") + name) == bytes(std::string("whole/") + name)) << name;
}

TEST_F(VaryCommands, AVariantThatDoesNotSolveIsARow) {
  const Answer answer = vary("out", {"--set", "layout.closure.closing_length=262,400"});
  EXPECT_TRUE(answer.code == kExitDone || answer.code == kExitAboveLimit) << answer.err;
  EXPECT_NE(answer.out.find("1 has no figures"), std::string::npos) << answer.out;
  const auto all = nlohmann::json::parse(bytes("out/variants.json"))["variants"];
  EXPECT_TRUE(all[0]["reason"].is_null());
  EXPECT_TRUE(all[1]["reason"].is_string());
  EXPECT_EQ(vary("none", {"--set", "layout.closure.closing_length=400"}).code, kExitNotConverged);
}

TEST_F(VaryCommands, WhatIsRefusedLeavesNothingBehind) {
  const std::vector<std::vector<std::string>> refused = {{"--set", "friction=9"},
                                                         {"--set", "tissue.stifness=1"},
                                                         {"--set", "friction=0.3", "--set", "friction=0.5"},
                                                         {"--set", "mesh.edge_mm=12,14"},
                                                         {"--set", "body.parameters.girth=0.001"},
                                                         {"--set", "body.file=gone.stl"},
                                                         {"--set", "friction=0.3", "--part", "3/2"}};
  for (const auto& options : refused) {
    const Answer answer = vary("out", options);
    EXPECT_EQ(answer.code, kExitBadInput) << options[1];
    EXPECT_EQ(lines_of(answer.err).size(), 1u) << answer.err;
    EXPECT_FALSE(std::filesystem::exists(path("out"))) << options[1];
  }
  EXPECT_NE(vary("own", {"--set", "mesh.edge_mm=14,16", "--own-mesh"}).code, kExitBadInput);
}

}  // namespace
}  // namespace wrapgauge
