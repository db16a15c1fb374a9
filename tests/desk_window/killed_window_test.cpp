#include <QDoubleSpinBox>
#include <QProcess>
#include <iostream>

#include "app/desk/session/recovery_file.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

using RecoveryInWindow = JobTest;

Pressure first_pressure(const Plan& plan) {
  return std::get<Pressure>(plan.inflation[0].target);
}
Length station(const Plan& plan) {
  return std::get<AnchorAtStation>(plan.placement.anchor).station;
}

// Whether a recovery file in `folder` holds this plan's pressure and place.
bool is_kept(const std::filesystem::path& folder, const Plan& plan) {
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() != ".json") continue;  // half written, not yet under its own name
    const auto text = read_file(entry.path());
    if (!text) continue;
    const auto kept = recovered_from_text(*text);
    if (kept && std::abs(first_pressure(kept->plan) / first_pressure(plan) - 1.0) < 1e-9 &&
        std::abs((station(kept->plan) - station(plan)) / mm) < 1e-6)  // as finely as a plan file is written
      return true;
  }
  return false;
}

// Started by the test below in a process of its own, which kills it: a number was typed, and the layout is
// held by the mouse in the middle of a drag.
TEST(DyingWindow, ChangesItsPlanAndHoldsTheLayout) {
  const QString root = qEnvironmentVariable("WRAPGAUGE_DYING_ROOT");
  if (root.isEmpty()) GTEST_SKIP() << "runs only as a part of the test of recovery";
  MainWindow window(root.toStdString());
  window.show();
  window.open_demo();
  wait_until([&] { return window.session().checked() != nullptr; });
  window.column().open_step(PlanStep::kInflation);
  wait_until_at_rest(window);
  hand::type(window, QStringLiteral("Pressure of inlet lean left"), QStringLiteral("1.25"));
  wait_until([&] { return window.session().checked() != nullptr; });
  window.views().body().set_placing(true);
  auto* canvas = window.views().body().findChild<QWidget*>(QStringLiteral("canvas"));
  const QPoint middle = canvas->rect().center();
  QTest::mousePress(canvas, Qt::LeftButton, {}, middle);
  QTest::mouseMove(canvas, middle + QPoint(0, -20));
  const std::filesystem::path folder = std::filesystem::path(root.toStdString()) / "recovery";
  if (!wait_until([&] { return is_kept(folder, window.session().plan()); })) return;
  std::cout << "held" << std::endl;
  for (;;) QTest::qWait(10);
}

TEST_F(RecoveryInWindow, WorkOutlivesAKillInTheMiddleOfADrag) {
  QProcess other;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("WRAPGAUGE_DYING_ROOT"), folder_.path());
  other.setProcessEnvironment(environment);
  other.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--gtest_filter=DyingWindow.*")});
  QByteArray said;
  while (!said.contains("held")) {
    ASSERT_TRUE(other.waitForReadyRead(kNeverComes_ms)) << said.toStdString();
    said += other.readAllStandardOutput();
  }
  other.kill();  // not asked to end: killed
  ASSERT_TRUE(other.waitForFinished(kNeverComes_ms));
  ASSERT_EQ(other.exitStatus(), QProcess::CrashExit);
  window_.start({});
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("did not end well")));
  EXPECT_NEAR(first_pressure(window_.session().plan()) / kPa, 1.25, 1e-9);
  EXPECT_GT(station(window_.session().plan()), 191.0 * mm);
  EXPECT_TRUE(window_.session().modified());
}

}  // namespace
}  // namespace wrapgauge
