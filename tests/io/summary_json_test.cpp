// Figures where they leave the model: each under its own name, each in the unit its name says.
#include "model/io/writers/summary_json.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/io/summary_schema.hpp"
#include "tests/note/full_summary.hpp"
#include "tests/note/named_cautions.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr double kMmhgPerKpa = 7.50062;  // 1 mmHg = 133.322 Pa

// With every part of it given.
Summary whole_summary() {
  Summary summary = full_summary();
  Finding& card = summary.findings.front();
  card.place = Phrase::worded("%1 over %2", {name_of("pad"), name_of("ulna")});
  card.measured = Measured{Amount::kPressure, 5300.0, 9010.0, 4000.0, Phrase::worded("over bone")};
  card.cause = Cause::kBone;
  card.action = Phrase::worded("Move it.");
  card.source_key = "bony, sustained";
  card.at_m = Vec3(0.011, 0.022, 0.033);
  summary.part = BodyPart::kForearm, summary.side = BodySide::kLeft;
  summary.bony_sites = {
      {"ulna", Vec3(0.001, 0.002, 0.003), 12.0 * mm, 4.0 * mm, SiteKind::kNerve, "judgement", "Mind it."}};
  summary.sites_known = true;
  summary.sites_confirmed = SitesConfirmed{"A. Example", "2026-11-01", "felt along the bone"};
  summary.cleared_by = Clearance{"B. Example", "physiotherapist", "2026-11-20"};
  summary.wearers = {"healthy adults", 7, WearerPosture::kSitting, -120.0 * mm, "an observer", "they say so"};
  summary.date = "2026-11-29";
  summary.tables_differ = {"The table 'tissues.json' is not the one that the program ships."};
  summary.limits_override = "Overridden.";
  summary.limit_point = "Not reached.";
  return summary;
}

json full_json() {
  return json::parse(summary_json(whole_summary()));
}

bool ends_with(const std::string& key, const std::string& ending) {
  return key.size() >= ending.size() && key.compare(key.size() - ending.size(), ending.size(), ending) == 0;
}

// Pressures of a JSON value by the path to them, without the unit: told in both units, or in kPa alone.
struct Pressures {
  std::set<std::string> both, kpa_only;
};

void expect_same_pressure(const std::string& where, const json& kpa, const json& mmhg) {
  ASSERT_TRUE(kpa.is_number() && mmhg.is_number()) << where;
  const double from_kpa = kpa.get<double>() * kMmhgPerKpa;
  EXPECT_NEAR(mmhg.get<double>(), from_kpa, 0.05 + 0.5e-3 * kMmhgPerKpa + 1e-4) << where;
}

void gather(const json& value, const std::string& path, Pressures& found) {
  if (value.is_array())
    for (std::size_t i = 0; i < value.size(); ++i) gather(value[i], path + "/" + std::to_string(i), found);
  if (!value.is_object()) return;
  for (const auto& item : value.items()) {
    const std::string key = item.key(), where = path + "/" + key;
    gather(item.value(), where, found);
    if (ends_with(key, "_mmHg")) {
      EXPECT_TRUE(value.contains(key.substr(0, key.size() - 5) + "_kPa"))
          << where << " stands without its kPa";
    }
    if (!ends_with(key, "_kPa")) continue;
    const std::string bare = where.substr(0, where.size() - 4),
                      other = key.substr(0, key.size() - 4) + "_mmHg";
    if (!value.contains(other)) {
      found.kpa_only.insert(bare);
      continue;
    }
    found.both.insert(bare);
    expect_same_pressure(where, item.value(), value[other]);
  }
}

