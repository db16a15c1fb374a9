#include "app/job/job.hpp"
#include "tests/desk_window/hand.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

using BadFile = WindowTest;

TEST_F(BadFile, ABadFileIsSaidInTheTerminalsWordsAndThePlanStays) {
  window_.session().start_new();
  const auto file = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/mesh/nan_vertex.obj";
  hand::drop(window_, file);
  ASSERT_TRUE(wait_until([&] { return window_.session().checked() != nullptr; }));
  Plan plan = window_.session().plan();
  const auto terminal = read_body(plan);
  ASSERT_FALSE(terminal.ok());
  const StepState state = window_.session().state(PlanStep::kBody);
  EXPECT_EQ(state.words, QStringLiteral("needs another file"));
  ASSERT_EQ(state.findings.size(), 1);
  EXPECT_EQ(state.findings[0].toStdString(), terminal.problem().message);
  const QString there = window_.views().shown().no_body();
  EXPECT_TRUE(there.startsWith(QStringLiteral("nan_vertex.obj could not be read"))) << there.toStdString();
  EXPECT_TRUE(there.contains(QString::fromStdString(terminal.problem().message)));
  EXPECT_FALSE(there.contains(QStringLiteral("repair it"))) << "no repair brings a number back";
  picture(QStringLiteral("bad-file"));
  hand::drop(window_, root() / "holiday.txt");
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("holiday.txt")));
  hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_FALSE(has_body(window_.session().plan()));
  EXPECT_TRUE(window_.views().shown().no_body().isEmpty());
}

}  // namespace
}  // namespace wrapgauge
