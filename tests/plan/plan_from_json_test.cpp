#include "model/plan/plan_from_json.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/plan/whole_plan.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

std::string message(const json& value) {
  const auto plan = plan_from_json(value, "", "p.json");
  return plan ? "" : plan.problem().message;
}

TEST(PlanFromJson, TakesEveryFieldOver) {
  const auto plan = plan_from_json(whole_plan(), "folder", "p.json");
  ASSERT_TRUE(plan.ok()) << plan.problem().message;
  const auto& body = std::get<BodyFile>(plan->body);
  EXPECT_EQ(body.file, "arm.stl");
  EXPECT_EQ(body.unit, LengthUnit::kCentimetre);
  EXPECT_EQ(body.axis_direction.value(), Vec3::UnitZ());
  ASSERT_EQ(plan->bony_sites.size(), 1u);
  EXPECT_TRUE(plan->bony_sites[0].point_m.isApprox(Vec3(0.001, 0.002, 0.003)));
  EXPECT_DOUBLE_EQ(plan->bony_sites[0].radius / mm, 12.0);
  EXPECT_EQ(plan->bony_sites[0].kind, SiteKind::kNerve);
  EXPECT_EQ(plan->bony_sites[0].status, "from memory");
  EXPECT_EQ(plan->bony_sites[0].words, "Keep closing edges away.");
  EXPECT_EQ(plan->tissue_site, "forearm relaxed");
  EXPECT_EQ(plan->posture, Posture::kTense);
  EXPECT_EQ(plan->tissue_stiffness_factor, 2.0);
  EXPECT_EQ(plan->tissue_poisson, 0.45);
  EXPECT_EQ(plan->tissue_model, TissueModel::kCoupled);
  EXPECT_TRUE(plan->compare_wrinkled);
  EXPECT_EQ(plan->layout.chambers.at(0).name, "middle");
  EXPECT_FALSE(plan->layout_file);
  EXPECT_TRUE(std::get<AnchorAtPoint>(plan->placement.anchor).point_m.isApprox(Vec3(0.01, 0.02, 0.03)));
  EXPECT_TRUE(plan->placement.layout_point_m.value().isApprox(Vec2(0.03, 0.03)));
  EXPECT_EQ(plan->placement.turn_deg, 90.0);
  EXPECT_EQ(plan->friction, 0.3);
  EXPECT_NEAR(std::get<Pressure>(plan->inflation.at(0).target) / Pa, 30 * 133.322, 1e-9);
  ASSERT_EQ(plan->inflation[0].steps.size(), 2u);
  EXPECT_DOUBLE_EQ(plan->inflation[0].steps[0].ramp / second, 1.0);
  EXPECT_DOUBLE_EQ(plan->inflation[0].steps[1].level, 0.25);
  EXPECT_DOUBLE_EQ(plan->inflation[0].steps[1].hold / second, 6.0);
  EXPECT_EQ(plan->use, UsePattern::kPulse);
  EXPECT_EQ(plan->limits_file.value(), "ours.json");
  EXPECT_EQ(plan->limits_override_reason.value(), "why");
  ASSERT_TRUE(plan->session);
  EXPECT_DOUBLE_EQ(plan->session->length / minute, 12.0);
  EXPECT_DOUBLE_EQ(plan->session->hold.value() / second, 2.0);
  EXPECT_DOUBLE_EQ(plan->session->off.value() / second, 6.0);
  EXPECT_DOUBLE_EQ(plan->session->ramp / second, 0.5);
  EXPECT_DOUBLE_EQ(plan->supply.syringe.value().bore / mm, 28.0);
  EXPECT_DOUBLE_EQ(plan->supply.syringe->thumb / newton, 50.0);
  EXPECT_DOUBLE_EQ(plan->supply.pump_stall.value() / kPa, 40.0);
  EXPECT_DOUBLE_EQ(plan->supply.tubing.value().length / mm, 800.0);
  EXPECT_DOUBLE_EQ(plan->supply.relief.value() / kPa, 4.5);
  EXPECT_DOUBLE_EQ(plan->supply.dead_volume / mL, 3.0);
  EXPECT_EQ(plan->filling.medium, Medium::kGel);
  EXPECT_DOUBLE_EQ(plan->filling.celsius.value(), 38.0);
  EXPECT_DOUBLE_EQ(plan->filling.contact.value() / minute, 12.0);
  EXPECT_DOUBLE_EQ(plan->mesh_edge / mm, 5.0);
  EXPECT_DOUBLE_EQ(plan->mesh_seam_edge.value() / mm, 1.5);
  EXPECT_DOUBLE_EQ(plan->mesh_seam_band.value() / mm, 4.0);
  EXPECT_FALSE(plan->solver.bending);
  EXPECT_TRUE(plan->solver.relaxed_compression);
  EXPECT_EQ(plan->solver.steps, 3);
  EXPECT_EQ(plan->folder, "folder");
}