TEST(SummaryJson, EveryPressureInMillimetresOfMercuryIsItsKilopascals) {
  Pressures found;
  gather(full_json(), "", found);
  const std::set<std::string> both{"/inlets/0/highest_relief", "/exposure/still_pressed_when_vented",
                                   "/inlets/0/gauge",          "/chambers/0/gauge",
                                   "/chambers/0/mean",         "/chambers/0/peak_1cm2",
                                   "/chambers/0/p95",          "/chambers/1/gauge",
                                   "/chambers/1/mean",         "/chambers/1/peak_1cm2",
                                   "/chambers/1/p95",          "/whole/peak_1cm2",
                                   "/limits/rows/0/warn",      "/limits/rows/0/limit"};
  EXPECT_EQ(found.both, both);
  // Differences of two solves, which no one sets a gauge by, stand in kPa alone.
  const std::set<std::string> kpa_only{"/comparisons/0/chambers/0/mean/other",
                                       "/comparisons/0/chambers/0/mean/shown",
                                       "/comparisons/0/chambers/0/mean/shown_minus_other",
                                       "/comparisons/0/chambers/0/peak_1cm2/other",
                                       "/comparisons/0/chambers/0/peak_1cm2/shown",
                                       "/comparisons/0/chambers/0/peak_1cm2/shown_minus_other",
                                       "/comparisons/0/peak_anywhere/other",
                                       "/comparisons/0/peak_anywhere/shown",
                                       "/comparisons/0/peak_anywhere/shown_minus_other",
                                       "/mesh/error/peak_difference",
                                       "/mesh/error/worst_mean_difference"};
  EXPECT_EQ(found.kpa_only, kpa_only);
}

// Named figures of one object, to the digits they are written with.
void expect_figures(const json& object, const std::vector<std::pair<const char*, double>>& figures) {
  for (const auto& [key, value] : figures) {
    ASSERT_TRUE(object.contains(key)) << key << " is missing";
    ASSERT_TRUE(object[key].is_number()) << key << " is " << object[key];
    EXPECT_NEAR(object[key].get<double>(), value, 1e-9 + 1e-6 * std::abs(value)) << key;
  }
}

TEST(SummaryJson, EveryFigureOfAChamberStandsUnderItsOwnName) {
  const json chamber = full_json().at("chambers").at(0);
  EXPECT_EQ(chamber.at("chamber"), "pad");
  expect_figures(chamber, {{"gauge_kPa", 7.1},
                           {"volume_mL", 23.47},
                           {"mean_kPa", 4.2},
                           {"peak_1cm2_kPa", 5.3},
                           {"p95_kPa", 6.4},
                           {"drawn_area_cm2", 15.5},
                           {"contact_area_cm2", 12.27},
                           {"contact_fraction", 0.815},
                           {"force_N", 6.51},
                           {"stretch_max", 1.31},
                           {"share_of_elongation_at_break", 0.071},
                           {"seam_tension_N_per_mm", 0.163},
                           {"indentation_max_mm", 3.7},
                           {"tissue_strain", 0.185}});
  EXPECT_EQ(chamber.at("peak_at_mm"), json({11.0, 22.0, 33.0}));
  EXPECT_EQ(chamber.at("peak_at_flat_mm"), json({44.0, 55.0}));
  EXPECT_EQ(chamber.size(), 21u) << "a figure of a chamber is written that no test names";
}

TEST(SummaryJson, EveryFigureOfTheDeviceStandsUnderItsOwnName) {
  const json all = full_json();
  expect_figures(all.at("whole"),
                 {{"peak_1cm2_kPa", 9.3}, {"share_of_girth", 0.43}, {"total_force_N", 14.7}});
  EXPECT_EQ(all.at("whole").at("peak_part"), "seam");
  EXPECT_EQ(all.at("whole").at("peak_at_mm"), json({100.0, 200.0, 300.0}));
  expect_figures(all.at("inlets").at(0),
                 {{"gauge_kPa", 8.2}, {"volume_mL", 27.5}, {"highest_relief_kPa", 4.6}});
  expect_figures(all, {{"model_factor", 1.7}});
  expect_figures(all.at("seams").at(0), {{"largest_N_per_mm", 0.81},
                                         {"mean_N_per_mm", 0.52},
                                         {"largest_over_mean", 1.56},
                                         {"length_mm", 25.1}});
  EXPECT_EQ(all.at("seams").at(0).at("at_flat_mm"), json({61.0, 72.0}));
  EXPECT_EQ(all.at("seams").at(0).at("sheet"), "outer");
  EXPECT_EQ(all.at("seams").at(0).at("inset"), true);
  expect_figures(all.at("audit"), {{"lateral_balance", 0.0011},
                                   {"axial_balance", 0.0022},
                                   {"push_along_axis_N", -1.7},
                                   {"cut_balance", 0.0044},
                                   {"cuts", 5},
                                   {"largest_residual_N", 0.00066}});
}

