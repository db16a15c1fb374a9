#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QMenu>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

#include "app/desk/window/body_step.hpp"
#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "tests/desk_window/job_fixture.hpp"

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

// A demo plan, whose body and layout are there.
class DemoFieldsTest : public JobTest {
 protected:
  DemoFieldsTest() { window_.start({}); }

  const Plan& plan() { return window_.session().plan(); }
  void undo() { hand::key(window_, Qt::Key_Z, Qt::ControlModifier); }
  // Ticked or unticked, and taken back.
  template <class Value>
  void tick(const QString& words, const Value& value) {
    const bool before = value();
    hand::press(window_, words);
    EXPECT_NE(value(), before) << words.toStdString();
    EXPECT_EQ(static_cast<QCheckBox*>(hand::button(window_, words))->isChecked(), value());
    undo();
    EXPECT_EQ(value(), before) << words.toStdString();
    EXPECT_EQ(static_cast<QCheckBox*>(hand::button(window_, words))->isChecked(), before);
  }
};

TEST_F(DemoFieldsTest, EachSolverBoxChangesItsOwnSettingAndUndoTakesItBack) {
  open(PlanStep::kNote);
  open_fine_settings(QStringLiteral("Mesh and solving"));
  const InflationOptions before = plan().solver;
  tick(QStringLiteral("Sheets resist bending"), [&] { return plan().solver.bending; });
  tick(QStringLiteral("Sheets carry no compression"), [&] { return plan().solver.relaxed_compression; });
  tick(QStringLiteral("Compare with the other way"), [&] { return plan().compare_wrinkled; });
  hand::press(window_, QStringLiteral("Sheets resist bending"));
  EXPECT_EQ(plan().solver.relaxed_compression, before.relaxed_compression);
  EXPECT_EQ(plan().solver.steps, before.steps);
  EXPECT_EQ(window_.session().stale().size(), window_.session().solved() ? 1U : 0U);
}

TEST_F(DemoFieldsTest, TheEdgeBesideSeamsIsAtMostTheMeshEdgeAndBringsItsBand) {
  open(PlanStep::kNote);
  open_fine_settings(QStringLiteral("Mesh and solving"));
  const auto before = plan().mesh_seam_edge;
  if (!before) hand::press(window_, QStringLiteral("Beside seams"));
  ASSERT_TRUE(plan().mesh_seam_edge);
  hand::type(window_, QStringLiteral("Beside seams"), QStringLiteral("2.5"));
  EXPECT_NEAR(*plan().mesh_seam_edge / mm, 2.5, 1e-12);
  if (!plan().mesh_seam_band) hand::press(window_, QStringLiteral("As far as"));
  hand::type(window_, QStringLiteral("As far as"), QStringLiteral("8"));
  ASSERT_TRUE(plan().mesh_seam_band);
  EXPECT_NEAR(*plan().mesh_seam_band / mm, 8.0, 1e-12);
  hand::type(window_, QStringLiteral("Beside seams"), QStringLiteral("29"));
  EXPECT_EQ(*plan().mesh_seam_edge, plan().mesh_edge) << "coarser beside seams than elsewhere";
  hand::press(window_, QStringLiteral("Beside seams"));
  EXPECT_FALSE(plan().mesh_seam_edge);
  EXPECT_FALSE(plan().mesh_seam_band) << "a band without an edge cannot be read back";
}

TEST_F(DemoFieldsTest, FineSettingsAreShutUntilTheyAreAskedFor) {
  open(PlanStep::kBody);
  const QList<QDoubleSpinBox*> all = window_.findChildren<QDoubleSpinBox*>();
  const auto friction = std::find_if(all.begin(), all.end(), [](const QDoubleSpinBox* field) {
    return field->accessibleName().startsWith(QStringLiteral("Friction"));
  });
  ASSERT_NE(friction, all.end());
  EXPECT_FALSE((*friction)->isVisible());
  open_fine_settings(QStringLiteral("How tissue gives way, and friction"));
  EXPECT_TRUE((*friction)->isVisible());
  hand::type(window_, QStringLiteral("Friction"), QStringLiteral("0.4"));
  EXPECT_EQ(plan().friction, 0.4);
  hand::press(window_, QStringLiteral("Fine settings"));
  EXPECT_FALSE((*friction)->isVisible());
  EXPECT_EQ(plan().friction, 0.4);
}

