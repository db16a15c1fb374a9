#include "app/job/kept_plans.hpp"

#include "model/core/file.hpp"
#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

class KeptPlans : public CommandTest {
 protected:
  std::filesystem::path file = write("cuff.json", small_band_plan(2.0).dump());
  Plan plan = read_plan(file).value();

  void SetUp() override { std::filesystem::remove_all(kept_folder(file)); }  // what an earlier run left

  KeptPlan keep(const std::string& name, double share) {
    return keep_plan(file, plan, name, {share, 2.2 * kPa, 4.0 * kPa, share > 1.0, 8.0 * mm}, "png").value();
  }
};

TEST_F(KeptPlans, AreReadBackInTheOrderTheyWereKept) {
  EXPECT_TRUE(kept_plans(file).empty());
  keep("first", 1.12);
  keep("second", 0.9);
  const auto kept = kept_plans(file);
  ASSERT_EQ(kept.size(), 2u);
  EXPECT_EQ(kept[0].name, "first");
  EXPECT_EQ(kept[0].figures, (KeptFigures{1.12, 2.2 * kPa, 4.0 * kPa, true, 8.0 * mm}));
  EXPECT_FALSE(kept[1].figures.above);
  EXPECT_EQ(read_plan(kept[1].plan).value().inflation, plan.inflation);
  EXPECT_EQ(read_file(kept[0].picture).value(), "png");
  EXPECT_EQ(kept_folder(file).filename(), "cuff-kept");
}

TEST_F(KeptPlans, ADroppedOneLeavesTheOthersAndTheLastTakesTheFolder) {
  const KeptPlan first = keep("first", 1.0), second = keep("second", 1.0);
  ASSERT_TRUE(drop_kept(first).ok());
  ASSERT_EQ(kept_plans(file).size(), 1u);
  EXPECT_EQ(keep("third", 1.0).plan.filename(), "003.json") << "the number of one that is there";
  for (const KeptPlan& kept : kept_plans(file)) ASSERT_TRUE(drop_kept(kept).ok());
  EXPECT_FALSE(std::filesystem::exists(kept_folder(file)));
}

TEST_F(KeptPlans, WhatIsDamagedIsPassedOver) {
  keep("first", 1.0);
  for (const char* text : {"", "{", "[]", R"({"wrapgauge-kept":2})", R"({"wrapgauge-kept":1,"name":3})"}) {
    ASSERT_TRUE(write_file_atomically(kept_folder(file) / "009.kept.json", text).ok());
    EXPECT_EQ(kept_plans(file).size(), 1u) << text;
  }
}

}  // namespace
}  // namespace wrapgauge
