#include "app/desk/session/start_pressure.hpp"

#include <gtest/gtest.h>

#include "app/job/measured_layout.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

TEST(StartPressure, IsGivenToInletsThatAreFilledWithNothingAndToNoOther) {
  Plan plan = small_plan();
  plan.layout.inlets = {{"old", {0.0, 0.0}}, {"new", {0.01, 0.0}}};
  plan.inflation = {{"old", 2.0 * kPa, {}}};
  fill_unfed(plan);
  ASSERT_EQ(plan.inflation.size(), 2U);
  EXPECT_EQ(std::get<Pressure>(plan.inflation[0].target), 2.0 * kPa);
  EXPECT_EQ(plan.inflation[1].inlet, "new");
  EXPECT_EQ(std::get<Pressure>(plan.inflation[1].target), kStartPressure);
}

// A layout as the window makes it where the demo's device lies.
struct Start {
  const char *form, *limb, *tissue;
  std::map<std::string, double> girths;
  double station_mm, angle_deg;
};

class StartsWithinLimits : public testing::TestWithParam<Start>, public WithSession {};

TEST_P(StartsWithinLimits, OnTheLimbsOfTheDemo) {
  const Start& start = GetParam();
  Plan plan;
  plan.body = BodyForm{start.limb, start.girths, {}};
  plan.tissue_site = start.tissue;
  plan.placement.anchor = AnchorAtStation{start.station_mm * mm, start.angle_deg};
  session.edit(QStringLiteral("Body"), plan);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  ASSERT_TRUE(session.now().body());
  const LayoutForm form = find_layout_form(start.form).value();
  std::map<std::string, double> values;
  const auto measures = measures_of(form, {}, *session.now().body(), start.station_mm * mm);
  ASSERT_TRUE(measures.ok());
  for (const LimbMeasure& measure : *measures) values[measure.parameter] = measure.value_mm;
  const auto made = make_for_body(form, values, *session.now().body(), start.station_mm * mm);
  ASSERT_TRUE(made.ok());
  plan.layout = made->layout;
  fill_unfed(plan);
  session.edit(QStringLiteral("Make a layout"), plan);
  ASSERT_TRUE(wait_until([&] { return session.solved() && session.stale().empty(); }));
  for (const Finding& finding : session.solved()->estimate->findings)
    EXPECT_LT(finding.severity, Severity::kAboveLimit) << english(finding.sentence);
}

INSTANTIATE_TEST_SUITE_P(
    Starting, StartsWithinLimits,
    testing::Values(
        Start{"cuff", "forearm", "forearm relaxed", {{"girth_forearm", 275}, {"girth_elbow", 260}}, 190, 90},
        Start{
            "sleeve", "forearm", "forearm relaxed", {{"girth_forearm", 275}, {"girth_elbow", 260}}, 150, 90},
        Start{"cuff", "calf", "calf", {}, 255, 270}, Start{"sleeve", "calf", "calf", {}, 235, 270},
        Start{"graduated-sleeve", "calf", "calf", {}, 235, 270}));

}  // namespace
}  // namespace wrapgauge