TEST(PlanFromJson, TakesTheMendingStepsInTheirOrder) {
  const auto plan = plan_from_json(whole_plan(), "", "p.json");
  ASSERT_TRUE(plan.ok());
  const auto& mend = std::get<BodyFile>(plan->body).mend;
  ASSERT_EQ(mend.size(), 8u);
  EXPECT_DOUBLE_EQ(std::get<DropTable>(mend[0]).tolerance / mm, 2.0);
  EXPECT_EQ(std::get<DropTable>(mend[0]).least_share, 0.3);
  EXPECT_EQ(std::get<DropCrumbs>(mend[1]).below_share, 0.2);
  EXPECT_DOUBLE_EQ(std::get<FillHoles>(mend[2]).up_to / mm, 50.0);
  EXPECT_EQ(std::get<Smooth>(mend[3]).passes, 7);
  EXPECT_EQ(std::get<PoseLimb>(mend[4]).distal, DistalEnd::kThick);
  EXPECT_EQ(std::get<PoseLimb>(mend[4]).turn_deg, 30.0);
  EXPECT_DOUBLE_EQ(std::get<CutLimb>(mend[5]).to / mm, 200.0);
  EXPECT_TRUE(std::holds_alternative<MirrorLimb>(mend[6]));
  EXPECT_DOUBLE_EQ(std::get<Decimate>(mend[7]).edge / mm, 5.0);
}

TEST(PlanFromJson, PlacesRegionsByLandmarkPointOrStations) {
  const auto plan = plan_from_json(whole_plan(), "", "p.json");
  ASSERT_TRUE(plan.ok());
  ASSERT_EQ(plan->regions.size(), 3u);
  const auto& near = std::get<NearPoint>(plan->regions[0].place);
  EXPECT_TRUE(near.point_m.isApprox(Vec3(0.004, 0.005, 0.006)));
  EXPECT_EQ(near.landmark, "belly");
  EXPECT_DOUBLE_EQ(plan->regions[0].tissue_depth.value() / mm, 40.0);
  EXPECT_DOUBLE_EQ(plan->regions[0].fade / mm, 15.0);
  EXPECT_FALSE(plan->regions[0].no_go);
  EXPECT_TRUE(plan->regions[2].no_go);
  EXPECT_EQ(std::get<BetweenStations>(plan->regions[2].place).to_deg, 390.0);
  ASSERT_EQ(plan->regions[1].by_distance.size(), 2u);
  EXPECT_DOUBLE_EQ(plan->regions[1].by_distance[1].tissue_depth.value() / mm, 20.0);
  EXPECT_EQ(plan->regions[1].by_distance[0].stiffness_factor.value(), 2.0);
  EXPECT_DOUBLE_EQ(std::get<NearPoint>(plan->regions[1].place).radius / mm, 30.0);
  json by_site = whole_plan();
  by_site["regions"][0]["near"] = "styloid";  // a bony site is a landmark too
  const auto other = plan_from_json(by_site, "", "p.json");
  ASSERT_TRUE(other.ok()) << other.problem().message;
  EXPECT_TRUE(std::get<NearPoint>(other->regions[0].place).point_m.isApprox(Vec3(0.001, 0.002, 0.003)));
}