TEST_F(DemoFieldsTest, ClosingLinesSlantAndBendByNumber) {
  window_.column().open_step(PlanStep::kWear);
  const auto closure = [this] { return plan().layout.closure.value_or(Closure{}); };
  const double taper = closure().taper;
  hand::type(window_, QStringLiteral("Taper of the closing lines"), QStringLiteral("0.12"));
  EXPECT_NEAR(closure().taper, 0.12, 1e-12);
  hand::type(window_, QStringLiteral("Bend of the closing lines"), QStringLiteral("0.05"));
  EXPECT_NEAR(closure().bend, 0.05, 1e-12);
  picture(QStringLiteral("fields-closing-lines"));
  undo();
  undo();
  EXPECT_EQ(closure().bend, 0.0);
  EXPECT_EQ(closure().taper, taper);
}

TEST_F(DemoFieldsTest, PrestretchOfEachSheetIsTypedInPercent) {
  open(PlanStep::kLayout);
  const Layout before = plan().layout;
  hand::type(window_, QStringLiteral("Skin sheet, stretched"), QStringLiteral("5"));
  EXPECT_EQ(plan().layout.skin_sheet.prestretch, 1.05);
  EXPECT_EQ(plan().layout.outer_sheet.prestretch, before.outer_sheet.prestretch);
  hand::type(window_, QStringLiteral("Outer sheet, stretched"), QStringLiteral("12.5"));
  EXPECT_EQ(plan().layout.outer_sheet.prestretch, 1.125);
  EXPECT_EQ(plan().layout.skin_sheet.prestretch, 1.05);
  EXPECT_EQ(plan().layout.skin_sheet.material, before.skin_sheet.material);
  undo();
  EXPECT_EQ(plan().layout.outer_sheet.prestretch, before.outer_sheet.prestretch);
  EXPECT_EQ(plan().layout.skin_sheet.prestretch, 1.05) << "each field is a step of its own";
  undo();
  EXPECT_EQ(plan().layout.skin_sheet.prestretch, before.skin_sheet.prestretch);
}

TEST_F(DemoFieldsTest, OnlyWhatAppliesIsOffered) {
  open(PlanStep::kInflation);
  const QString remove = QStringLiteral("Remove step");
  while (!plan().inflation.front().steps.empty()) hand::press(window_, remove);
  EXPECT_FALSE(hand::button(window_, remove)->isEnabled());
  hand::press(window_, QStringLiteral("Add a step"));
  EXPECT_TRUE(hand::button(window_, remove)->isEnabled());
  open(PlanStep::kWear);
  const auto is_there = [&](const QString& name) {
    for (const auto* field : window_.findChildren<QDoubleSpinBox*>())
      if (field->accessibleName().startsWith(name)) return field->isVisible();
    return false;
  };
  const QString stretch = QStringLiteral("Stretch of the closure"), length = QStringLiteral("Closing length");
  EXPECT_TRUE(is_there(stretch));
  EXPECT_FALSE(is_there(length));
  hand::choose(window_, QStringLiteral("How it closes"), QStringLiteral("Closed at a length"));
  EXPECT_FALSE(is_there(stretch));
  EXPECT_TRUE(is_there(length));
  hand::choose(window_, QStringLiteral("How it closes"), QStringLiteral("Does not go round"));
  EXPECT_FALSE(is_there(length));
  EXPECT_FALSE(is_there(QStringLiteral("First closing line")));
}

TEST_F(DemoFieldsTest, ADepthOfTheTissueHoldsOnTheWholeBodyAndFollowsABodyThatChanges) {
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kBody);
  hand::press(window_, QStringLiteral("Depth"));
  hand::type(window_, QStringLiteral("Depth"), QStringLiteral("14"));
  EXPECT_EQ(plan().tissue_depth_mm, std::vector<double>{14.0});
  ASSERT_TRUE(wait_for_checks());
  ASSERT_TRUE(window_.session().checked()->prepared)
      << window_.session().state(PlanStep::kWear).words.toStdString();
  EXPECT_NEAR(window_.session().checked()->prepared->bed.depth_m.maxCoeff(), 0.014, 1e-9);
  hand::type(window_, QStringLiteral("Edge"), QStringLiteral("5"));
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(plan().tissue_depth_mm, std::vector<double>{14.0}) << "it stayed with the old body";
  ASSERT_TRUE(window_.session().checked()->prepared);
  EXPECT_NEAR(window_.session().checked()->prepared->bed.depth_m.maxCoeff(), 0.014, 1e-9);
  undo();
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(plan().tissue_depth_mm, std::vector<double>{14.0});
  hand::press(window_, QStringLiteral("Depth"));
  EXPECT_TRUE(plan().tissue_depth_mm.empty());
}