TEST(SummaryJson, EveryFigureOfTimeMeshAndWrapStandsUnderItsOwnName) {
  const json all = full_json();
  expect_figures(all.at("exposure"), {{"session_min", 42.0},
                                      {"share_of_allowed", 0.47},
                                      {"product_kPa_min", 188.0},
                                      {"allowed_kPa_min", 400.0},
                                      {"longest_hold_s", 95.0},
                                      {"duty", 0.61},
                                      {"still_pressed_when_vented_kPa", 2.2},
                                      {"first_check_min", 9.0},
                                      {"rest_after_min", 35.0}});
  EXPECT_EQ(all.at("exposure").at("broken"), json({"pressed for too long"}));
  expect_figures(all.at("mesh"),
                 {{"edge_mm", 4.5}, {"seam_edge_mm", 1.5}, {"nodes", 1234}, {"triangles", 2345}});
  expect_figures(
      all.at("mesh").at("error"),
      {{"coarse_edge_mm", 6.4}, {"worst_mean_difference_kPa", -0.12}, {"peak_difference_kPa", 0.34}});
  expect_figures(all.at("comparisons").at(0).at("chambers").at(0).at("mean"),
                 {{"shown_kPa", 4.2}, {"other_kPa", 3.9}, {"shown_minus_other_kPa", 0.3}});
  expect_figures(all.at("comparisons").at(0).at("chambers").at(0).at("peak_1cm2"),
                 {{"shown_kPa", 5.3}, {"other_kPa", 4.8}, {"shown_minus_other_kPa", 0.5}});
  expect_figures(all.at("comparisons").at(0).at("peak_anywhere"), {{"shown_kPa", 9.3}, {"other_kPa", 8.1}});
  expect_figures(all.at("wrap").at("closure"), {{"girth_at_anchor_mm", 251.0},
                                                {"closing_length_mm", 246.0},
                                                {"closing_length_needed_mm", 253.0},
                                                {"gap_distal_mm", 5.5},
                                                {"gap_proximal_mm", 7.25}});
  expect_figures(all.at("wrap").at("quality").at(0),
                 {{"stretch_min", 0.91}, {"stretch_max", 1.08}, {"shear_max_deg", 4.3}});
}

TEST(SummaryJson, CarriesEveryFindingAndHazardWithItsSeverity) {
  const json all = full_json();
  ASSERT_EQ(all.at("findings").size(), 2u);
  EXPECT_EQ(all["findings"][0]["severity"], "above limit");
  EXPECT_EQ(all["findings"][0]["where"], "pad");
  EXPECT_EQ(all["findings"][0]["sentence"], "The pad presses.");
  EXPECT_DOUBLE_EQ(all["findings"][0]["share_of_limit"].get<double>(), 2.2526);
  EXPECT_EQ(all["findings"][1]["severity"], "warning");
  ASSERT_EQ(all.at("hazards").size(), 2u);
  EXPECT_EQ(all["hazards"][1]["hazard"], "A valve or pump that sticks");
  EXPECT_EQ(all["hazards"][1]["severity"], "above limit");
  EXPECT_EQ(all["hazards"][1]["sentence"], "It opens too late.");
  EXPECT_EQ(all["hazards"][1]["control"], "Fit another.");
}

