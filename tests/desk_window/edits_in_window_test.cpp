#include <QDoubleSpinBox>

#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Edits : public JobTest {
 protected:
  const Layout& layout() { return window_.session().plan().layout; }
  QWidget& flat() { return *window_.views().flat().viewport(); }
  QPoint in_flat(const Vec2& point_m) {
    return window_.views().flat().mapFromScene(1e3 * point_m.x(), -1e3 * point_m.y());
  }
  // Off the middle, where no name stands and no inset seam lies.
  Vec2 inside_m(std::size_t chamber) {
    const Bounds2 box = bounds(layout().chambers[chamber].boundary_m);
    return box.low + 0.2 * (box.high - box.low);
  }
  void undo() { hand::key(window_, Qt::Key_Z, Qt::ControlModifier); }
};

TEST_F(Edits, AChamberDraggedInTheFlatLayoutMovesAndUndoBringsItBack) {
  window_.start({});
  ASSERT_TRUE(wait_for_checks());
  ASSERT_TRUE(wait_until_at_rest(window_));
  const Polygon before = layout().chambers[1].boundary_m;
  const QPoint from = in_flat(inside_m(1));
  hand::drag(flat(), from, from + QPoint(0, -12));
  EXPECT_EQ(window_.views().selection().chamber(), ChamberId(1));
  const double up_m = (layout().chambers[1].boundary_m.front() - before.front()).y();
  EXPECT_GT(up_m, 2e-3);
  EXPECT_TRUE(window_.session().modified());
  picture(QStringLiteral("edit-dragged"));
  undo();
  EXPECT_EQ(layout().chambers[1].boundary_m, before);
  EXPECT_FALSE(window_.session().modified());
}

TEST_F(Edits, AClosingLineAndAPointOfASeamAreDraggedEachUndoneByOneStep) {
  window_.start({});
  ASSERT_TRUE(wait_for_checks());
  ASSERT_TRUE(wait_until_at_rest(window_));
  const Layout before = layout();
  const double first_x = before.closure->from_x_m,
               length = window_.session().checked()->prepared->closing_length->si();
  const QPoint line = in_flat({first_x + length, bounds(before.outline_m).high.y() - 0.004});
  hand::drag(flat(), line, line + QPoint(-12, 0));
  EXPECT_GT(*layout().closure->stretch, *before.closure->stretch)
      << "a shorter closing length is stretched more";
  ASSERT_TRUE(wait_for_checks());
  EXPECT_LT(window_.session().checked()->prepared->closing_length->si(), length - 1e-3);
  undo();
  EXPECT_EQ(layout().closure->stretch, before.closure->stretch);
  hand::click(flat(), in_flat(inside_m(1)));
  const Polygon& drawn = before.chambers[1].boundary_m;
  const QPoint from = in_flat(drawn.front());
  hand::drag(flat(), from, from + QPoint(-14, 0));
  const Polygon& dragged = layout().chambers[1].boundary_m;
  ASSERT_EQ(dragged.size(), drawn.size());
  const Vec2 by = dragged.front() - drawn.front(), middle = 0.5 * (bounds(drawn).low + bounds(drawn).high);
  EXPECT_LT(by.x(), -1e-3);
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    const double along =
        (drawn[i] - middle).dot(drawn.front() - middle) / (drawn.front() - middle).squaredNorm();
    if (along < -0.9) {
      EXPECT_EQ(dragged[i], drawn[i]) << "the corner across moved";
    }
    if ((drawn[i] - drawn.front()).norm() < 4e-3) {
      EXPECT_LT((dragged[i] - drawn[i] - by).norm(), 0.5 * by.norm()) << "the rounding stayed behind";
    }
  }
  picture(QStringLiteral("edit-grips"));
  undo();
  EXPECT_EQ(layout().chambers[1].boundary_m, before.chambers[1].boundary_m);
  EXPECT_FALSE(window_.session().modified());
}

TEST_F(Edits, TheKeyboardAloneMovesAChamberAndTakesItBack) {
  window_.start({});
  ASSERT_TRUE(wait_for_checks());
  const Polygon before = layout().chambers[0].boundary_m;
  hand::key(window_, Qt::Key_3, Qt::AltModifier);
  while (window_.views().selection().chamber() != ChamberId(0)) {
    hand::key(window_, Qt::Key_PageDown);
    ASSERT_TRUE(window_.views().flat().chosen_part().has_value());
  }
  hand::key(window_, Qt::Key_Right);
  EXPECT_NEAR((layout().chambers[0].boundary_m.front() - before.front()).x(), 1e-3, 1e-12);
  undo();
  EXPECT_EQ(layout().chambers[0].boundary_m, before);
}

TEST_F(Edits, UndoAndEstimateAreReachedFromAFieldThatWasTypedIn) {
  window_.start({});
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kInflation);
  auto* field = named<QDoubleSpinBox>(QStringLiteral("pressure of lean left"));
  hand::type(window_, QStringLiteral("Pressure of inlet lean left"), QStringLiteral("1.25"));
  EXPECT_TRUE(field->hasFocus());
  EXPECT_DOUBLE_EQ(field->value(), 1.25);
  hand::key(window_, Qt::Key_E, Qt::ControlModifier);
  EXPECT_TRUE(window_.session().runner().busy());
  hand::key(window_, Qt::Key_Escape);
  EXPECT_FALSE(window_.session().runner().busy());
  undo();
  EXPECT_DOUBLE_EQ(field->value(), 3.0);
}

TEST_F(Edits, APlanSavedOnceIsFoundAmongTheRecentOnes) {
  window_.start({});
  const auto file = root() / "mine.json";
  hand::with_answers([&] { hand::key(window_, Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier); },
                     {hand::give_file(file)});
  EXPECT_TRUE(std::filesystem::exists(file));
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  EXPECT_TRUE(layout().chambers.empty());
  hand::choose_in_menu(window_, {QStringLiteral("Plan"), QStringLiteral("Recent plans"),
                                 QString::fromStdString(file.string())});
  EXPECT_EQ(window_.session().file(), file);
  EXPECT_EQ(layout().chambers.size(), 4U);
}

TEST_F(Edits, UnsavedChangesAreAskedAboutOnceAndKeptOnCancel) {
  window_.start({});
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kInflation);
  hand::type(window_, QStringLiteral("Pressure of inlet lean left"), QStringLiteral("1.25"));
  const auto to_demo = [this] {
    hand::choose_in_menu(window_, {QStringLiteral("Plan"), QStringLiteral("Worked demo")});
  };
  hand::with_answers(to_demo, {hand::say(QStringLiteral("Cancel"))});
  EXPECT_TRUE(window_.session().modified());
  hand::with_answers(to_demo, {hand::say(QStringLiteral("Discard"))});
  EXPECT_FALSE(window_.session().modified());
}

}  // namespace
}  // namespace wrapgauge