TEST(PlanFromJson, FillsDefaultsOfWhatIsLeftOut) {
  json plan_json = whole_plan();
  for (const char* key :
       {"landmarks", "regions", "bony_sites", "tissue", "friction", "limits", "session", "mesh", "solver"})
    plan_json.erase(key);
  plan_json["body"] = {{"form", "forearm"}, {"parameters", {{"length_mm", 250}}}};
  plan_json["wear"] = {{"anchor", {{"station_mm", 150}}}};
  plan_json["inflation"] = {{{"inlet", "pump"}, {"volume_ml", 25}}};
  const auto plan = plan_from_json(plan_json, "", "p.json");
  ASSERT_TRUE(plan.ok()) << plan.problem().message;
  EXPECT_EQ(std::get<BodyForm>(plan->body).parameters.at("length_mm"), 250.0);
  EXPECT_DOUBLE_EQ(std::get<AnchorAtStation>(plan->placement.anchor).station / mm, 150.0);
  EXPECT_FALSE(plan->placement.layout_point_m);
  EXPECT_DOUBLE_EQ(std::get<Volume>(plan->inflation[0].target) / mL, 25.0);
  EXPECT_EQ(plan->friction, 0.5);
  EXPECT_EQ(plan->use, UsePattern::kSustained);
  EXPECT_DOUBLE_EQ(plan->mesh_edge / mm, 4.0);
  EXPECT_FALSE(plan->mesh_seam_edge);
  EXPECT_FALSE(plan->mesh_seam_band);
  EXPECT_EQ(plan->solver.steps, InflationOptions{}.steps);
}

json plan_of_a_form() {
  json plan = whole_plan();
  plan["body"] = {{"form", "forearm"},
                  {"sex", "female"},
                  {"percentile", 5},
                  {"side", "left"},
                  {"part", "forearm"},
                  {"sites_confirmed", whole_plan()["body"]["sites_confirmed"]},
                  {"parameters", json::object()}};
  return plan;
}

TEST(PlanFromJson, TakesThePersonOfAForm) {
  const auto plan = plan_from_json(plan_of_a_form(), "", "p.json");
  ASSERT_TRUE(plan.ok()) << plan.problem().message;
  const Person& person = std::get<BodyForm>(plan->body).person;
  EXPECT_EQ(person.sex, Sex::kFemale);
  EXPECT_EQ(person.percentile, 5.0);
  EXPECT_EQ(person.side, BodySide::kLeft);
  json unsexed = plan_of_a_form();
  unsexed["body"].erase("sex");
  EXPECT_NE(message(unsexed).find("percentile needs a sex"), std::string::npos) << message(unsexed);
  json beyond = plan_of_a_form();
  beyond["body"]["percentile"] = 99.5;
  EXPECT_NE(message(beyond).find("percentile is 99.5"), std::string::npos) << message(beyond);
}

TEST(PlanFromJson, AWordIsGivenInWordsAndByADay) {
  const auto expect = [](const char* pointer, const json& value, const std::string& part) {
    json plan = whole_plan();
    plan[json::json_pointer(pointer)] = value;
    EXPECT_NE(message(plan).find(part), std::string::npos) << message(plan);
  };
  for (const char* key : {"/cleared_by/name", "/cleared_by/role", "/body/sites_confirmed/who",
                          "/body/sites_confirmed/when", "/body/sites_confirmed/why"})
    expect(key, " \t ", "holds nothing but spaces");
  for (const char* day : {"yesterday", "2026-02-30", "2026-2-3", "29-11-2026"})
    expect("/cleared_by/date", day, "write a day as year-month-day");
  for (const char* key : {"name", "role", "date"}) {
    json plan = whole_plan();
    plan["cleared_by"].erase(key);
    EXPECT_NE(message(plan).find(std::string("cleared_by: \"") + key + "\" is missing"), std::string::npos)
        << message(plan);
  }
  expect("/body/part", "tail", "the part 'tail' is not known; it may be finger, hand");
  expect("/bony_sites/0/status", "guessed", "proposed");
}

