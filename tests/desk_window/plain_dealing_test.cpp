// What a user types, opens or undoes is answered where it happens, and nothing good is lost by it.

#include <nlohmann/json.hpp>

#include "app/desk/window/field_remark.hpp"
#include "app/desk/window/number_field.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class PlainDealing : public JobTest {
 protected:
  void open_small() {
    ASSERT_TRUE(write_plan(small_plan(), root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  }
  Pressure target() { return std::get<Pressure>(window_.session().plan().inflation[0].target); }
};

TEST_F(PlainDealing, ANumberOutOfRangeIsRefusedInWordsAndNotTurnedIntoAnother) {
  open_small();
  open(PlanStep::kInflation);
  auto* field = named<NumberField>(QStringLiteral("pressure of tube"));
  ASSERT_NE(field, nullptr);
  hand::type(window_, field->accessibleName(), QStringLiteral("500"));
  EXPECT_EQ(target(), 2.0 * kPa);
  EXPECT_DOUBLE_EQ(field->value(), 2.0);
  ASSERT_TRUE(is_said(QStringLiteral("500.00 kPa is above")));
  picture(QStringLiteral("number-refused"));
  hand::type(window_, field->accessibleName(), QStringLiteral("3"));
  EXPECT_EQ(target(), 3.0 * kPa);
  EXPECT_FALSE(is_said(QStringLiteral("is above")));
}

TEST_F(PlainDealing, TheTissueFollowsThePart) {
  open_small();
  open(PlanStep::kBody);
  EXPECT_EQ(window_.session().plan().tissue_site, "forearm relaxed");
  hand::choose(window_, QStringLiteral("Part of the person"), QStringLiteral("lower leg"));
  EXPECT_EQ(window_.session().plan().tissue_site, "calf");
  hand::choose(window_, QStringLiteral("Tissue"), QStringLiteral("shin"));
  hand::choose(window_, QStringLiteral("Part of the person"), QStringLiteral("knee"));
  EXPECT_EQ(window_.session().plan().tissue_site, "shin") << "one that suits the part stays";
}

TEST_F(PlainDealing, AFileThatHoldsNoMeshTakesNoGoodBodyAwayAndItsMessageGoesWithTheNextEdit) {
  open_small();
  const auto body = window_.session().plan().body;
  ASSERT_TRUE(write_file_atomically(root() / "bad.obj", "no mesh at all").ok());
  hand::drop(window_, root() / "bad.obj");
  ASSERT_TRUE(wait_until([&] { return !window_.message().words().isEmpty(); }));
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("bad.obj")));
  EXPECT_EQ(window_.session().plan().body, body);
  EXPECT_NE(window_.views().shown().body(), nullptr);
  open(PlanStep::kInflation);
  hand::type(window_, named<NumberField>(QStringLiteral("pressure of tube"))->accessibleName(),
             QStringLiteral("1"));
  EXPECT_TRUE(window_.message().words().isEmpty()) << "it outlives what it was about";
}

TEST_F(PlainDealing, AnotherPlanKeepsNothingOfTheOneBefore) {
  open_small();
  Plan other = small_plan();
  other.body = BodyForm{"forearm", {}, {Sex::kMale, 50.0, BodySide::kRight}};
  ASSERT_TRUE(write_plan(other, root() / "other.json").ok());
  ASSERT_NE(window_.views().shown().body(), nullptr);
  ASSERT_TRUE(window_.session().open(root() / "other.json").ok());
  const ShownPlan& shown = window_.views().shown();
  EXPECT_EQ(shown.body(), nullptr);
  EXPECT_EQ(shown.worn(), nullptr);
  EXPECT_EQ(shown.estimate(), nullptr);
  EXPECT_EQ(shown.no_body(), QStringLiteral("The body is being read…"));
  EXPECT_FALSE(window_.session().ceiling());
  ASSERT_TRUE(wait_until([&] { return shown.body() != nullptr; }));
  EXPECT_TRUE(shown.no_body().isEmpty());
}

TEST_F(PlainDealing, AMissingFileIsAskedForAndFound) {
  const auto layout = root() / "pad-layout.json";
  ASSERT_TRUE(write_file_atomically(layout, layout_to_json(small_layout()).dump()).ok());
  Plan plan = small_plan();
  plan.layout_file = "gone.json";
  ASSERT_TRUE(write_plan(plan, root() / "pad.json").ok());
  hand::with_answers([&] { hand::drop(window_, root() / "pad.json"); },
                     {hand::say(QStringLiteral("Find it…")), hand::give_file(layout)});
  ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  EXPECT_EQ(window_.session().plan().layout, small_layout());
  EXPECT_TRUE(window_.session().modified());
}

}  // namespace
}  // namespace wrapgauge
