#include "app/desk/session/estimate_runner.hpp"

#include <gtest/gtest.h>

#include "model/note/note.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class RunnerTest : public testing::Test, public WithSession {};

TEST_F(RunnerTest, APreviewFollowsAnEditByItself) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.solved() != nullptr; }));
  const auto first = session.solved();
  EXPECT_EQ(first->fineness, Fineness::kPreview);
  Plan plan = session.plan();
  plan.inflation[0].target = 3.0 * kPa;
  session.edit("Inflate", plan);
  ASSERT_TRUE(wait_until([&] { return session.solved() != first; }));
  EXPECT_GT(session.solved()->estimate->figures.total_force, first->estimate->figures.total_force);
}

TEST_F(RunnerTest, APreviewThatKeepsHowItLiesGivesTheFiguresOfOneMadeAnew) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.solved() != nullptr; }));
  const auto first = session.solved();
  const auto laid_on = session.checked();
  Plan plan = session.plan();
  plan.inflation[0].target = 2.5 * kPa;
  session.edit("Inflate", plan);
  ASSERT_TRUE(wait_until([&] { return session.solved() != first; }));
  EXPECT_EQ(session.checked()->prepared->setup.body, laid_on->prepared->setup.body);  // not made again
  const auto job = complete_job(session.plan(), *session.checked()->body);
  ASSERT_TRUE(job.ok());
  const Plan preview = preview_plan(session.plan());
  DistanceBlocks distances;
  const auto body = body_of_plan(preview, job->body);
  ASSERT_TRUE(body.ok());
  const auto prepared = prepare(preview, *body, job->resources, mesh_of_plan(preview), {&distances});
  ASSERT_TRUE(prepared.ok());
  const auto anew = estimate(preview, job->body, job->resources,
                             {.mesh_error = false,
                              .relief = false,
                              .comparisons = false,
                              .prepared = std::make_shared<const Prepared>(*prepared)});
  ASSERT_TRUE(anew.ok());
  EXPECT_EQ(session.solved()->estimate->figures.total_force, anew->figures.total_force);
  EXPECT_EQ(session.solved()->estimate->figures.peak_anywhere, anew->figures.peak_anywhere);
}

TEST_F(RunnerTest, TheStandardMeshGivesTheTerminalsFigures) {
  open_small();
  session.estimate_standard();
  ASSERT_TRUE(
      wait_until([&] { return session.solved() && session.solved()->fineness == Fineness::kStandard; }));
  const auto job = read_job(root / "pad.json");
  ASSERT_TRUE(job.ok());
  const auto direct = estimate(job->plan, job->body, job->resources);
  ASSERT_TRUE(direct.ok());
  const ContactFigures& shown = session.solved()->estimate->figures;
  EXPECT_EQ(shown.peak_anywhere, direct->figures.peak_anywhere);
  EXPECT_EQ(shown.total_force, direct->figures.total_force);
  EXPECT_EQ(session.state(PlanStep::kNote).kind, StepState::Kind::kReady);
  const auto note = session.note_inputs();
  ASSERT_TRUE(note.ok()) << note.problem().message;
  EXPECT_TRUE(study_note(note->summary, note->now).ok());
}

TEST_F(RunnerTest, NoNoteIsWrittenFromAStaleOrUnsavedPlan) {
  open_small();
  session.estimate_standard();
  ASSERT_TRUE(
      wait_until([&] { return session.solved() && session.solved()->fineness == Fineness::kStandard; }));
  Plan plan = session.plan();
  plan.inflation[0].target = 3.0 * kPa;
  session.edit("Inflate", plan);
  ASSERT_FALSE(session.note_inputs().ok());
  EXPECT_NE(session.note_inputs().problem().message.find("the inflation"), std::string::npos);
}

TEST_F(RunnerTest, WhatIsCancelledGivesNoResultAndTheNextRunIsWhole) {
  open_small();
  Plan plan = session.plan();
  plan.mesh_edge = 3.0 * mm;  // long enough to be met in the middle
  session.edit("Finer", plan);
  session.estimate_standard();
  QString stage;
  const auto heard = QObject::connect(&session.runner(), &EstimateRunner::progressed,
                                      [&](const QString& words, double) { stage = words; });
  ASSERT_TRUE(wait_until([&] { return !stage.isEmpty() && stage != "checking"; }));
  session.cancel();
  QObject::disconnect(heard);
  EXPECT_FALSE(session.runner().busy());
  plan.mesh_edge = 9.0 * mm;
  session.edit("Coarser", plan);
  ASSERT_TRUE(wait_until([&] { return session.solved() != nullptr; }));
  EXPECT_DOUBLE_EQ(session.solved()->plan->mesh_edge / mm, 9.0);
}

TEST_F(RunnerTest, AnImpossiblePlaceIsSaidWhereItBelongs) {
  open_small();
  Plan plan = session.plan();
  plan.placement.anchor = AnchorAtStation{9000.0 * mm, 0.0};
  session.edit("Too far", plan);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_EQ(session.state(PlanStep::kBody).words, "ready");
  EXPECT_EQ(session.state(PlanStep::kWear).kind, StepState::Kind::kNeeds);
  ASSERT_EQ(session.state(PlanStep::kWear).findings.size(), 1);
}

}  // namespace
}  // namespace wrapgauge
