#include "app/desk/session/plan_session.hpp"

#include <gtest/gtest.h>

#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/file.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class SessionTest : public testing::Test, public WithSession {};

double station_mm(const PlanSession& session) {
  return std::get<AnchorAtStation>(session.plan().placement.anchor).station / mm;
}

void move_to(PlanSession& session, double station, const QString& merge = {}) {
  Plan plan = session.plan();
  plan.placement.anchor = AnchorAtStation{station * mm, 0.0};
  session.edit("Move", plan, merge);
}

// A larger flat grid under the limb, which lies along z.
TriangleMesh on_table(TriangleMesh scan) {
  constexpr int kAlong = 21;
  const auto first = static_cast<int>(scan.vertices_m.rows());
  const Vec3 low = scan.vertices_m.colwise().minCoeff();
  Points3 points(kAlong * kAlong, 3);
  std::vector<Eigen::RowVector3i> faces;
  for (int i = 0; i < kAlong; ++i)
    for (int j = 0; j < kAlong; ++j) {
      points.row(i * kAlong + j) << -0.3 + 0.03 * i, low.y() - 0.01, -0.15 + 0.03 * j;
      const int at = first + i * kAlong + j;
      if (i + 1 == kAlong || j + 1 == kAlong) continue;
      faces.push_back({at, at + 1, at + kAlong});
      faces.push_back({at + 1, at + kAlong + 1, at + kAlong});
    }
  scan.vertices_m.conservativeResize(first + points.rows(), 3);
  scan.vertices_m.bottomRows(points.rows()) = points;
  const Eigen::Index before = scan.faces.rows();
  scan.faces.conservativeResize(before + static_cast<Eigen::Index>(faces.size()), 3);
  for (std::size_t f = 0; f < faces.size(); ++f)
    scan.faces.row(before + static_cast<Eigen::Index>(f)) = faces[f];
  return scan;
}

TEST_F(SessionTest, AnEditCanBeTakenBackAndMadeAgain) {
  open_small();
  EXPECT_FALSE(session.modified());
  move_to(session, 120.0);
  EXPECT_TRUE(session.modified());
  EXPECT_DOUBLE_EQ(station_mm(session), 120.0);
  session.undo_stack().undo();
  EXPECT_NEAR(station_mm(session), 100.0, 1e-9);
  EXPECT_FALSE(session.modified());
  session.undo_stack().redo();
  EXPECT_DOUBLE_EQ(station_mm(session), 120.0);
}

TEST_F(SessionTest, EditsOfOneFieldInARowAreOneStepBack) {
  open_small();
  for (const double station : {101.0, 102.0, 103.0}) move_to(session, station, "station");
  EXPECT_EQ(session.undo_stack().count(), 1);
  session.undo_stack().undo();
  EXPECT_NEAR(station_mm(session), 100.0, 1e-9);
}

TEST_F(SessionTest, ACheckChangesNothingInThePlanAndLeavesNothingToUndo) {
  Plan plan = small_plan();
  plan.tissue_depth_mm.assign(7, 14.0);  // for another body: the check says so and corrects nothing
  ASSERT_TRUE(write_plan(plan, root / "pad.json").ok());
  ASSERT_TRUE(session.open(root / "pad.json").ok());
  const Plan before = session.plan();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_EQ(session.state(PlanStep::kBody).words, "needs another tissue depth");
  EXPECT_TRUE(session.plan() == before);
  EXPECT_FALSE(session.undo_stack().canUndo());
  Plan finer = before;
  std::get<BodyForm>(finer.body).parameters["edge"] = 5.5;
  session.edit("Finer", finer);
  const Plan edited = session.plan();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_TRUE(session.plan() == edited);
  session.undo_stack().undo();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_TRUE(session.plan() == before);
  EXPECT_FALSE(session.modified());
}

