#include "model/body/tissue_depths.hpp"

#include <gtest/gtest.h>

#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class TissueDepths : public testing::Test, public WithSession {
 protected:
  void edit(const std::function<void(Plan&)>& change) {
    Plan plan = session.plan();
    change(plan);
    session.edit("Edit", plan);
    EXPECT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  }
  void undo() {
    session.undo_stack().undo();
    EXPECT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  }
  void make_finer() {
    edit([](Plan& plan) { std::get<BodyForm>(plan.body).parameters["edge"] = 5.5; });
  }
  const Points3& points_m() { return session.last_checked()->body->body.surface.vertices_m; }
  std::size_t points() { return static_cast<std::size_t>(points_m().rows()); }
  const std::vector<double>& depths() { return session.plan().tissue_depth_mm; }
};

// In proportion to the place along the limb: what lies between two points is known.
std::vector<double> rising_along(const Points3& points_m) {
  std::vector<double> depth_mm;
  for (Eigen::Index v = 0; v < points_m.rows(); ++v) depth_mm.push_back(12.0 + 20.0 * points_m(v, 2));
  return depth_mm;
}

TEST_F(TissueDepths, OneForTheWholeBodyGoesWithABodyThatChanges) {
  open_small();
  const std::size_t before = points();
  edit([&](Plan& plan) {
    plan.tissue_depth_mm.assign(before, 14.0);
    plan.sites_confirmed = SitesConfirmed{"the examiner", "2026-05-04", "felt all round"};
  });
  make_finer();
  ASSERT_NE(points(), before);
  EXPECT_EQ(depths(), std::vector<double>{14.0});
  ASSERT_TRUE(session.checked()->prepared);
  EXPECT_NEAR(session.checked()->prepared->bed.depth_m.minCoeff(), 0.014, 1e-9);
  EXPECT_NEAR(session.checked()->prepared->bed.depth_m.maxCoeff(), 0.014, 1e-9);
  undo();
  EXPECT_EQ(depths(), std::vector<double>(before, 14.0));
}

TEST_F(TissueDepths, OfEachPointStayUntilTheUserTakesThemOver) {
  open_small();
  const std::vector<double> given = rising_along(points_m());
  edit([&](Plan& plan) { plan.tissue_depth_mm = given; });
  EXPECT_FALSE(session.checked()->brought_depths);
  make_finer();
  ASSERT_NE(points(), given.size());
  EXPECT_EQ(depths(), given);
  EXPECT_EQ(session.state(PlanStep::kBody).words, "needs another tissue depth");
  ASSERT_TRUE(session.checked()->brought_depths);
  const BroughtDepths brought = *session.checked()->brought_depths;
  ASSERT_EQ(brought.depth_mm.size(), points());
  EXPECT_GT(brought.farthest / mm, 0.0);
  EXPECT_LT(brought.farthest / mm, 3.0) << "the same limb on a finer mesh";
  const std::vector<double> wanted = rising_along(points_m());
  for (std::size_t v = 0; v < wanted.size(); ++v)
    EXPECT_NEAR(brought.depth_mm[v], wanted[v], 20.0 * brought.farthest.si() + 0.006) << "point " << v;
  edit([&](Plan& plan) { plan.tissue_depth_mm = brought.depth_mm; });
  EXPECT_TRUE(session.checked()->prepared);
  EXPECT_FALSE(session.checked()->brought_depths);
}

TEST_F(TissueDepths, OfEachPointAreStillKnownAfterABodyThatCouldNotBeRead) {
  open_small();
  const std::vector<double> given = rising_along(points_m());
  edit([&](Plan& plan) { plan.tissue_depth_mm = given; });
  edit([](Plan& plan) { std::get<BodyForm>(plan.body).parameters["edge"] = -1.0; });
  ASSERT_TRUE(session.checked()->body_problem);
  make_finer();
  ASSERT_TRUE(session.checked()->brought_depths);
  EXPECT_EQ(session.checked()->brought_depths->depth_mm.size(), points());
}

TEST_F(TissueDepths, GivenForABodyThatWasNeverSeenAreNotTakenOver) {
  open_small();
  edit([](Plan& plan) { plan.tissue_depth_mm = {4.0, 9.0, 11.0}; });
  EXPECT_FALSE(session.checked()->brought_depths);
  make_finer();
  EXPECT_FALSE(session.checked()->brought_depths);
}

}  // namespace
}  // namespace wrapgauge
