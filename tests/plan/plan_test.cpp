#include "model/plan/plan.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <string>

#include "model/core/file.hpp"
#include "model/layout/layout_check.hpp"

namespace wrapgauge {
namespace {

const std::filesystem::path kResources = WRAPGAUGE_SOURCE_DIR "/resources";

// A folder of this test's own, removed at its end.
class PlanFile : public testing::Test {
 protected:
  void SetUp() override { std::filesystem::create_directories(folder_); }
  void TearDown() override { std::filesystem::remove_all(folder_); }
  std::filesystem::path folder_ =
      std::filesystem::path(testing::TempDir()) / ("plan-" + std::to_string(::getpid()));
};

std::string text_of(const std::filesystem::path& file) {
  const auto bytes = read_file(file);
  return bytes ? *bytes : "";
}

TEST_F(PlanFile, ReadsBothDemoPlansWithoutAProblem) {
  for (const char* name : {"forearm-cuff.json", "calf-sleeve.json"}) {
    const auto plan = read_plan(kResources / "plans" / name);
    ASSERT_TRUE(plan.ok()) << plan.problem().message;
    EXPECT_TRUE(check_layout(plan->layout).empty()) << check_layout(plan->layout)[0].message;
    EXPECT_EQ(plan->inflation.size(), plan->layout.inlets.size());
  }
}

TEST_F(PlanFile, DemoPlansAskForPressureOnTheArmAndForVolumeOnTheCalf) {
  const auto arm = read_plan(kResources / "plans/forearm-cuff.json");
  const auto calf = read_plan(kResources / "plans/calf-sleeve.json");
  ASSERT_TRUE(arm.ok() && calf.ok());
  EXPECT_EQ(arm->layout.chambers.size(), 4u);
  EXPECT_EQ(calf->layout.chambers.size(), 2u);
  for (const auto& program : arm->inflation) EXPECT_TRUE(std::holds_alternative<Pressure>(program.target));
  for (const auto& program : calf->inflation) EXPECT_TRUE(std::holds_alternative<Volume>(program.target));
}

TEST_F(PlanFile, ALayoutFromADrawingIsReadAndItsReferenceKept) {
  const std::string drawings = WRAPGAUGE_SOURCE_DIR "/tests/data/drawing/";
  auto plan = read_plan(kResources / "plans/forearm-cuff.json");
  ASSERT_TRUE(plan.ok());
  Plan changed = *plan;
  DrawingMap map;
  map.rules = {*rule_from_text("cells=chamber")};
  map.details.skin_sheet = Sheet{"00-30", 1.5 * mm};
  map.details.outer_sheet = Sheet{"A10", 2.5 * mm};
  changed.layout_file.reset();
  changed.layout_drawing = DrawnLayout{drawings + "cuff.svg", map};
  InletProgram pump;
  pump.inlet = "pump";
  pump.target = 2.0 * kPa;
  changed.inflation = {pump};
  ASSERT_TRUE(write_plan(changed, folder_ / "drawn.json").ok());
  const auto read = read_plan(folder_ / "drawn.json");
  ASSERT_TRUE(read.ok()) << read.problem().message;
  EXPECT_EQ(read->layout.chambers.size(), 2u);
  ASSERT_TRUE(read->layout_drawing);
  ASSERT_TRUE(write_plan(*read, folder_ / "again.json").ok());
  EXPECT_EQ(text_of(folder_ / "again.json"), text_of(folder_ / "drawn.json"));
}

TEST_F(PlanFile, WrittenAndReadAgainIsTheSamePlan) {
  for (const char* name : {"forearm-cuff.json", "calf-sleeve.json"}) {
    auto plan = read_plan(kResources / "plans" / name);
    ASSERT_TRUE(plan.ok());
    Plan changed = *plan;
    const std::vector<MendStep> steps{DropTable{}, FillHoles{12.5 * mm},          Smooth{3},
                                      PoseLimb{},  CutLimb{10.0 * mm, 99.9 * mm}, MirrorLimb{}};
    changed.body = BodyFile{"bodies/arm.stl", LengthUnit::kInch, Vec3(0.6, 0.0, 0.8), {}, {}, steps};
    changed.landmarks = {{"belly", Vec3(0.04, 0.0, 0.1)}};
    changed.regions = {
        {"soft", NearPoint{"belly", Vec3::Zero(), 30.0 * mm}, false, 40.0 * mm, 0.8, 12.0 * mm},
        {"wound", BetweenStations{10.0 * mm, 30.0 * mm, 5.0, 90.0}, true, {}, {}, Length()}};
    changed.posture = Posture::kTense;
    changed.bony_sites = {{"ulnar styloid", Vec3(0.0123, -0.0456, 0.0789), 12.5 * mm, 3.1 * mm},
                          {"median nerve", Vec3(0.0, 0.02, 0.01), 15.0 * mm, 12.0 * mm, SiteKind::kNerve,
                           "from memory", "No closing edge here."}};
    changed.tissue_stiffness_factor = 1.7;
    changed.tissue_poisson = 0.3;
    changed.tissue_model = TissueModel::kCoupled;
    changed.compare_wrinkled = true;
    changed.tissue_depth_mm = {20.5, 21.25};
    changed.placement.anchor = AnchorAtPoint{Vec3(0.1, 0.2, 1.0 / 3.0)};
    changed.mesh_seam_edge = 1.5 * mm;
    changed.layout_file.reset();
    changed.limits_file = "ours.json";
    changed.supply = {Syringe{60.0 * mL, 28.5 * mm, 45.0 * newton},
                      40.0 * kPa,
                      Tubing{0.8 * metre, 2.0 * mm},
                      4.5 * kPa,
                      {{"valve", 2.5 * kPa}},
                      3.0 * mL};
    changed.filling = {Medium::kWater, 38.5, 12.5 * minute};
    changed.limits_override_reason = "why";
    changed.session = Session{7.5 * minute, 31.0 * second, 62.0 * second, 1.5 * second};
    changed.inflation[0].steps = {{1.0, 1.0 * second, 2.0 * second}, {0.25, Time(), 3.0 * second}};
    changed.folder = folder_;
    const auto first = folder_ / "first.json", second = folder_ / "second.json";
    ASSERT_TRUE(write_plan(changed, first).ok());
    const auto again = read_plan(first);
    ASSERT_TRUE(again.ok()) << again.problem().message;
    ASSERT_TRUE(write_plan(*again, second).ok());
    EXPECT_EQ(text_of(first), text_of(second));
    EXPECT_EQ(std::get<BodyFile>(again->body).unit, LengthUnit::kInch);
    EXPECT_TRUE(std::get<BodyFile>(again->body).axis_direction.value().isApprox(Vec3(0.6, 0.0, 0.8)));
    EXPECT_TRUE(again->bony_sites.at(0).point_m.isApprox(changed.bony_sites[0].point_m));
    ASSERT_EQ(std::get<BodyFile>(again->body).mend.size(), steps.size());
    EXPECT_DOUBLE_EQ(std::get<FillHoles>(std::get<BodyFile>(again->body).mend[1]).up_to / mm, 12.5);
    ASSERT_EQ(again->regions.size(), 2u);
    EXPECT_TRUE(std::get<NearPoint>(again->regions[0].place).point_m.isApprox(Vec3(0.04, 0.0, 0.1)));
    EXPECT_TRUE(again->regions[1].no_go);
    EXPECT_EQ(again->posture, Posture::kTense);
    ASSERT_EQ(again->bony_sites.size(), 2u);
    EXPECT_EQ(again->bony_sites[0].kind, SiteKind::kBone);
    EXPECT_EQ(again->bony_sites.at(1).kind, SiteKind::kNerve);
    EXPECT_EQ(again->bony_sites[1].status, "from memory");
    EXPECT_EQ(again->bony_sites[1].words, "No closing edge here.");
    ASSERT_TRUE(again->supply.syringe && again->supply.tubing && again->supply.pump_stall);
    EXPECT_NEAR(again->supply.syringe->bore / mm, 28.5, 1e-9);
    EXPECT_NEAR(again->supply.syringe->thumb / newton, 45.0, 1e-9);
    EXPECT_NEAR(again->supply.tubing->length / mm, 800.0, 1e-9);
    EXPECT_NEAR(*again->supply.pump_stall / kPa, 40.0, 1e-9);
    ASSERT_TRUE(again->supply.relief) << "the relief valve was lost";
    EXPECT_NEAR(*again->supply.relief / kPa, 4.5, 1e-9);
    EXPECT_NEAR(again->supply.dead_volume / mL, 3.0, 1e-9);
    EXPECT_EQ(again->filling.medium, Medium::kWater);
    EXPECT_NEAR(again->filling.celsius.value(), 38.5, 1e-9);
    EXPECT_NEAR(again->filling.contact.value() / minute, 12.5, 1e-9);
    ASSERT_TRUE(again->session);
    EXPECT_NEAR(again->session->length / minute, 7.5, 1e-9);
    EXPECT_NEAR(again->session->hold.value().si(), 31.0, 1e-9);
    EXPECT_NEAR(again->session->off.value().si(), 62.0, 1e-9);
    EXPECT_NEAR(again->session->ramp.si(), 1.5, 1e-9);
    ASSERT_EQ(again->inflation.at(0).steps.size(), 2u);
    EXPECT_DOUBLE_EQ(again->inflation[0].steps[1].level, 0.25);
    EXPECT_EQ(again->use, changed.use);
    EXPECT_DOUBLE_EQ(again->friction, changed.friction);
    EXPECT_EQ(again->limits_override_reason, "why");
    EXPECT_EQ(again->tissue_depth_mm, changed.tissue_depth_mm);
    EXPECT_EQ(again->tissue_poisson, changed.tissue_poisson);
    EXPECT_EQ(again->tissue_model, changed.tissue_model);
    EXPECT_EQ(again->compare_wrinkled, changed.compare_wrinkled);
    EXPECT_EQ(again->mesh_seam_edge, changed.mesh_seam_edge);
    EXPECT_NEAR(std::get<AnchorAtPoint>(again->placement.anchor).point_m.z(), 1.0 / 3.0, 1e-9);
    EXPECT_EQ(again->layout.chambers.size(), plan->layout.chambers.size());
    EXPECT_NEAR(signed_area_m2(again->layout.chambers[0].boundary_m),
                signed_area_m2(plan->layout.chambers[0].boundary_m),
                1e-10);  // coordinates are kept to 1e-9 m
  }
}

TEST_F(PlanFile, KeepsThePersonOfAForm) {
  const auto read = read_plan(kResources / "plans/forearm-cuff.json");
  ASSERT_TRUE(read.ok());
  Plan plan = *read;
  std::get<BodyForm>(plan.body).person = {Sex::kFemale, 7.5, BodySide::kLeft};
  ASSERT_TRUE(write_plan(plan, folder_ / "her.json").ok());
  const auto again = read_plan(folder_ / "her.json");
  ASSERT_TRUE(again.ok()) << again.problem().message;
  const Person& person = std::get<BodyForm>(again->body).person;
  EXPECT_EQ(person.sex, Sex::kFemale);
  EXPECT_EQ(person.percentile, 7.5);
  EXPECT_EQ(person.side, BodySide::kLeft);
}

TEST_F(PlanFile, WrittenElsewhereStillFindsItsLayout) {
  const auto plan = read_plan(kResources / "plans/forearm-cuff.json");
  ASSERT_TRUE(plan.ok());
  const auto copy = folder_ / "copy.json";
  ASSERT_TRUE(write_plan(*plan, copy).ok());
  const auto again = read_plan(copy);
  ASSERT_TRUE(again.ok()) << again.problem().message;
  EXPECT_EQ(again->layout.chambers.size(), 4u);
  EXPECT_TRUE(again->layout_file);
}

TEST_F(PlanFile, ThatIsMissingTruncatedOrNoPlanIsAProblem) {
  EXPECT_NE(read_plan(folder_ / "none.json").problem().message.find("none.json"), std::string::npos);
  const std::string whole = text_of(kResources / "plans/forearm-cuff.json");
  for (std::size_t size : {std::size_t{0}, std::size_t{1}, whole.size() / 2, whole.size() - 3}) {
    ASSERT_TRUE(write_file_atomically(folder_ / "cut.json", whole.substr(0, size)).ok());
    EXPECT_FALSE(read_plan(folder_ / "cut.json").ok()) << size;
  }
  EXPECT_NE(read_plan(kResources / "limits.json").problem().message.find("not the kind of file"),
            std::string::npos);
}

TEST_F(PlanFile, ThatCannotBeWrittenLeavesTheOldOneAlone) {
  const auto plan = read_plan(kResources / "plans/forearm-cuff.json");
  ASSERT_TRUE(plan.ok());
  EXPECT_FALSE(write_plan(*plan, folder_ / "no-such-folder" / "plan.json").ok());
  EXPECT_TRUE(std::filesystem::is_empty(folder_));
}

}  // namespace
}  // namespace wrapgauge
