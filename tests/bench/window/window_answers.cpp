// What a user waits for: the first picture, the demo's pressures, the preview after a change, the next frame
// while scrubbing; and for how long the window does not answer while an estimate or a note is made.
#include <benchmark/benchmark.h>

#include <QElapsedTimer>
#include <QProcess>
#include <QSlider>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTimer>
#include <algorithm>

#include "app/desk/window/main_window.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/view_area.hpp"
#include "tests/desk_session/on_screen.hpp"
#include "tests/desk_session/wait_until.hpp"

namespace wrapgauge {
namespace {

// The demo in a window with data of its own, solved as a preview.
class DemoWindow {
 public:
  DemoWindow() : window(folder_.path().toStdString()) {
    window.resize(1400, 900);
    window.show();
    window.start({});
    ready_ = wait_for_result();
  }
  bool ready(benchmark::State& state) const {
    if (!ready_) state.SkipWithError("the demo has no result");
    return ready_;
  }
  bool wait_for_result() {
    return wait_until([this] {
      return window.session().solved() && window.session().stale().empty() &&
             !window.session().runner().busy();
    });
  }

 private:
  QTemporaryDir folder_;
  bool ready_ = false;

 public:
  MainWindow window;
};

double seconds(const QElapsedTimer& timer) {
  return 1e-9 * static_cast<double>(timer.nsecsElapsed());
}

// Seen on the screen as a user sees it: the program's own process, from its start.
template <class IsIt>
void time_start(benchmark::State& state, const IsIt& is_it) {
  for (auto _ : state) {
    const QTemporaryDir folder;
    QProcess program;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* place : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"})
      environment.insert(QString::fromLatin1(place), folder.path());
    program.setProcessEnvironment(environment);
    QElapsedTimer timer;
    timer.start();
    program.start(QStringLiteral(WRAPGAUGE_DESK_PROGRAM), {"--colours", "light", "--language", "en"});
    if (!wait_until([&] { return on_screen(is_it); })) state.SkipWithError("it was never seen");
    state.SetIterationTime(seconds(timer));
    program.kill();
    program.waitForFinished();
  }
}

void first_picture(benchmark::State& state) {
  time_start(state, is_bright);
}
BENCHMARK(first_picture)->UseManualTime()->Iterations(3)->Unit(benchmark::kMillisecond);

// The open step's header is violet too, but of one colour: pressures are lighter.
void pressures_of_the_demo(benchmark::State& state) {
  time_start(state, [](const QColor& c) { return c.blue() > c.green() + 60 && c.blue() > 180; });
}
BENCHMARK(pressures_of_the_demo)->UseManualTime()->Iterations(3)->Unit(benchmark::kMillisecond);

// From the change to the result of its preview; `change` makes another one each time.
template <class Change>
void time_preview(benchmark::State& state, const Change& change) {
  DemoWindow demo;
  if (!demo.ready(state)) return;
  int round = 0;
  for (auto _ : state) {
    Plan plan = demo.window.session().plan();
    change(plan, ++round);
    QElapsedTimer timer;
    timer.start();
    demo.window.session().edit(QStringLiteral("change"), plan);
    if (!demo.wait_for_result()) state.SkipWithError("no preview came");
    state.SetIterationTime(seconds(timer));
  }
}

void preview_of_a_pressure(benchmark::State& state) {
  time_preview(state, [](Plan& plan, int round) { plan.inflation[0].target = (2.5 + 0.1 * round) * kPa; });
}
BENCHMARK(preview_of_a_pressure)->UseManualTime()->Iterations(5)->Unit(benchmark::kMillisecond);

void preview_of_a_turn(benchmark::State& state) {
  time_preview(state, [](Plan& plan, int round) { plan.placement.turn_deg = 1.0 + round; });
}
BENCHMARK(preview_of_a_turn)->UseManualTime()->Iterations(5)->Unit(benchmark::kMillisecond);

void preview_of_a_moved_chamber(benchmark::State& state) {
  time_preview(state, [](Plan& plan, int round) {
    for (Vec2& point : plan.layout.chambers[0].boundary_m) point.y() += round % 2 == 1 ? 1e-3 : -1e-3;
    plan.layout_file.reset();
    plan.layout_drawing.reset();
  });
}
BENCHMARK(preview_of_a_moved_chamber)->UseManualTime()->Iterations(4)->Unit(benchmark::kMillisecond);

// The longest time between two events while the plan is estimated on its own mesh and the note is made from
// it, both on a coarse mesh: the note is as long on any.
void longest_stall(benchmark::State& state) {
  DemoWindow demo;
  if (!demo.ready(state)) return;
  demo.window.column().open_step(PlanStep::kNote);
  auto* preview = demo.window.findChild<QTextBrowser*>(QStringLiteral("note preview"));
  int round = 0;
  for (auto _ : state) {
    Plan plan = demo.window.session().plan();
    plan.mesh_edge = (8.8 + 0.1 * ++round) * mm;
    demo.window.session().edit(QStringLiteral("mesh"), plan);
    demo.wait_for_result();
    QElapsedTimer since;
    qint64 longest_ns = 0;
    QTimer beat;
    QObject::connect(&beat, &QTimer::timeout, [&] {
      longest_ns = std::max(longest_ns, since.nsecsElapsed());
      since.restart();
    });
    demo.window.session().estimate_standard();
    since.start();
    beat.start(2);
    const auto note_is_there = [&] {
      return demo.window.session().state(PlanStep::kNote).kind == StepState::Kind::kReady &&
             preview->toPlainText().contains(QStringLiteral("Not a medical device"), Qt::CaseInsensitive);
    };
    if (!wait_until(note_is_there)) state.SkipWithError("no note came");
    state.SetIterationTime(1e-9 * static_cast<double>(longest_ns));
  }
}
BENCHMARK(longest_stall)->UseManualTime()->Iterations(3)->Unit(benchmark::kMillisecond);

// One frame after the next, all views drawn.
void scrubbed_frame(benchmark::State& state) {
  DemoWindow demo;
  if (!demo.ready(state)) return;
  const ShownPlan& shown = demo.window.views().shown();
  const int count = shown.state_count();
  const auto all_read = [&] {
    for (int k = 0; k < count; ++k)
      if (!shown.contact(k)) return false;
    return true;
  };
  if (!wait_until(all_read)) return state.SkipWithError("the states were not read");
  int frame = 0;
  for (auto _ : state) {
    demo.window.views().strip().slider()->setValue(++frame % count);
    demo.window.repaint();
    QCoreApplication::processEvents();
  }
}
BENCHMARK(scrubbed_frame)->UseRealTime()->Iterations(60)->Unit(benchmark::kMillisecond);

// The filling as it is played: between recorded states each frame is a shape of its own. `look`: 0 the
// device, 1 the skin.
void played_frame(benchmark::State& state) {
  DemoWindow demo;
  if (!demo.ready(state)) return;
  demo.window.views().body().show_look(state.range(0) == 0 ? BodyLook::kDevice : BodyLook::kSkin);
  const ShownPlan& shown = demo.window.views().shown();
  const double last = shown.state_count() - 1;
  const auto all_read = [&] {
    for (int k = 0; k < shown.state_count(); ++k)
      if (!shown.contact(k)) return false;
    return true;
  };
  if (!wait_until(all_read)) return state.SkipWithError("the states were not read");
  int frame = 0;
  constexpr int kFrames = 100;
  for (auto _ : state) {
    demo.window.views().selection().show_filling(last * (++frame % kFrames) / kFrames);
    demo.window.repaint();
    QCoreApplication::processEvents();
  }
}
BENCHMARK(played_frame)->Arg(0)->Arg(1)->UseRealTime()->Iterations(100)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace wrapgauge
