#include "app/desk/views/shown_plan.hpp"

#include "app/desk/views/body_scene.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

TEST(ShownPlan, ReadsEveryRecordedStateAndTheLastOneIsTheEstimatesOwn) {
  WithShown with;
  const auto estimate = two_chamber_estimate();
  with.shown.show_estimate(estimate);
  const int last = with.shown.state_count() - 1;
  ASSERT_EQ(with.shown.state_count(), static_cast<int>(estimate->path.states.size()));
  ASSERT_TRUE(with.shown.contact(last));
  EXPECT_EQ(with.selection.state(), last);
  EXPECT_EQ(with.shown.contact(last)->figures.peak_anywhere, estimate->figures.peak_anywhere);
  ASSERT_TRUE(with.show_all_states(estimate));
  double before = 0.0;
  for (int state = 0; state <= last; ++state) {
    const double peak = with.shown.contact(state)->figures.peak_anywhere.si();
    EXPECT_GE(peak, before) << state;  // a pad presses harder the more it is filled
    before = peak;
  }
}

TEST(ShownPlan, ReadingTheLastStateAgainGivesTheFiguresOfTheEstimate) {
  const auto estimate = two_chamber_estimate();
  Estimate longer = *estimate;  // its last state once more: then the one before is read afresh
  longer.path.states.push_back(longer.path.states.back());
  const SkinSurface skin(longer.body.surface);
  const StateContact read = state_contact(longer, skin, static_cast<int>(longer.path.states.size()) - 2);
  ASSERT_EQ(read.figures.chambers.size(), estimate->figures.chambers.size());
  for (std::size_t c = 0; c < read.figures.chambers.size(); ++c) {
    EXPECT_DOUBLE_EQ(read.figures.chambers[c].peak.si(), estimate->figures.chambers[c].peak.si());
    EXPECT_DOUBLE_EQ(read.figures.chambers[c].tissue_strain, estimate->figures.chambers[c].tissue_strain);
  }
}

TEST(ShownPlan, KeepsTheShownStateWhenANewEstimateHasAsManyAndElseShowsTheLast) {
  WithShown with;
  with.shown.show_estimate(two_chamber_estimate());
  with.selection.show_state(1);
  with.shown.show_estimate(two_chamber_estimate());
  EXPECT_EQ(with.selection.state(), 1);
  with.shown.show_estimate(nullptr);
  EXPECT_EQ(with.selection.state(), 0);
  EXPECT_EQ(with.shown.state_count(), 0);
}

TEST(ShownPlan, AChamberThatIsGoneIsNoLongerChosen) {
  WithShown with;
  with.shown.show_estimate(two_chamber_estimate());
  with.selection.select_chamber(ChamberId(1));
  auto fewer = std::make_shared<Layout>(two_chamber_plan().layout);
  fewer->chambers.pop_back();
  with.shown.show_layout(fewer);
  EXPECT_FALSE(with.selection.chamber());
}

TEST(BodyScene, AStaleEstimateIsDimmedAndGivesWayOnlyToALayoutThatLiesDifferently) {
  WithShown with;
  with.shown.show_estimate(two_chamber_estimate());
  EXPECT_FALSE(contact_part(with.shown, with.selection.state()).surface->dimmed);
  with.shown.show_stale("The inflation has changed.");
  EXPECT_TRUE(shows_contact(with.shown, with.selection.state()));
  EXPECT_TRUE(contact_part(with.shown, with.selection.state()).surface->dimmed);
  const auto job = complete_job(two_chamber_plan());
  ASSERT_TRUE(job.ok());
  const auto worn = [&](const Plan& plan) {
    auto prepared = prepare(plan, *body_of_plan(plan, job->body), job->resources, mesh_of_plan(plan));
    EXPECT_TRUE(prepared.ok());
    return std::make_shared<const Prepared>(std::move(prepared).value());
  };
  with.shown.show_worn(worn(job->plan));
  EXPECT_TRUE(shows_contact(with.shown, with.selection.state()));
  Plan turned = job->plan;
  turned.placement.turn_deg = 10.0;
  with.shown.show_worn(worn(turned));
  EXPECT_FALSE(shows_contact(with.shown, with.selection.state()));
  EXPECT_EQ(layout_part(with.shown).surface->pressure_pa.size(), 0);
}

TEST(BodyScene, LinesOfTheLayoutAndOfTheLimitLieOnTheSheetAndAreLiftedTowardsTheEyeOnly) {
  auto strict = std::make_shared<Estimate>(*two_chamber_estimate());
  strict->limits.model_factor = 20.0;  // so that much of both chambers is above a limit
  WithShown with;
  ASSERT_TRUE(with.show_all_states(strict));
  const ScenePart part = contact_part(with.shown, with.shown.state_count() - 1);
  const SkinSurface sheet(TriangleMesh{part.surface->points_m, part.surface->triangles});
  ASSERT_GE(part.lines.size(), 5U);  // hatch, halo and contour of the limit, parts and rim of the layout
  for (const SceneLines& lines : part.lines) {
    EXPECT_GT(lines.lift_m, 0.0);
    EXPECT_LT((sheet.nearest(lines.ends_m).points_m - lines.ends_m).rowwise().norm().maxCoeff(), 1e-9);
  }
}

TEST(BodyScene, FacesThatAProblemIsAboutAreMarkedAndThoseOfAnotherMeshAreNot) {
  WithShown with;
  with.shown.show_estimate(two_chamber_estimate());
  using Kind = ProblemPlace::Kind;
  with.shown.mark({{Kind::kFace, 0}, {Kind::kFace, 1 << 30}, {Kind::kChamber, 0}});
  const ScenePart part = picked_part(with.shown, with.selection);
  ASSERT_EQ(part.lines.size(), 1U);
  EXPECT_EQ(part.lines[0].ends_m.rows(), 6);
}

}  // namespace
}  // namespace wrapgauge