TEST_F(DemoFieldsTest, ADepthThatAFileGivesForAnotherBodyIsGivenToThisOneByAButton) {
  ASSERT_TRUE(wait_for_checks());
  Plan other = plan();
  other.tissue_depth_mm.assign(7, 14.0);
  ASSERT_TRUE(write_plan(other, root() / "other.json").ok());
  hand::drop(window_, root() / "other.json");
  open(PlanStep::kBody);
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(state(PlanStep::kBody), "needs another tissue depth");
  EXPECT_TRUE(is_said(QStringLiteral("This depth was given for another body.")));
  picture(QStringLiteral("fields-depth"));
  hand::press(window_, QStringLiteral("Give this depth to the body as it is now"));
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(state(PlanStep::kBody), "ready");
  EXPECT_TRUE(window_.session().checked()->prepared);
}

TEST_F(DemoFieldsTest, DepthsOfEachPointAreTakenOverToABodyThatChangesByAButton) {
  ASSERT_TRUE(wait_for_checks());
  const auto points = [&] {
    return static_cast<std::size_t>(window_.session().last_checked()->body->body.surface.vertices_m.rows());
  };
  Plan uneven = plan();
  uneven.tissue_depth_mm.assign(points(), 14.0);
  uneven.tissue_depth_mm.front() = 9.0;
  window_.session().edit(QStringLiteral("test"), uneven);
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kBody);
  EXPECT_FALSE(is_said(QStringLiteral("another body's mesh")));
  hand::type(window_, QStringLiteral("Edge"), QStringLiteral("5"));
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(state(PlanStep::kBody), "needs another tissue depth");
  EXPECT_TRUE(is_said(QStringLiteral("one depth for each point of another body's mesh")));
  EXPECT_TRUE(is_said(QStringLiteral("which is at most")));
  picture(QStringLiteral("fields-depths"));
  hand::press(window_, QStringLiteral("Take the depths over to the body as it is now"));
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(plan().tissue_depth_mm.size(), points());
  EXPECT_EQ(state(PlanStep::kBody), "ready");
  undo();
  EXPECT_EQ(plan().tissue_depth_mm, uneven.tissue_depth_mm);
}

TEST_F(DemoFieldsTest, AStrapIsAddedChosenAndChangedByNumber) {
  open(PlanStep::kLayout);
  const auto before = plan().layout.straps.size();
  auto* add = static_cast<QPushButton*>(hand::button(window_, QStringLiteral("Add a part to the layout")));
  for (QAction* action : add->menu()->actions())
    if (action->text() == QStringLiteral("Strap")) action->trigger();
  ASSERT_EQ(plan().layout.straps.size(), before + 1);
  ASSERT_TRUE(wait_until_at_rest(window_));
  hand::type(window_, QStringLiteral("Stiffness"), QStringLiteral("35"));
  EXPECT_NEAR(plan().layout.straps.back().stiffness / N_per_mm, 35.0, 1e-9);
  undo();
  undo();
  EXPECT_EQ(plan().layout.straps.size(), before);
}

TEST(NumberField, TakesAPointAndACommaForTheDecimalMarkInEveryLanguage) {
  for (const QLocale::Language language : {QLocale::German, QLocale::English})
    for (const char* typed : {"2.5", "2,5"}) {
      NumberField field(QStringLiteral("pressure"), QStringLiteral("kPa"), {0.0, 100.0, 2, 0.1});
      field.setLocale(QLocale(language));
      field.selectAll();
      QTest::keyClicks(&field, QString::fromLatin1(typed));
      field.interpretText();
      EXPECT_EQ(field.value(), 2.5) << typed << " in " << QLocale(language).name().toStdString();
    }
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
