#include "model/limits/skin_exposure.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// A square pad on a soft place, evenly pressed: `closed_kpa` while vented and `full_kpa` at 4 kPa inside.
struct ExposureCase {
  LimitSet limits;
  LimitInputs inputs;
  hand_made::Worn worn;
  ContactFigures figures;

  std::optional<SkinExposure> exposed() const {
    const ContactMap map = contact_map(worn.setup, worn.path, worn.path.states.back());
    return skin_exposure(limits, inputs, worn.setup, worn.path, map, figures);
  }
};

ExposureCase pad(double closed_kpa, double full_kpa) {
  ExposureCase c;
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (limits) c.limits = *limits;
  c.inputs.part = BodyPart::kForearm;
  c.inputs.sites_known = true;
  c.worn = hand_made::flat_pad(6, 0.04);
  EquilibriumState closed = c.worn.path.states[0], full = closed;
  closed.contact_pressure_pa.setConstant(1e3 * closed_kpa);
  full.contact_pressure_pa.setConstant(1e3 * full_kpa);
  full.group_pressure_pa[0] = 4e3;
  c.worn.path.states = {closed, full};
  ChamberFigures chamber;
  chamber.chamber = "middle";
  chamber.contact_area = 16.0 * cm2;
  c.figures.chambers = {chamber};
  c.inputs.use = UsePattern::kShortHold;
  c.inputs.targets = {4.0 * kPa};
  c.inputs.session = Session{9.0 * minute, 60.0 * second, 120.0 * second, Time()};
  c.inputs.programme = {session_steps(*c.inputs.session)};
  return c;
}

// Model factor 1.5. On: 3 min at 1.5 x 2 = 3 kPa; vented: 6 min at 1.5 x 0.4 = 0.6 kPa. 9 + 3.6 = 12.6 kPa
// min of 5.3 kPa x 10 min / 3 = 17.67.
TEST(SkinExposure, OfAnEvenlyPressedPadIsWhatTheHandSums) {
  const auto exposed = pad(0.4, 2.0).exposed();
  ASSERT_TRUE(exposed);
  EXPECT_NEAR(exposed->worst.product / kPa_min, 12.6, 1e-6);
  EXPECT_NEAR(exposed->worst_share, 12.6 / (53.0 / 3.0), 1e-6);
  EXPECT_NEAR(exposed->product_pa_s.minCoeff() / 6e4, 12.6, 1e-6);
  EXPECT_EQ(english(exposed->worst_part), "chamber 'middle'");
  EXPECT_NEAR(exposed->still_pressed / kPa, 0.6, 1e-9);
  EXPECT_TRUE(exposed->broken.empty());
  // Half of 17.67 is reached in the third round: 8.83 = 2 x 4.2 + 3 t, at 6 min + t.
  EXPECT_NEAR(exposed->first_check / minute, 6.0 + (53.0 / 6.0 - 8.4) / 3.0, 1e-6);
  EXPECT_NEAR(exposed->rest_after / minute, 30.0, 1e-9);
}

// Level 0.5 lies half way between the recorded states: 1.5 x (0.4 + 2.0) / 2 = 1.8 kPa.
TEST(SkinExposure, ReadsPressureAtALevelOffTheLoadPath) {
  ExposureCase c = pad(0.4, 2.0);
  c.inputs.programme = {{{1.0, Time(), 60.0 * second}, {0.5, Time(), 120.0 * second}}};
  EXPECT_NEAR(c.exposed().value().worst.product / kPa_min, 9.0 + 6.0 * 1.8, 1e-6);
}

// Half of the allowed 17.67 kPa min at 6 kPa after 8.83 / 6 = 1.47 min of being on, in the second round: 180
// + 28 s.
TEST(SkinExposure, AsksForTheFirstCheckWhenHalfIsUsed) {
  const auto exposed = pad(0.0, 4.0).exposed();
  ASSERT_TRUE(exposed);
  EXPECT_NEAR(exposed->first_check / second, 180.0 + 60.0 * (53.0 / 36.0 - 1.0), 0.01);
}

