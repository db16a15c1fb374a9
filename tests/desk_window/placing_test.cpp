// Putting a device on by hand: it is seen where it would lie, also where its ends do not meet.

#include "app/desk/views/rim_part.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Placing : public JobTest {
 protected:
  const ShownPlan& shown() { return window_.views().shown(); }
  void close_at(Length length) {
    Layout layout = window_.session().plan().layout;
    layout.closure = Closure{0.0, length, std::nullopt};
    window_.session().edit_layout(QStringLiteral("Closing"), layout);
  }
};

TEST_F(Placing, ADeviceThatDoesNotMeetIsSeenWithItsGap) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  EXPECT_FALSE(shown().rim());
  open(PlanStep::kWear);
  close_at(420.0 * mm);
  ASSERT_TRUE(wait_for_checks());
  EXPECT_FALSE(window_.session().checked()->prepared);
  ASSERT_TRUE(shown().rim());
  ASSERT_TRUE(shown().rim()->gap);
  EXPECT_TRUE(rim_words(shown()).startsWith(QStringLiteral("The ends do not meet: the layout is ")));
  const ScenePart part = rim_part(shown());
  ASSERT_EQ(part.labels.size(), 1U);
  window_.views().body().show_place(*gap_place(shown()));
  picture(QStringLiteral("placing-gap"));
  EXPECT_NEAR(shown().rim()->gap->missing / mm, 120.0, 0.1) << "straps reach further than the outline";
  window_.session().undo_stack().undo();
  ASSERT_TRUE(wait_for_checks());
  EXPECT_FALSE(shown().rim());
}

TEST_F(Placing, ItsLinesGoWithTheHandBeforeAnythingIsChecked) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  BodyView& body = window_.views().body();
  std::shared_ptr<const LaidRim> before;
  for (const double station : {185.0, 180.0, 175.0}) {
    emit body.anchorMoved({station * mm, 95.0}, Vec3::Zero(), false);
    ASSERT_TRUE(shown().rim()) << "nothing is seen while it is dragged";
    EXPECT_NE(shown().rim(), before);
    before = shown().rim();
  }
  QDir().mkpath(QStringLiteral(WRAPGAUGE_SCREENSHOTS));  // at once: at rest it is put on
  window_.grab().save(QStringLiteral(WRAPGAUGE_SCREENSHOTS "/placing-dragged.png"));
  emit body.anchorMoved({175.0 * mm, 95.0}, Vec3::Zero(), true);
  ASSERT_TRUE(wait_for_result());
  EXPECT_FALSE(shown().rim()) << "the device itself is there now";
  emit body.anchorMoved({175.0 * mm, 95.0}, Vec3::Zero(), true);
  EXPECT_FALSE(shown().rim()) << "nothing moved, so nothing will be checked";
}

}  // namespace
}  // namespace wrapgauge