TEST(SummaryJson, HoldsEveryFieldOfAFinding) {
  const json all = full_json();
  const json card = all.at("findings").at(0);
  EXPECT_EQ(card.at("place"), "pad over ulna");
  EXPECT_EQ(card.at("cause"), "bone or nerve");
  EXPECT_EQ(card.at("action"), "Move it.");
  EXPECT_EQ(card.at("source_key"), "bony, sustained");
  EXPECT_EQ(card.at("at_mm"), json({11.0, 22.0, 33.0}));
  EXPECT_EQ(card.at("measured"), json({{"amount", "pressure"},
                                       {"unit", "kPa"},
                                       {"predicted", 5.3},
                                       {"with_factor", 9.01},
                                       {"limit", 4.0},
                                       {"row", "over bone"}}));
  const json other = all["findings"].at(1);
  EXPECT_EQ(other.at("place"), "other");
  for (const char* key : {"measured", "cause", "action", "source_key", "at_mm"})
    EXPECT_TRUE(other.at(key).is_null()) << key;
}

TEST(SummaryJson, SaysWhoWearsItWhereAndWhoAnswersForIt) {
  const json all = full_json(), place = all.at("place"), wearers = all.at("wearers");
  EXPECT_EQ(place.at("part"), "forearm");
  EXPECT_EQ(place.at("side"), "left");
  EXPECT_EQ(place.at("sites_known"), true);
  EXPECT_EQ(place.at("sites_confirmed").at("why"), "felt along the bone");
  EXPECT_EQ(place.at("cleared_by"),
            json({{"name", "B. Example"}, {"role", "physiotherapist"}, {"date", "2026-11-20"}}));
  EXPECT_EQ(place.at("bony_sites").at(0).at("kind"), "nerve");
  EXPECT_EQ(wearers.at("number"), 7);
  EXPECT_EQ(wearers.at("posture"), "sitting");
  EXPECT_DOUBLE_EQ(wearers.at("above_heart_cm").get<double>(), -12.0);
  EXPECT_EQ(wearers.at("missing"), 0);
  EXPECT_EQ(all.at("limits").at("tables_differ").size(), 1u);
  EXPECT_EQ(all.at("limits").at("override"), "Overridden.");
  EXPECT_EQ(json::parse(summary_json(full_summary())).at("wearers").at("missing"), 6);
}

// The schema describes what is written and nothing else.
TEST(SummaryJson, FitsItsSchemaKeysBothWays) {
  const json schema = test::summary_schema();
  test::expect_fits(schema, full_json(), "");
  test::expect_fits(schema, json::parse(summary_json(full_summary())), "");
  std::vector<std::string> unwritten;
  test::gather_unwritten(schema, full_json(), "", unwritten);
  EXPECT_EQ(unwritten, std::vector<std::string>{});
}

TEST(SummaryJson, AValueJustAboveItsLimitStandsAboveItHereToo) {
  Summary summary = whole_summary();
  summary.findings[0].measured->with_factor = 4000.0 * (1.0 + 1e-6);
  const json measured = json::parse(summary_json(summary)).at("findings").at(0).at("measured");
  EXPECT_GT(measured.at("with_factor").get<double>(), measured.at("limit").get<double>());
}

TEST(SummaryJson, SaysThatSomethingLiesAboveALimitForAStopToo) {
  Summary summary = full_summary();
  for (const auto& [worst, above, status] : {std::tuple{Severity::kNote, false, "done"},
                                             {Severity::kWarn, false, "done"},
                                             {Severity::kAboveLimit, true, "done, above a limit"},
                                             {Severity::kStop, true, "stopped: not to be worn"}}) {
    summary.worst = worst;
    const json all = json::parse(summary_json(summary));
    EXPECT_EQ(all.at("above_limit"), above) << status;
    EXPECT_EQ(all.at("status"), status);
  }
}

TEST(SummaryJson, NamesEveryoneWhoMustNotTakePartAndEveryStopSign) {
  const json cautions = full_json().at("cautions");
  EXPECT_EQ(missing_from(cautions.at("not_for").dump(), named_exclusions()), std::vector<std::string>{});
  EXPECT_EQ(missing_from(cautions.at("stop_signs").dump(), named_stop_signs()), std::vector<std::string>{});
  EXPECT_NE(cautions.at("standing").dump().find("not been calibrated"), std::string::npos);
  EXPECT_NE(cautions.at("ask").dump().find("Ask a clinician"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
