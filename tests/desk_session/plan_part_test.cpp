#include "app/desk/session/plan_part.hpp"

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/plan/whole_plan.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

// Which part each key of a plan file belongs to.
const std::map<std::string, PlanPart>& parts_of_keys() {
  static const std::map<std::string, PlanPart> parts{{"body", PlanPart::kBody},
                                                     {"bony_sites", PlanPart::kBody},
                                                     {"landmarks", PlanPart::kBody},
                                                     {"regions", PlanPart::kBody},
                                                     {"tissue", PlanPart::kTissue},
                                                     {"friction", PlanPart::kTissue},
                                                     {"layout", PlanPart::kLayout},
                                                     {"wear", PlanPart::kWear},
                                                     {"inflation", PlanPart::kInflation},
                                                     {"session", PlanPart::kInflation},
                                                     {"supply", PlanPart::kInflation},
                                                     {"filling", PlanPart::kInflation},
                                                     {"limits", PlanPart::kLimits},
                                                     {"cleared_by", PlanPart::kLimits},
                                                     {"wearers", PlanPart::kLimits},
                                                     {"date", PlanPart::kLimits},
                                                     {"mesh", PlanPart::kSolving},
                                                     {"solver", PlanPart::kSolving},
                                                     {"calibration", PlanPart::kCalibration}};
  return parts;
}

// Another value of the same kind: words that a plan knows, numbers near by.
std::vector<json> others(const json& value) {
  if (value.is_boolean()) return {!value.get<bool>()};
  if (value.is_string()) {
    std::vector<json> words{value.get<std::string>() + " 2"};
    for (const char* known :
         {"mm",      "m",      "thin",       "thick",   "bone",       "nerve", "judgement", "confirmed",
          "relaxed", "tense",  "foundation", "coupled", "short hold", "pulse", "air",       "water",
          "male",    "female", "left",       "right",   "wrist",      "lying", "2026-11-30"})
      if (value != known) words.push_back(known);
    return words;
  }
  std::vector<json> numbers{-value.get<double>()};  // an axis that only grows longer is the same one
  for (const double by : {0.01, -0.01, 1.0, -1.0})
    numbers.push_back(value.is_number_integer() && std::abs(by) == 1.0
                          ? json(value.get<int>() + static_cast<int>(by))
                          : json(value.get<double>() + by));
  return numbers;
}

std::string key_of(const std::string& at) {
  return at.substr(1, at.find('/', 1) - 1);
}

// The plan with one value changed and the keys of what changed. A name that another place refers to is
// changed there too. None: no other value is taken there.
std::optional<std::pair<Plan, std::set<std::string>>> with_other(const Plan& plan, const json& whole,
                                                                 const std::string& at) {
  const json flat = whole.flatten(), value = flat[at];
  for (const bool everywhere : {false, true})
    for (const json& other : others(value)) {
      json changed = whole;
      std::set<std::string> keys;
      for (const auto& [place, same] : flat.items())
        if (place == at || (everywhere && same == value)) {
          changed[json::json_pointer(place)] = other;
          keys.insert(key_of(place));
        }
      auto read = plan_from_json(changed, plan.folder, "changed plan");
      if (read && !(*read == plan)) return std::pair(std::move(read).value(), keys);
    }
  return std::nullopt;
}

// Landmarks and regions near them are one part, and a mend step is another one by its name.
bool says_what_kind(const std::string& at) {
  return at == "/wrapgauge-plan" || at == "/layout/wrapgauge-layout" || at.ends_with("/step") ||
         at.ends_with("/near");
}

void expect_each_value_counts(Plan plan) {
  plan.layout_file.reset();
  plan.layout_drawing.reset();
  const json whole = json::parse(plan_to_json(plan).dump());
  const auto same = plan_from_json(whole, plan.folder, "plan");
  ASSERT_TRUE(same.ok()) << same.problem().message;
  const json flat = whole.flatten();
  int counted = 0;
  for (const auto& [at, value] : flat.items()) {
    if (says_what_kind(at) || value.is_null() || value.is_structured()) continue;
    if (at.ends_with("/level") && value == 1.0) continue;  // one step has to reach it
    if (at.ends_with("/no_go")) continue;                  // a region that says nothing else has to have it
    const auto other = with_other(*same, whole, at);
    ASSERT_TRUE(other) << at << " takes no other value, or the plan does not tell it from this one";
    std::set<PlanPart> expected;
    for (const std::string& key : other->second)
      if (key != "name") expected.insert(parts_of_keys().at(key));
    const auto changed = changed_parts(*same, other->first);
    EXPECT_EQ(std::set<PlanPart>(changed.begin(), changed.end()), expected) << at;
    ++counted;
  }
  EXPECT_GT(counted, 60);
}

TEST(PlanPart, EveryValueOfTheDemoPlansCountsInItsPart) {
  for (const char* name : {"forearm-cuff.json", "calf-sleeve.json"}) {
    const auto plan = read_plan(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/plans" / name);
    ASSERT_TRUE(plan.ok()) << plan.problem().message;
    expect_each_value_counts(*plan);
  }
}

TEST(PlanPart, EveryValueOfAPlanThatSaysAllItCanCountsInItsPart) {
  json whole = whole_plan();
  whole["tissue"]["depth_mm"] = {20, 21};
  const auto plan = plan_from_json(whole, "/plans", "whole plan");
  ASSERT_TRUE(plan.ok()) << plan.problem().message;
  expect_each_value_counts(*plan);
  Plan open = *plan;
  for (SkinRegion& region : open.regions) region.no_go = false;
  EXPECT_EQ(changed_parts(*plan, open), std::vector{PlanPart::kBody});
  Plan moved = *plan;
  moved.folder = "/plans/deeper";
  std::get<BodyFile>(moved.body).file = "../arm.stl";
  moved.limits_file = "../ours.json";
  moved.calibration = "../bench/calibration.json";
  EXPECT_TRUE(changed_parts(*plan, moved).empty()) << "the same files named from another folder";
}

TEST(PlanPart, APlanDiffersFromItselfInNothing) {
  EXPECT_TRUE(changed_parts(small_plan(), small_plan()).empty());
}

TEST(PlanPart, PartsAreNamedInTheOrderOfWork) {
  Plan other = small_plan();
  other.layout.chambers[0].name = "another";
  other.inflation[0].target = 3.0 * kPa;
  other.mesh_edge = 5.0 * mm;
  EXPECT_EQ(parts_words(changed_parts(small_plan(), other)),
            "the layout, the inflation and the mesh or solver settings");
}

}  // namespace
}  // namespace wrapgauge
