#include "model/casting/casting_rules.hpp"

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "tables.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

std::string refusal(const json& value) {
  const std::filesystem::path file =
      std::filesystem::temp_directory_path() / ("casting-" + std::to_string(getpid()) + ".json");
  std::ofstream(file) << value;
  const auto read = read_casting_rules(file);
  std::filesystem::remove(file);
  return read ? "" : read.problem().message;
}

json table() {
  std::ifstream in(std::string(WRAPGAUGE_SOURCE_DIR) + "/resources/casting.json");
  return json::parse(in);
}

TEST(CastingRules, EveryRuleSaysItsSourceAndStatus) {
  const CastingRules rules = test::rules();
  EXPECT_EQ(rules.row(CastingRule::kSeamWidth).name, "seam width");
  EXPECT_EQ(rules.row(CastingRule::kFusingLayer).name, "fusing layer");
  EXPECT_EQ(rules.row(CastingRule::kInletToSeam).name, "inlet to seam");
  EXPECT_EQ(rules.value(CastingRule::kInletToSeam), 4.0);
  for (const CastingRuleRow& row : rules.rows) {
    EXPECT_FALSE(row.source.empty()) << row.name;
    EXPECT_FALSE(row.status.empty()) << row.name;
  }
}

TEST(CastingRules, AreRefusedWhenOneIsMissingTwiceOrUnknown) {
  EXPECT_EQ(refusal(table()), "");
  json value = table();
  value["rules"].erase(3);
  EXPECT_NE(refusal(value).find("the rule \"channel least, thick sheets\" is missing"), std::string::npos);
  value = table();
  value["rules"].push_back(value["rules"][0]);
  EXPECT_NE(refusal(value).find("\"seam width\" stands twice"), std::string::npos) << refusal(value);
  value = table();
  value["rules"][0]["name"] = "seam";
  EXPECT_NE(refusal(value).find("there is no rule \"seam\""), std::string::npos);
  value = table();
  value["rules"][0]["value"] = 0;
  EXPECT_NE(refusal(value).find("value"), std::string::npos);
  value = table();
  value["rules"][0].erase("source");
  EXPECT_NE(refusal(value).find("source"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
