#include "app/desk/views/shown_plan.hpp"

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

}  // namespace
}  // namespace wrapgauge