TEST(PlanFromJson, NamesThePlaceAndWhatToDo) {
  const auto expect = [](const char* pointer, json value, const std::string& part) {
    json plan = whole_plan();
    plan[json::json_pointer(pointer)] = std::move(value);
    EXPECT_NE(message(plan).find(part), std::string::npos) << message(plan);
  };
  expect("/wrapgauge-plan", 2, "wrapgauge-plan must be 1");
  expect("/name", "", "name must be text");
  expect("/colour", 1, "the key \"colour\" is not known");
  expect("/body/colour", 1, "p.json, body: the key \"colour\" is not known");
  expect("/body/form", "forearm", "body: give either a file or a form");
  expect("/body/unit", "feet", "unit is \"feet\"; it must be one of: mm, cm, m, in");
  expect("/body/axis", {0, 0, 0}, "axis has no length");
  expect("/bony_sites/0/radius_mm", 0, "bony_sites 1: radius_mm is 0 mm");
  expect("/bony_sites/0/kind", "muscle", "kind is \"muscle\"; it must be one of: bone, nerve");
  expect("/bony_sites/0/status", "sure", "status");
  expect("/bony_sites/0/point_mm", {1, 2}, "point_mm must be a list of 3 numbers");
  expect("/body/repair/0/step", "polish",
         "body, repair 1: step is \"polish\"; it must be one of: drop table");
  expect("/body/repair/3/passes", 0, "repair 4: passes is 0");
  expect("/body/repair/3/edge_mm", 4, "repair 4: the key \"edge_mm\" is not known");
  expect("/body/repair/5/to_mm", 10, "repair 6: to_mm must be larger than from_mm");
  expect("/regions/0/near", "knee", "near names the landmark 'knee'; the plan has 'belly', 'styloid'");
  expect("/regions/0/point_mm", {1, 2, 3}, "regions 1: give exactly one of near, point_mm and stations_mm");
  expect("/regions/1/by_distance/1/at_mm", 0, "regions 2, by_distance 2: at_mm must grow");
  expect("/regions/1/by_distance/0", {{"at_mm", 0}, {"tissue_depth_mm", 4}},
         "all distances must name the same");
  expect("/regions/1/by_distance", json::array(), "by_distance needs two distances");
  expect("/regions/1/by_distance/0", {{"at_mm", 0}}, "by_distance 1: says nothing");
  expect("/regions/1/radius_mm", 20, "give radius_mm or by_distance, not both");
  expect("/regions/1/tissue_depth_mm", 20, "give by_distance, or tissue_depth_mm");
  expect("/regions/2/by_distance", whole_plan()["regions"][1]["by_distance"], "not between stations");
  expect("/regions/2/stations_mm", {40, 10}, "stations_mm must grow");
  expect("/regions/2/no_go", false, "regions 3: says nothing");
  expect("/tissue/posture", "asleep", "posture is \"asleep\"; it must be one of: relaxed, tense");
  expect("/tissue/stiffness_factor", -1, "stiffness_factor is -1");
  expect("/tissue/poisson", 0.5, "poisson is 0.5");
  expect("/tissue/model", "spongy", "model");
  expect("/tissue/depth_mm", {20, -3}, "depth_mm number 2 is -3 mm");
  expect("/layout", {{"file", "no-such-layout.json"}}, "no-such-layout.json");
  expect("/layout/skin_sheet/thickness", "thick", "p.json, layout");
  expect("/wear/anchor/station_mm", 100, "wear, anchor: give either point_mm or station_mm");
  expect("/wear/turn_deg", 1000, "turn_deg is 1000 degrees");
  expect("/friction", -0.1, "friction is -0.1");
  expect("/inflation/0/pressure_kpa", 4, "inflation 1: give exactly one of");
  expect("/inflation/0/inlet", "pomp", "the inlet 'pomp', which the layout does not have; it has 'pump'");
  expect("/inflation/0/pressure_mmhg", 1e9,
         "pressure_mmhg is 1e+09 mmHg; it must lie between 0 and 750 mmHg");
  expect("/limits/use", "all day", "use is \"all day\"");
  expect("/limits/override_reason", "  \t", "override_reason");
  expect("/supply/tubing/bore_mm", 0, "supply, tubing: bore_mm is 0 mm");
  expect("/supply/pomp", 1, "supply: the key \"pomp\" is not known");
  expect("/filling/medium", "beer", "medium is \"beer\"");
  expect("/session/minutes", 0, "session: minutes is 0 min");
  expect("/session", {{"minutes", 5}, {"off_s", 5}}, "off_s stands without hold_s");
  expect("/inflation/0/steps/0/level", 2, "inflation 1, steps 1: level is 2");
  expect("/inflation/0/steps/0/level", 0.5, "programme of inlet 'pump' reaches level 0.5 at most");
  expect("/mesh/edge_mm", 0.01, "mesh: edge_mm is 0.01 mm");
  expect("/mesh/seam_edge_mm", 6, "mesh: seam_edge_mm is 6 mm, longer than edge_mm, 5 mm");
  expect("/mesh", {{"seam_band_mm", 3}}, "give seam_edge_mm too");
  expect("/solver/steps", 0, "solver: steps is 0");
  expect("/solver/steps", 2.5, "steps is 2.5; give a whole number");
  expect("/solver/bending", 1, "bending must be true or false");
}

