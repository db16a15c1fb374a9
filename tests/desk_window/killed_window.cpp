#include <QDoubleSpinBox>
#include <QProcess>
#include <csignal>

#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

using RecoveryInWindow = WindowTest;

// Started by the test below in a process of its own.
TEST(DyingWindow, ChangesItsPlanAndIsKilled) {
  const QString root = qEnvironmentVariable("WRAPGAUGE_DYING_ROOT");
  if (root.isEmpty()) GTEST_SKIP() << "runs only as a part of the test of recovery";
  MainWindow window(root.toStdString());
  window.show();
  window.open_demo();
  window.column().open_step(PlanStep::kInflation);
  window.findChild<QDoubleSpinBox*>(QStringLiteral("pressure of lean left"))->setValue(1.25);
  QElapsedTimer timer;
  timer.start();
  while (timer.elapsed() < 2000) QTest::qWait(10);
  std::raise(SIGKILL);
}

TEST_F(RecoveryInWindow, AChangeOutlivesAKillInTheMiddleOfTheWork) {
  QProcess other;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("WRAPGAUGE_DYING_ROOT"), folder_.path());
  other.setProcessEnvironment(environment);
  other.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--gtest_filter=DyingWindow.*")});
  ASSERT_TRUE(other.waitForFinished(120000));
  ASSERT_EQ(other.exitStatus(), QProcess::CrashExit);
  window_.start({});
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("did not end well")));
  EXPECT_NEAR(std::get<Pressure>(window_.session().plan().inflation[0].target) / kPa, 1.25, 1e-9);
  EXPECT_TRUE(window_.session().modified());
}

}  // namespace
}  // namespace wrapgauge