TEST(SkinExposure, FindsThatAClosedDeviceNeverLetsGo) {
  const ExposureCase c = pad(1.0, 2.0);
  const auto exposed = c.exposed();
  ASSERT_TRUE(exposed);
  const auto all = exposure_findings(c.limits, *exposed);
  const auto has = [&](Severity severity, const std::string& part) {
    return std::any_of(all.begin(), all.end(), [&](const Finding& finding) {
      return finding.severity == severity && english(finding.sentence).find(part) != std::string::npos;
    });
  };
  EXPECT_TRUE(has(Severity::kAboveLimit, "pressed for 9 min without a break, 60 s at most"));
  EXPECT_TRUE(has(Severity::kWarn, "Vented but fastened, the device still presses up to 1.5 kPa (11 mmHg)"));
  EXPECT_TRUE(has(Severity::kAboveLimit,
                  "takes 18.0 kPa·min (135 mmHg·min) with the 1.5 factor: 102 % of the 17.7 kPa·min allowed "
                  "(judgement)."));
}

// Two inlets in turn: a seam between them follows whichever is higher, so it is on for twice as long.
TEST(SkinExposure, OfASeamFollowsTheHighestInlet) {
  ExposureCase c = pad(0.0, 2.0);
  for (FlatRegion& region : c.worn.setup.flat.regions) region = {RegionKind::kWeld, 0};
  for (EquilibriumState& state : c.worn.path.states)
    state.group_pressure_pa = Eigen::VectorXd::Constant(2, state.group_pressure_pa[0]);
  c.inputs.targets = {4.0 * kPa, 4.0 * kPa};
  c.inputs.programme = {
      {{1.0, Time(), 60.0 * second}, {0.0, Time(), 120.0 * second}},
      {{0.0, Time(), 60.0 * second}, {1.0, Time(), 60.0 * second}, {0.0, Time(), 60.0 * second}}};
  EXPECT_NEAR(c.exposed().value().worst.product / kPa_min, 6.0 * 3.0, 1e-5);
}

// The first check is never told later than it is due: 88.3 s of being on is told as 208 s.
TEST(SkinExposure, TellsTheFirstCheckNoLaterThanItIsDue) {
  ExposureCase c = pad(0.0, 4.0);
  const auto all = exposure_findings(c.limits, *c.exposed());
  ASSERT_FALSE(all.empty());
  EXPECT_NE(english(all.front().sentence).find("Check the skin within 3.4 min; rest it at least 30 min"),
            std::string::npos)
      << english(all.front().sentence);
}

// A pulse over bone is judged by the short hold's pressure, and keeps the pulse's times all the same: 3 s of
// hold and a duty of half are broken there as on a soft place.
TEST(SkinExposure, OfAPulseOverBoneKeepsTheTimesOfAPulse) {
  ExposureCase c = pad(0.0, 1.0);
  c.inputs.use = UsePattern::kPulse;
  c.figures.chambers[0].contact_area = 4.0 * cm2;
  c.inputs.session = Session{5.0 * minute, 3.0 * second, 3.0 * second, Time()};
  c.inputs.programme = {session_steps(*c.inputs.session)};
  const auto rules = [&] {
    std::vector<TimeRule> broken;
    if (const auto exposed = c.exposed())
      for (const BrokenTime& one : exposed->broken) broken.push_back(one.rule);
    return broken;
  };
  const auto on_soft = rules();
  c.inputs.sites_known = false;
  EXPECT_EQ(rules(), on_soft);
  EXPECT_EQ(on_soft, (std::vector{TimeRule::kHold, TimeRule::kOff, TimeRule::kDuty}));
}

TEST(SkinExposure, OfATestObjectIsNotWorkedOut) {
  ExposureCase c = pad(0.4, 2.0);
  c.inputs.part = BodyPart::kTestObject;
  EXPECT_FALSE(c.exposed());
}

TEST(SkinExposure, IsNotWorkedOutWithoutASession) {
  ExposureCase c = pad(0.4, 2.0);
  c.inputs.session.reset();
  EXPECT_FALSE(c.exposed());
}

}  // namespace
}  // namespace wrapgauge