TEST(PlanFromJson, SaysWhichPartIsMissing) {
  for (const char* key : {"name", "body", "layout", "wear", "tissue"}) {
    json plan = whole_plan();
    plan.erase(key);
    EXPECT_EQ(message(plan), std::string("p.json: \"") + key + "\" is missing.");
  }
  json plan = whole_plan();
  plan["tissue"].erase("site");
  EXPECT_NE(message(plan).find("a body from a file needs one"), std::string::npos);
}

TEST(PlanFromJson, RefusesAnInletNamedTwice) {
  json plan = whole_plan();
  plan["inflation"].push_back(plan["inflation"][0]);
  EXPECT_NE(message(plan).find("'pump' twice"), std::string::npos) << message(plan);
}

// A key the schema describes and the reader does not know, or the other way round, shows here.
TEST(PlanFromJson, KnowsTheKeysOfTheSchemaAndNoOthers) {
  std::ifstream in(WRAPGAUGE_SOURCE_DIR "/resources/plan.schema.json");
  const json schema = json::parse(in), plan = whole_plan();
  const auto expect_keys = [](const json& described, const json& used) {
    for (const auto& item : described["properties"].items())
      EXPECT_TRUE(used.contains(item.key())) << item.key();
    for (const auto& item : used.items())
      EXPECT_TRUE(described["properties"].contains(item.key())) << item.key();
  };
  expect_keys(schema, plan);
  for (const char* part : {"wear", "limits", "mesh", "solver"})
    expect_keys(schema["properties"][part], plan[part]);
  expect_keys(schema["properties"]["body"]["oneOf"][0], plan["body"]);
  expect_keys(schema["properties"]["body"]["oneOf"][1], plan_of_a_form()["body"]);
  expect_keys(schema["properties"]["bony_sites"]["items"], plan["bony_sites"][0]);
  expect_keys(schema["properties"]["landmarks"]["items"], plan["landmarks"][0]);
  json region = plan["regions"][0];
  for (const json& other : plan["regions"]) region.update(other);
  expect_keys(schema["properties"]["regions"]["items"], region);
  const json& steps = schema["properties"]["body"]["oneOf"][0]["properties"]["repair"]["items"]["oneOf"];
  ASSERT_EQ(steps.size(), plan["body"]["repair"].size());
  for (const json& step : plan["body"]["repair"])
    for (const json& described : steps)
      if (described["properties"]["step"]["const"] == step["step"]) expect_keys(described, step);
  json tissue = plan["tissue"];
  tissue["depth_mm"] = {20};
  expect_keys(schema["properties"]["tissue"], tissue);
  for (const char* key : {"wrapgauge-plan", "name", "body", "layout", "wear"}) {
    const json& required = schema["required"];
    EXPECT_NE(std::find(required.begin(), required.end(), key), required.end()) << key;
  }
}

// Every part replaced by every kind of value must end in a sentence or a plan, never in a crash.
TEST(PlanFromJson, SurvivesEveryPartBeingOfAnotherKind) {
  const json whole = whole_plan().flatten();
  for (const auto& item : whole.items()) {
    for (const json& odd : {json(), json(true), json(-1), json(1e300), json("x"), json::array(),
                            json::object(), json::array({json::array()})}) {
      json plan = whole_plan();
      plan[json::json_pointer(item.key())] = odd;
      const auto read = plan_from_json(plan, "", "p.json");
      if (!read) {
        EXPECT_GT(read.problem().message.size(), 10u) << item.key();
      }
    }
  }
  for (const json& odd : {json(), json(1), json("x"), json::array()}) EXPECT_FALSE(message(odd).empty());
}

}  // namespace
}  // namespace wrapgauge
