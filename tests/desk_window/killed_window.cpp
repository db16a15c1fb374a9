#include <QDoubleSpinBox>
#include <QProcess>
#include <iostream>

#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

using RecoveryInWindow = JobTest;

// Started by the test below in a process of its own, which kills it: a number was typed, and the layout is
// held by the mouse in the middle of a drag.
TEST(DyingWindow, ChangesItsPlanAndHoldsTheLayout) {
  const QString root = qEnvironmentVariable("WRAPGAUGE_DYING_ROOT");
  if (root.isEmpty()) GTEST_SKIP() << "runs only as a part of the test of recovery";
  MainWindow window(root.toStdString());
  window.show();
  window.open_demo();
  while (!window.session().checked()) QTest::qWait(5);
  window.column().open_step(PlanStep::kInflation);
  QTest::qWait(100);
  hand::type(window, QStringLiteral("Pressure of inlet lean left"), QStringLiteral("1.25"));
  while (!window.session().checked()) QTest::qWait(5);
  window.views().body().set_placing(true);
  auto* canvas = window.views().body().findChild<QWidget*>(QStringLiteral("canvas"));
  const QPoint middle = canvas->rect().center();
  QTest::mousePress(canvas, Qt::LeftButton, {}, middle);
  QTest::mouseMove(canvas, middle + QPoint(0, -20));
  QTest::qWait(1000);
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
    ASSERT_TRUE(other.waitForReadyRead(120000)) << said.toStdString();
    said += other.readAllStandardOutput();
  }
  other.kill();  // not asked to end: killed
  ASSERT_TRUE(other.waitForFinished(10000));
  ASSERT_EQ(other.exitStatus(), QProcess::CrashExit);
  window_.start({});
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("did not end well")));
  EXPECT_NEAR(std::get<Pressure>(window_.session().plan().inflation[0].target) / kPa, 1.25, 1e-9);
  EXPECT_GT(std::get<AnchorAtStation>(window_.session().plan().placement.anchor).station, 191.0 * mm);
  EXPECT_TRUE(window_.session().modified());
}

}  // namespace
}  // namespace wrapgauge
