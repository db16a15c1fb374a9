// The bench by hand: readings proposed, typed, fitted and used.

#include <QLabel>
#include <QTableWidget>

#include "app/desk/session/bench_folder.hpp"
#include "app/desk/window/bench_step.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class BenchInWindow : public JobTest {
 protected:
  void open_small() {
    ASSERT_TRUE(write_plan(small_plan(), root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
    open(PlanStep::kBench);
  }
  QTableWidget& readings() { return *named<QTableWidget>(QStringLiteral("readings")); }
  std::string fit_words() { return named<QLabel>(QStringLiteral("fit words"))->text().toStdString(); }
  void propose() {
    hand::press(window_, QStringLiteral("Propose readings"));
    ASSERT_TRUE(wait_until([&] { return readings().rowCount() > 0 && !window_.session().runner().busy(); }))
        << window_.message().words().toStdString();
  }
  // Until it has its ratio.
  void type_read(int row, const QString& words) {
    const QString before = readings().item(row, 3)->text();
    hand::type_in_cell(window_, QStringLiteral("Readings of this kind"), row, 1, words);
    ASSERT_TRUE(wait_until([&] { return readings().item(row, 3)->text() != before; }));
  }
  // All strips of a sheet that is `times` as stiff as predicted.
  void type_strips(double times) {
    for (int row = 0; row < readings().rowCount(); ++row) {
      const double predicted = QLocale().toDouble(readings().item(row, 2)->text());
      type_read(row, QString::number(times * predicted, 'g', 4));
    }
  }
};

TEST_F(BenchInWindow, ReadingsAreProposedTypedFittedAndUsed) {
  open_small();
  EXPECT_TRUE(is_said(QStringLiteral("Off the body first")));
  picture(QStringLiteral("bench-before"));
  propose();
  ASSERT_EQ(readings().rowCount(), 6);
  type_strips(1.4);
  EXPECT_EQ(readings().item(0, 3)->text(), QLocale().toString(1.4)) << "the ratio is not seen at once";
  const auto file = bench_folder(window_.session().file()) / kReadingsName;
  picture(QStringLiteral("bench-typed"));
  hand::press(window_, QStringLiteral("Fit to the readings"));
  ASSERT_TRUE(wait_until([&] { return window_.session().now().fit() != nullptr; }));
  EXPECT_NE(fit_words().find("Skin sheet's law: times 1.4"), std::string::npos) << fit_words();
  picture(QStringLiteral("bench-fitted"));
  hand::press(window_, QStringLiteral("Use the fit"));
  ASSERT_TRUE(wait_until([&] { return state(PlanStep::kBench) == "calibrated on 6 readings: factor 1.5"; }));
  ASSERT_TRUE(wait_for_result());
  EXPECT_TRUE(is_said(QStringLiteral("Predicted by a model calibrated on a bench")));
  picture(QStringLiteral("bench-used"));
  hand::press(window_, QStringLiteral("Leave it out"));
  ASSERT_TRUE(wait_until([&] { return state(PlanStep::kBench) == "not calibrated: factor 1.5"; }));
  EXPECT_TRUE(std::filesystem::exists(file));
}

TEST_F(BenchInWindow, WhatIsTypedIsThereWhenThePlanIsOpenedAgain) {
  open_small();
  propose();
  type_read(0, QStringLiteral("31"));
  hand::choose_in_menu(window_, {QStringLiteral("Plan"), QStringLiteral("New")});
  open(PlanStep::kBench);
  EXPECT_FALSE(readings().isVisible());
  hand::drop(window_, root() / "pad.json");
  ASSERT_TRUE(wait_for_result());
  open(PlanStep::kBench);
  ASSERT_GT(readings().rowCount(), 0);
  EXPECT_EQ(readings().item(0, 1)->text(), QStringLiteral("31"));
}

TEST_F(BenchInWindow, ASlipOfTenIsAskedAboutAndLookedAtAgainByATick) {
  open_small();
  propose();
  type_strips(1.0);
  const QString ten_times = QString::number(10.0 * QLocale().toDouble(readings().item(0, 2)->text()));
  type_read(0, ten_times);
  hand::press(window_, QStringLiteral("Fit to the readings"));
  ASSERT_TRUE(wait_until([&] { return window_.session().now().problem != nullptr; }));
  EXPECT_NE(window_.session().now().problem->message.find("decimal point"), std::string::npos)
      << window_.session().now().problem->message;
  EXPECT_TRUE(readings().item(0, 3)->flags().testFlag(Qt::ItemIsUserCheckable));
  EXPECT_FALSE(readings().item(1, 3)->flags().testFlag(Qt::ItemIsUserCheckable));
  picture(QStringLiteral("bench-asked"));
}

TEST_F(BenchInWindow, WordsForANumberAreRefusedUnderTheTable) {
  open_small();
  propose();
  hand::type_in_cell(window_, QStringLiteral("Readings of this kind"), 0, 1, QStringLiteral("plenty"));
  EXPECT_TRUE(wait_until([&] { return is_said(QStringLiteral("write a number")); }));
  EXPECT_EQ(readings().item(0, 1)->text(), QString()) << "what was refused stands in the table";
}

}  // namespace
}  // namespace wrapgauge
