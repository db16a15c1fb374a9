#include "app/desk/session/verdict_line.hpp"

#include <gtest/gtest.h>

#include "app/desk/words/phrase_text.hpp"
#include "model/note/verdict.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

using Act = VerdictLine::Act;

class VerdictTest : public testing::Test, public WithSession {
 protected:
  VerdictLine line() const { return verdict_line(session.now()); }
  bool wait_for_result() {
    return wait_until(
        [&] { return session.solved() && session.stale().empty() && !session.runner().busy(); });
  }
  void inflate_to(Pressure inside) {
    Plan plan = session.plan();
    plan.inflation[0].target = inside;
    session.edit("Inflate", plan);
  }
  void find_ceiling() {
    session.find_ceiling();
    ASSERT_TRUE(wait_until([&] { return session.ceiling() && !session.runner().busy(); }));
  }
  Pressure target() const { return std::get<Pressure>(session.plan().inflation[0].target); }
};

TEST_F(VerdictTest, WithoutABodyItSaysSoAndLeadsThere) {
  EXPECT_EQ(line().words, "Nothing to judge yet: Body needs a body.");
  EXPECT_FALSE(line().severity);
  EXPECT_EQ(line().act, Act::kOpenStep);
  EXPECT_EQ(line().step, PlanStep::kBody);
}

TEST_F(VerdictTest, AnInletWithoutPressureIsSaidInsteadOfAnOldVerdict) {
  open_small();
  ASSERT_TRUE(wait_for_result());
  Plan plan = session.plan();
  plan.inflation.clear();
  session.edit("Empty", plan);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_TRUE(line().words.startsWith("Nothing to judge yet: Inflation")) << line().words.toStdString();
  EXPECT_EQ(line().step, PlanStep::kInflation);
  EXPECT_FALSE(line().share);
}

TEST_F(VerdictTest, ItIsTheVerdictOfTheNoteWithTheShareOfTheWorstPlace) {
  open_small();
  inflate_to(8.0 * kPa);
  ASSERT_TRUE(wait_for_result());
  const Summary& summary = *session.solved()->summary;
  EXPECT_EQ(line().words, text(verdict(summary)));
  EXPECT_EQ(line().severity, summary.worst);
  ASSERT_TRUE(line().share);
  double largest = 0.0;
  for (const Finding& finding : summary.findings)
    if (finding.severity == summary.worst && finding.measured)
      largest = std::max(largest, finding.measured->with_factor / finding.measured->limit);
  EXPECT_DOUBLE_EQ(*line().share, largest);
  EXPECT_GT(*line().share, 1.0);
  EXPECT_TRUE(line().made_of.startsWith("Preview, mesh edge")) << line().made_of.toStdString();
}

TEST_F(VerdictTest, AnEditMakesItOutOfDateAndSaysWhatChanged) {
  open_small();
  ASSERT_TRUE(wait_for_result());
  EXPECT_FALSE(line().out_of_date);
  inflate_to(3.0 * kPa);
  EXPECT_TRUE(line().out_of_date);
  EXPECT_TRUE(line().made_of.startsWith("Out of date: the inflation changed."))
      << line().made_of.toStdString();
}

TEST_F(VerdictTest, TheHighestIsLookedForForwardsOnlySeenAtOnceSetAndTakenBack) {
  open_small();
  inflate_to(12.0 * kPa);
  ASSERT_TRUE(wait_for_result());
  EXPECT_EQ(line().highest, "not looked for yet");
  EXPECT_EQ(line().act, Act::kFindHighest);
  std::vector<double> fractions;
  bool could_cancel = false;
  const auto watch = QObject::connect(&session, &PlanSession::changed, [&] {
    if (const auto& running = session.now().running; running && running->kind == RunKind::kCeiling) {
      fractions.push_back(running->fraction);
      could_cancel |= line().act == Act::kCancel;
    }
  });
  find_ceiling();
  QObject::disconnect(watch);
  EXPECT_GT(fractions.size(), 5U);
  EXPECT_TRUE(std::is_sorted(fractions.begin(), fractions.end()));
  EXPECT_TRUE(could_cancel);
  const Ceiling found = *session.ceiling();
  ASSERT_LT(found.together.at.inflation, 1.0) << "the plan is not above its limits";
  EXPECT_TRUE(line().highest.contains("of the plan")) << line().highest.toStdString();
  EXPECT_EQ(line().act, Act::kSetHighest);
  session.edit("Set", *plan_set_down(session.now()));
  EXPECT_EQ(target(), found.together.inlets[0].gauge);
  EXPECT_TRUE(line().highest.endsWith("the plan is set to it")) << line().highest.toStdString();
  EXPECT_NE(line().act, Act::kSetHighest);
  session.undo_stack().undo();
  EXPECT_EQ(target(), 12.0 * kPa);
  EXPECT_EQ(line().act, Act::kSetHighest);
}

SessionState with_no_setting(SessionState state) {
  auto ceiling = std::make_shared<Ceiling>();
  ceiling->together.stop = CeilingStop::kAlreadyAbove;
  state.newest_ceiling = {state.plan, ceiling};
  return state;
}

TEST_F(VerdictTest, WhereNoInflationIsWithinTheLimitsItLooksForWhatElseToChange) {
  open_small();
  inflate_to(12.0 * kPa);
  ASSERT_TRUE(wait_for_result());
  ASSERT_GE(line().severity, Severity::kAboveLimit);
  SessionState state = with_no_setting(session.now());
  EXPECT_EQ(verdict_line(state).act, Act::kFindChanges);
  EXPECT_EQ(verdict_line(state).act_words, "What to change");
  state.running = Running{"runs 1 of 9", 0.1, RunKind::kAdvice};
  EXPECT_EQ(verdict_line(state).act, Act::kCancel);
  state.running.reset();
  state.newest_advice = {state.plan, std::make_shared<Advice>()};
  EXPECT_EQ(verdict_line(state).act, Act::kOpenStep) << "it was looked for already";
  EXPECT_EQ(verdict_line(state).step, PlanStep::kLimits);
}

TEST_F(VerdictTest, NothingIsLookedForWhereNothingIsAboveALimit) {
  open_small();
  inflate_to(0.2 * kPa);
  ASSERT_TRUE(wait_for_result());
  ASSERT_LT(line().severity, Severity::kAboveLimit);
  EXPECT_EQ(verdict_line(with_no_setting(session.now())).act, Act::kOpenStep);
}

// A plan that lies below is not to be raised by a press of a button.
TEST_F(VerdictTest, APlanBelowTheHighestIsNotSetUp) {
  open_small();
  inflate_to(0.2 * kPa);
  ASSERT_TRUE(wait_for_result());
  find_ceiling();
  ASSERT_GE(session.ceiling()->together.at.inflation, 1.0);
  EXPECT_FALSE(plan_set_down(session.now()));
  EXPECT_NE(line().act, Act::kSetHighest);
}

}  // namespace
}  // namespace wrapgauge
