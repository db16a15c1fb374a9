#include <gtest/gtest.h>

#include <algorithm>

#include "bodyforms/form.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {
namespace {

// On a coarse mesh; docs/09-study.md has the ceilings at the plans' own.
class DemoPlan : public testing::TestWithParam<const char*> {};

TEST_P(DemoPlan, IsWithinTheLimitsWhenClosedAndNotInflated) {
  const std::filesystem::path resources = WRAPGAUGE_SOURCE_DIR "/resources";
  Plan plan = read_plan(resources / "plans" / (std::string(GetParam()) + ".json")).value();
  plan.mesh_edge = 10.0 * mm;
  plan.solver.steps = 1;
  const auto& form = std::get<BodyForm>(plan.body);
  const Body body = body_of_plan(plan, make_form(form.form, form.parameters).value()).value();
  const auto study =
      StudyCase::make(plan, body, read_resources(resources).value(), mesh_of_plan(plan)).value();
  const std::vector<InflationTarget> hardly(study.groups(), Pressure(1.0));
  const auto solved = study.inflate_to(hardly, silent_progress());
  ASSERT_TRUE(solved.ok()) << solved.problem().message;
  const StateReading closed = study.read(*solved, 0);
  EXPECT_GT(closed.nearest.share, 0.05) << "it does not touch";
  EXPECT_LT(closed.nearest.share, 0.8) << closed.nearest.sentence;
}

INSTANTIATE_TEST_SUITE_P(Both, DemoPlan, testing::Values("forearm-cuff", "calf-sleeve"),
                         [](const auto& plan) {
                           std::string name = plan.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

}  // namespace
}  // namespace wrapgauge
