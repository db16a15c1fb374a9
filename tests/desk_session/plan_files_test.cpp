#include "app/desk/session/plan_files.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

class PlanFiles : public testing::Test, public WithSession {
 protected:
  // A plan whose layout and limit set stand in files of their own, named by their whole paths.
  Plan plan_with_files() {
    fs::create_directories(root / "drawings");
    fs::create_directories(root / "plans");
    EXPECT_TRUE(
        write_file_atomically(root / "drawings/pad.json", layout_to_json(small_layout()).dump()).ok());
    fs::copy_file(fs::path(WRAPGAUGE_SOURCE_DIR) / "resources/limits.json", root / "drawings/limits.json");
    Plan plan = small_plan();
    plan.layout_file = root / "drawings/pad.json";
    plan.limits_file = root / "drawings/limits.json";
    return plan;
  }
  std::string text_of(const fs::path& file) { return read_file(file).value(); }
};

TEST_F(PlanFiles, ASavedPlanNamesItsFilesFromItsOwnFolder) {
  session.edit("Take", plan_with_files());
  ASSERT_TRUE(session.save(root / "plans/pad.json").ok());
  const auto saved = nlohmann::json::parse(text_of(root / "plans/pad.json"));
  EXPECT_EQ(saved["layout"]["file"], "../drawings/pad.json");
  EXPECT_EQ(saved["limits"]["file"], "../drawings/limits.json");
  fs::create_directories(root / "moved");
  for (const char* name : {"plans", "drawings"}) fs::rename(root / name, root / "moved" / name);
  const auto read = read_plan(root / "moved/plans/pad.json");
  ASSERT_TRUE(read.ok()) << read.problem().message;
  EXPECT_EQ(read->layout, small_layout());
}

TEST_F(PlanFiles, AMissingFileIsNamedAndCanBeFoundElsewhere) {
  const Plan plan = with_files_seen_from(plan_with_files(), root / "plans");
  const fs::path file = root / "plans/pad.json";
  ASSERT_TRUE(write_plan(plan, file).ok());
  EXPECT_TRUE(missing_files(file).empty());
  fs::rename(root / "drawings/pad.json", root / "elsewhere.json");
  const std::string before = text_of(file);
  const auto missing = missing_files(file);
  ASSERT_EQ(missing.size(), 1U);
  EXPECT_EQ(missing[0].key, "/layout/file");
  EXPECT_EQ(missing[0].named, "../drawings/pad.json");
  EXPECT_FALSE(read_plan(file).ok());
  ASSERT_TRUE(session.open_with(file, {{"/layout/file", root / "elsewhere.json"}}).ok());
  EXPECT_EQ(session.plan().layout, small_layout());
  EXPECT_TRUE(session.modified()) << "where it is now is still to be saved";
  EXPECT_EQ(text_of(file), before) << "opening writes nothing";
  ASSERT_TRUE(session.save(file).ok());
  EXPECT_EQ(nlohmann::json::parse(text_of(file))["layout"]["file"], "../elsewhere.json");
}

TEST_F(PlanFiles, ASecondWindowKnowsAndOverwritesNothingInSilence) {
  open_small();
  const fs::path file = root / "pad.json";
  PlanSession second(root / "recovery");
  ASSERT_TRUE(second.open(file).ok());
  EXPECT_FALSE(session.now().open_elsewhere);
  EXPECT_TRUE(second.now().open_elsewhere);
  const auto named = [](PlanSession& of, const char* name) {
    Plan plan = of.plan();
    plan.name = name;
    of.edit("Name", plan);
  };
  named(session, "first");
  named(second, "second");
  ASSERT_TRUE(session.save(file).ok());
  const auto refused = second.save(file);
  ASSERT_FALSE(refused.ok()) << "the last save would win in silence";
  EXPECT_NE(refused.problem().message.find("saved from another window"), std::string::npos);
  EXPECT_EQ(read_plan(file)->name, "first");
  EXPECT_TRUE(second.save(root / "other.json").ok());
  named(session, "first again");
  EXPECT_TRUE(session.save(file).ok()) << "its own saves are no one else's";
}

TEST_F(PlanFiles, AWindowThatClosesGivesThePlanUp) {
  open_small();
  {
    PlanSession second(root / "recovery");
    ASSERT_TRUE(second.open(root / "pad.json").ok());
    EXPECT_TRUE(second.now().open_elsewhere);
  }
  session.start_new();
  PlanSession third(root / "recovery");
  ASSERT_TRUE(third.open(root / "pad.json").ok());
  EXPECT_FALSE(third.now().open_elsewhere);
}

TEST_F(PlanFiles, TheNoteOfATestObjectIsNotReady) {
  open_small();
  Plan plan = session.plan();
  plan.part = BodyPart::kTestObject;
  session.edit("Part", plan);
  session.estimate_standard();
  ASSERT_TRUE(wait_until([&] {
    return session.solved() && session.solved()->fineness == Fineness::kStandard && session.stale().empty();
  }));
  EXPECT_EQ(session.state(PlanStep::kNote).words, "needs a part that is worn");
}

}  // namespace
}  // namespace wrapgauge
