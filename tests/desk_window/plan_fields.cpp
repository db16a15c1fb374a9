#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QTableWidget>

#include "app/desk/window/body_step.hpp"
#include "app/desk/window/choice.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

// What a plan file can say, said by the fields of the window.
class PlanFieldsTest : public WindowTest {
 protected:
  PlanFieldsTest() { window_.session().start_new(); }

  const Plan& plan() { return window_.session().plan(); }
  void undo() { window_.session().undo_stack().undo(); }
  void type(const QString& field, double value) { named<QDoubleSpinBox>(field)->setValue(value); }
  void choose(const QString& list, const QVariant& value) {
    auto* choice = named<Choice>(list);
    choice->setCurrentIndex(choice->findData(value));
    emit choice->activated(choice->currentIndex());
  }
};

TEST_F(PlanFieldsTest, PlacesOnTheSkinAreAddedChangedAndTakenBack) {
  window_.column().open_step(PlanStep::kBody);
  SkinPlacePanel& places = window_.body_step().places();
  places.show_picked(Vec3(0.01, 0.04, 0.12));
  places.add_place(NewSkinPlace::kBonySite);
  ASSERT_EQ(plan().bony_sites.size(), 1U);
  EXPECT_EQ(plan().bony_sites[0].point_m, Vec3(0.01, 0.04, 0.12));
  type(QStringLiteral("place x"), 12.0);
  type(QStringLiteral("place radius"), 22.0);
  EXPECT_NEAR(plan().bony_sites[0].point_m.x(), 0.012, 1e-12);
  EXPECT_NEAR(plan().bony_sites[0].radius / mm, 22.0, 1e-12);
  places.add_place(NewSkinPlace::kNoGo);
  ASSERT_EQ(plan().regions.size(), 1U);
  EXPECT_TRUE(plan().regions[0].no_go);
  named<QCheckBox>(QStringLiteral("no-go"))->click();
  EXPECT_FALSE(plan().regions[0].no_go);
  EXPECT_EQ(plan().regions[0].stiffness_factor, 1.0);
  type(QStringLiteral("region stiffness"), 3.0);
  EXPECT_EQ(plan().regions[0].stiffness_factor, 3.0);
  picture(QStringLiteral("fields-places"));
  for (int i = 0; i < 6; ++i) undo();
  EXPECT_TRUE(plan().bony_sites.empty());
  EXPECT_TRUE(plan().regions.empty());
}

TEST_F(PlanFieldsTest, TissueSheetsAndSolvingSayAllThatAPlanFileSays) {
  window_.column().open_step(PlanStep::kBody);
  choose(QStringLiteral("tissue model"), int(TissueModel::kCoupled));
  EXPECT_EQ(plan().tissue_model, TissueModel::kCoupled);
  window_.column().open_step(PlanStep::kNote);
  type(QStringLiteral("recorded states"), 4);
  EXPECT_EQ(plan().solver.steps, 4);
  type(QStringLiteral("mesh edge"), 5.0);
  EXPECT_NEAR(plan().mesh_edge / mm, 5.0, 1e-12);
  named<QLineEdit>(QStringLiteral("plan name"))->setText(QStringLiteral("night cuff"));
  emit named<QLineEdit>(QStringLiteral("plan name"))->editingFinished();
  EXPECT_EQ(plan().name, "night cuff");
  for (int i = 0; i < 4; ++i) undo();
  EXPECT_EQ(plan().tissue_model, TissueModel::kFoundation);
  EXPECT_NE(plan().name, "night cuff");
}

TEST_F(PlanFieldsTest, AFieldThatIsNotTouchedKeepsEveryDigitOfThePlan) {
  Plan digits = plan();
  digits.session = Session{12.25 * minute, 30.125 * second, 60.0 * second, 0.375 * second};
  window_.session().edit(QStringLiteral("test"), digits);
  window_.column().open_step(PlanStep::kInflation);
  type(QStringLiteral("dead volume"), 3.0);
  EXPECT_NEAR(plan().supply.dead_volume / mL, 3.0, 1e-12);
  EXPECT_EQ(plan().session->hold, 30.125 * second);
  EXPECT_EQ(plan().session->ramp, 0.375 * second);
}

}  // namespace
}  // namespace wrapgauge
