// How long the window keeps its user waiting without an answer, and what it costs when nobody does anything.

#include <unistd.h>

#include <QEventLoop>
#include <QFile>
#include <QProcess>
#include <QSlider>
#include <QTimer>

#include "bodyforms/form.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/desk_session/on_screen.hpp"
#include "tests/desk_window/job_fixture.hpp"
#include "tests/desk_window/timed_application.hpp"

namespace wrapgauge {
namespace {

constexpr double kStall_ms = 50.0;  // asked of the window: no turn of its thread is longer

class Stalls : public JobTest {
 protected:
  void open_demo() {
    window_.start({});
    ASSERT_TRUE(wait_for_views());
    TimedApplication::begin_anew();
  }
  void expect_no_stall(const char* doing) {
    const TimedApplication::Turn& longest = TimedApplication::longest();
    EXPECT_LT(longest.ms, kStall_ms) << doing << ": " << longest.of.toStdString();
    std::printf("%-36s longest turn %5.1f ms (%s)\n", doing, longest.ms, longest.of.toStdString().c_str());
    TimedApplication::begin_anew();
  }
};

TEST_F(Stalls, NoneWhileAPressureIsChangedAndThePreviewComes) {
  open_demo();
  open(PlanStep::kInflation);
  wait_until_at_rest(window_);
  expect_no_stall("opening the step Inflation");
  hand::type(window_, QStringLiteral("Pressure of inlet"), QStringLiteral("2.5"));
  ASSERT_TRUE(wait_for_views());
  expect_no_stall("a pressure and its preview");
}

TEST_F(Stalls, NoneWhileTheFillingIsScrubbedAndTheLimbTurned) {
  open_demo();
  auto& slider = *window_.views().strip().findChild<QSlider*>();
  for (int value = slider.minimum(); value <= slider.maximum(); value += 1 + slider.maximum() / 12) {
    slider.setValue(value);
    QCoreApplication::processEvents();
  }
  expect_no_stall("the filling scrubbed");
  hand::drag(canvas(), canvas().rect().center(), canvas().rect().center() + QPoint(90, 10));
  wait_until_at_rest(window_);
  expect_no_stall("the limb turned");
}

TEST_F(Stalls, NoneWhileEachStepIsOpened) {
  open_demo();
  for (const PlanStep step : kPlanSteps) {
    open(step);
    wait_until_at_rest(window_);
    expect_no_stall(("step " + step_name(step).toStdString()).c_str());
  }
}

TEST_F(Stalls, NoneWhileALargeScanIsReadAndTakesThePlaceOfTheBody) {
  open_demo();
  const Body fine = make_form("forearm", {{"edge", 1.5}}).value();
  const auto file = root() / "fine.ply";
  ASSERT_TRUE(write_mesh(fine.surface, file).ok());
  TimedApplication::begin_anew();
  hand::drop(window_, file);
  ASSERT_TRUE(wait_for_checks());
  wait_until_at_rest(window_);
  std::printf("%lld triangles: ", static_cast<long long>(fine.surface.faces.rows()));
  expect_no_stall("a fine scan opened");
}

// What the window's own thread of the process has computed so far, ms; none: it cannot be read.
std::optional<double> window_thread_ms(qint64 process) {
  QFile file(QStringLiteral("/proc/%1/task/%1/stat").arg(process));
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  const QByteArray all = file.readAll();
  const auto fields = all.mid(all.lastIndexOf(')') + 2).split(' ');
  constexpr int kUser = 11, kSystem = 12;  // after the name, which may hold blanks (proc(5))
  const double ticks = fields.value(kUser).toDouble() + fields.value(kSystem).toDouble();
  return 1e3 * ticks / static_cast<double>(sysconf(_SC_CLK_TCK));
}

// The program as a user starts it for the first time.
TEST_F(Stalls, TheFirstWindowIsThereWithinASecondOfWork) {
  constexpr double kFirstWindow_ms = 1000.0;
  window_.hide();
  ASSERT_TRUE(wait_until([] { return !on_screen(is_bright); }));
  QProcess program;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  for (const char* place : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"})
    environment.insert(QString::fromLatin1(place), folder_.path());
  program.setProcessEnvironment(environment);
  program.start(QStringLiteral(WRAPGAUGE_DESK_PROGRAM), {"--colours", "light", "--language", "en"});
  ASSERT_TRUE(wait_until([] { return on_screen(is_bright); }));
  const auto used = window_thread_ms(program.processId());
  program.kill();
  program.waitForFinished();
  ASSERT_TRUE(used);
  std::printf("first window after %.0f ms of work\n", *used);
  EXPECT_LT(*used, kFirstWindow_ms);
}

// But for a cursor that blinks.
TEST_F(Stalls, NothingIsCalculatedWhileNobodyDoesAnything) {
  open_demo();
  const auto stay_idle = [](int ms) {  // without asking for events again and again
    QEventLoop loop;
    QTimer::singleShot(ms, &loop, &QEventLoop::quit);
    loop.exec();
  };
  stay_idle(500);
  constexpr int kIdle_ms = 2000;
  const double before = TimedApplication::program_ms();
  stay_idle(kIdle_ms);
  const double used = TimedApplication::program_ms() - before;
  std::printf("idle for %d ms: %.1f ms of processor time\n", kIdle_ms, used);
  EXPECT_LT(used, 0.01 * kIdle_ms);
}

}  // namespace
}  // namespace wrapgauge