TEST_F(SessionTest, EachEditUndoAndSaveIsOneNewStateSaidOnce) {
  open_small();
  session.cancel();
  std::vector<SessionState> before;
  QObject::connect(&session, &PlanSession::changed,
                   [&](const SessionState& state) { before.push_back(state); });
  const SessionState first = session.now();
  move_to(session, 120.0);
  ASSERT_EQ(before.size(), 1U);
  EXPECT_EQ(before.back(), first);
  EXPECT_TRUE(session.now().modified);
  EXPECT_EQ(*first.plan, *before.back().plan) << "a state that was handed out changed";
  session.undo_stack().undo();
  ASSERT_EQ(before.size(), 2U);
  EXPECT_EQ(session.now().plan, first.plan);
  EXPECT_FALSE(session.now().modified);
  session.undo_stack().redo();
  ASSERT_EQ(before.size(), 3U);
  ASSERT_TRUE(session.save(root / "pad.json").ok());
  ASSERT_EQ(before.size(), 4U);
  EXPECT_FALSE(session.now().modified);
  EXPECT_TRUE(changed_parts(*session.now().saved, session.plan()).empty());
}

TEST_F(SessionTest, AnEditThatChangesNothingIsNone) {
  open_small();
  session.edit("Nothing", session.plan());
  EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(SessionTest, ALayoutThatIsEditedMovesFromItsFileIntoThePlan) {
  open_small();
  Layout layout = session.plan().layout;
  layout.chambers[0].name = "pad";
  session.edit_layout("Rename", layout);
  EXPECT_FALSE(session.plan().layout_file);
  ASSERT_TRUE(session.save(root / "again.json").ok());
  EXPECT_EQ(read_plan(root / "again.json")->layout.chambers[0].name, "pad");
}

TEST_F(SessionTest, AnInletThatIsGoneTakesItsInflationWithIt) {
  open_small();
  Layout layout = session.plan().layout;
  layout.inlets[0].name = "other";
  session.edit_layout("Rename", layout);
  EXPECT_TRUE(session.plan().inflation.empty());
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_EQ(session.state(PlanStep::kInflation).kind, StepState::Kind::kNeeds);
  EXPECT_TRUE(session.state(PlanStep::kInflation).words.contains("other"));
}

TEST_F(SessionTest, ABodyThatCannotBeReadSaysWhatWouldHelp) {
  const auto words_with = [&](const BodyFile& file) {
    Plan plan = session.plan();
    plan.body = file;
    session.edit("Another body", plan);
    EXPECT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
    return session.state(PlanStep::kBody).words.toStdString();
  };
  open_small();
  const Body limb = make_form("cylinder", {}).value();
  ASSERT_TRUE(write_mesh(limb.surface, root / "limb.ply").ok());
  EXPECT_EQ(words_with({root / "limb.ply", {}, {}, {}, {}, {}}), "ready");
  EXPECT_EQ(words_with({root / "limb.ply", LengthUnit::kMetre, {}, {}, {}, {}}), "needs another unit");
  EXPECT_EQ(words_with({root / "limb.ply", {}, {}, {}, {}, {CutLimb{900.0 * mm, 950.0 * mm}}}),
            "needs other steps of repair");
  ASSERT_TRUE(write_file_atomically(root / "words.obj", "no mesh at all\n").ok());
  EXPECT_EQ(words_with({root / "words.obj", {}, {}, {}, {}, {}}), "needs another file");
  EXPECT_EQ(words_with({root / "words.obj", {}, {}, {}, {}, usual_steps()}), "needs another file");
}

TEST_F(SessionTest, AScanWhoseTableIsItsLargestPieceNeedsRepair) {
  const Body limb = make_form("cylinder", {}).value();
  ASSERT_TRUE(write_mesh(on_table(limb.surface), root / "scan.ply").ok());
  Plan plan = session.plan();
  plan.body = BodyFile{root / "scan.ply", {}, {}, {}, {}, {}};
  session.edit("Open a mesh", plan);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_EQ(session.state(PlanStep::kBody).words.toStdString(), "needs repair")
      << session.state(PlanStep::kBody).findings.join(" ").toStdString();
}

// A body that holds a plan, then another file in its place.
class BodyOnTrial : public SessionTest {
 protected:
  void begin() {
    session.edit("a plan", small_plan());
    ASSERT_TRUE(wait_until([&] { return session.checked() && session.now().body(); }));
    before_ = session.plan();
  }
  void try_file(const std::filesystem::path& file) {
    Plan changed = session.plan();
    changed.body = BodyFile{file, {}, {}, {}, {}, {}};
    session.try_body("Open a mesh", changed);
    ASSERT_TRUE(wait_until([&] { return session.checked() || session.now().problem; }));
  }
  Plan before_;
};

TEST_F(BodyOnTrial, AFileThatMakesNoBodyGoesAgainAndTheBodyBeforeStays) {
  begin();
  for (const char* name : {"words.obj", "points_only.obj", "nan_vertex.obj", "four_corners.stl"}) {
    const auto file = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/mesh" / name;
    const int steps = session.undo_stack().count();
    try_file(file);
    ASSERT_TRUE(session.now().problem) << name << " is not said";
    Plan alone;
    alone.body = BodyFile{file, {}, {}, {}, {}, {}};
    EXPECT_EQ(session.now().problem->message, read_body(alone).problem().message);
    EXPECT_EQ(session.plan(), before_) << name;
    EXPECT_EQ(session.undo_stack().count(), steps) << "it can be brought back by redo";
    ASSERT_TRUE(wait_until([&] { return session.checked() && session.now().body(); })) << name;
  }
}

TEST_F(BodyOnTrial, AFileThatSomethingCanBeSaidOfStays) {
  begin();
  const Body limb = make_form("cylinder", {}).value();
  ASSERT_TRUE(write_mesh(on_table(limb.surface), root / "scan.ply").ok());
  try_file(root / "scan.ply");
  EXPECT_FALSE(session.now().problem);
  EXPECT_TRUE(std::holds_alternative<BodyFile>(session.plan().body));
  EXPECT_EQ(session.state(PlanStep::kBody).words.toStdString(), "needs repair");
  session.undo_stack().undo();
  EXPECT_EQ(session.plan(), before_);
}

TEST_F(SessionTest, ANewPlanSaysWhatItNeeds) {
  session.start_new();
  EXPECT_EQ(session.state(PlanStep::kBody).words, "needs a body");
  EXPECT_EQ(session.state(PlanStep::kLayout).words, "needs a layout");
  const auto saved = session.save(root / "new.json");
  ASSERT_FALSE(saved.ok());
  EXPECT_NE(saved.problem().message.find("still missing"), std::string::npos);
  EXPECT_FALSE(std::filesystem::exists(root / "new.json"));
}

TEST_F(SessionTest, ABadFileLeavesThePlanAsItIsAndHasTheTerminalsWords) {
  open_small();
  ASSERT_TRUE(write_file_atomically(root / "bad.json", "{\"wrapgauge-plan\": 1, \"body\": ").ok());
  const auto opened = session.open(root / "bad.json");
  ASSERT_FALSE(opened.ok());
  EXPECT_EQ(opened.problem().message, read_plan(root / "bad.json").problem().message);
  EXPECT_EQ(session.plan().name, "small pad");
}

TEST_F(SessionTest, AChangeOfWearIsSaidUntilItIsTakenBack) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.solved() != nullptr; }));
  EXPECT_TRUE(session.stale().empty());
  move_to(session, 110.0);
  ASSERT_EQ(session.stale(), std::vector<PlanPart>{PlanPart::kWear});
  EXPECT_EQ(parts_words(session.stale()), "the wear");
  session.undo_stack().undo();
  EXPECT_TRUE(session.stale().empty());
}

TEST_F(SessionTest, SavingElsewhereChangesNoInput) {
  Plan plan = small_plan();
  ASSERT_TRUE(
      write_file_atomically(root / "limits.json",
                            *read_file(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/limits.json"))
          .ok());
  plan.limits_file = "limits.json";
  plan.folder = root;
  ASSERT_TRUE(write_plan(plan, root / "pad.json").ok());
  ASSERT_TRUE(session.open(root / "pad.json").ok());
  std::filesystem::create_directories(root / "deeper");
  ASSERT_TRUE(session.save(root / "deeper/pad.json").ok());
  const auto again = read_plan(root / "deeper/pad.json");
  ASSERT_TRUE(again.ok());
  EXPECT_TRUE(changed_parts(*again, session.plan()).empty());
}

}  // namespace
}  // namespace wrapgauge
