#include "app/desk/session/made_change.hpp"

#include <gtest/gtest.h>

#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class MadeChange : public testing::Test, public WithSession {
 protected:
  bool wait_for_result() {
    return wait_until(
        [&] { return session.solved() && session.stale().empty() && !session.runner().busy(); });
  }
  void open_above_its_limits() {
    open_small();
    Plan plan = session.plan();
    plan.inflation[0].target = 12.0 * kPa;
    session.edit("Inflate", plan);
    ASSERT_TRUE(wait_for_result());
    ASSERT_GE(session.solved()->summary->worst, Severity::kAboveLimit);
  }
  void find_advice() {
    session.find_advice();
    ASSERT_TRUE(wait_until([&] { return session.advice() && !session.runner().busy(); }));
  }
  void rename(const std::string& name) {
    Plan plan = session.plan();
    plan.name = name;
    session.edit("Name", plan);
  }
};

TEST_F(MadeChange, BringsThePlanWithinItsLimitsAndIsTakenBack) {
  open_above_its_limits();
  std::vector<double> fractions;
  const auto watch = QObject::connect(&session, &PlanSession::changed, [&] {
    if (const auto& running = session.now().running; running && running->kind == RunKind::kAdvice)
      fractions.push_back(running->fraction);
  });
  find_advice();
  QObject::disconnect(watch);
  EXPECT_GT(fractions.size(), 5U);
  EXPECT_TRUE(std::is_sorted(fractions.begin(), fractions.end()));
  const auto advice = session.advice();
  ASSERT_TRUE(advice->advised());
  session.edit("Change", made_change(session.now(), advice->changes.front()));
  EXPECT_FALSE(session.advice()) << "it was found for the plan before";
  ASSERT_TRUE(wait_for_result());
  session.estimate_standard();
  ASSERT_TRUE(wait_until(
      [&] { return session.solved()->fineness == Fineness::kStandard && !session.runner().busy(); }));
  EXPECT_LT(session.solved()->summary->worst, Severity::kAboveLimit);
  session.undo_stack().undo();
  EXPECT_EQ(session.advice(), advice);
  // What stands in the note alone is no input, and is kept when the change is made.
  rename("cuff for the bench");
  ASSERT_TRUE(session.advice());
  EXPECT_EQ(made_change(session.now(), session.advice()->changes.front()).name, "cuff for the bench");
}

TEST_F(MadeChange, ASearchThatIsCancelledFindsNothingAndLeavesTheWorkerFree) {
  open_above_its_limits();
  session.find_advice();
  ASSERT_TRUE(wait_until([&] { return session.now().running && session.now().running->fraction > 0.0; }));
  session.cancel();
  EXPECT_FALSE(session.runner().busy());
  EXPECT_FALSE(session.advice());
  Plan plan = session.plan();
  plan.inflation[0].target = 1.0 * kPa;
  session.edit("Deflate", plan);
  EXPECT_TRUE(wait_for_result());
}

}  // namespace
}  // namespace wrapgauge
