#include "app/desk/session/recovery_file.hpp"

#include <gtest/gtest.h>

#include "model/core/file.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class RecoveryTest : public testing::Test, public WithSession {};

TEST_F(RecoveryTest, AnEditIsOnTheDiskSoonAfterAndGoneWhenSaved) {
  open_small();
  Plan plan = session.plan();
  plan.friction = 0.3;
  session.edit("Friction", plan);
  const auto count = [&] {
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(root / "recovery"))
      files += entry.path().extension() == ".json";
    return files;
  };
  ASSERT_TRUE(wait_until([&] { return count() == 1; }));
  ASSERT_TRUE(session.save(root / "pad.json").ok());
  EXPECT_EQ(count(), 0);
}

TEST_F(RecoveryTest, WhatASessionThatDiedLeftIsFoundOnceAndWhatALivingOneHoldsIsNot) {
  Plan plan = small_plan();
  plan.friction = 0.3;
  std::filesystem::create_directories(root / "left");
  ASSERT_TRUE(
      write_file_atomically(root / "left/a.recovery.json", recovery_text({plan, "/plans/pad.json"})).ok());
  const RecoveryFile held(root / "left");
  ASSERT_TRUE(write_file_atomically(held.path(), recovery_text({small_plan(), {}})).ok());
  const auto found = RecoveryFile::take_left_behind(root / "left");
  ASSERT_TRUE(found);
  EXPECT_DOUBLE_EQ(found->plan.friction, 0.3);
  EXPECT_EQ(found->file, "/plans/pad.json");
  EXPECT_FALSE(RecoveryFile::take_left_behind(root / "left"));
  EXPECT_TRUE(std::filesystem::exists(held.path()));
}

TEST_F(RecoveryTest, ARecoveredPlanCountsAsNotSaved) {
  session.recover({small_plan(), {}});
  EXPECT_TRUE(session.modified());
}

TEST(RecoveryText, APlanWithoutBodyAndLayoutComesBackWithout) {
  Plan plan = small_plan();
  plan.body = BodyFile{};
  plan.layout = Layout{};
  plan.inflation.clear();
  const auto back = recovered_from_text(recovery_text({plan, {}}));
  ASSERT_TRUE(back.ok()) << back.problem().message;
  EXPECT_FALSE(has_body(back->plan));
  EXPECT_FALSE(has_layout(back->plan));
}

TEST(RecoveryText, ATornFileIsAProblem) {
  const std::string whole = recovery_text({small_plan(), {}});
  EXPECT_FALSE(recovered_from_text(whole.substr(0, whole.size() / 2)).ok());
}

}  // namespace
}  // namespace wrapgauge
