#include "tests/desk_window/timed_application.hpp"

#include <time.h>

#include <QEvent>
#include <utility>

namespace wrapgauge {
namespace {

TimedApplication::Turn longest_turn;
int depth = 0;

double clock_ms(clockid_t clock) {
  timespec time{};
  clock_gettime(clock, &time);
  return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
}

}  // namespace

double TimedApplication::thread_ms() {
  return clock_ms(CLOCK_THREAD_CPUTIME_ID);
}

double TimedApplication::program_ms() {
  return clock_ms(CLOCK_PROCESS_CPUTIME_ID);
}

const TimedApplication::Turn& TimedApplication::longest() {
  return longest_turn;
}

void TimedApplication::begin_anew() {
  longest_turn = {};
}

bool TimedApplication::notify(QObject* receiver, QEvent* event) {
  if (depth > 0) return QApplication::notify(receiver, event);
  // The receiver may be gone when its event is done.
  const QString of = QStringLiteral("%1, event %2")
                         .arg(QString::fromLatin1(receiver->metaObject()->className()))
                         .arg(static_cast<int>(event->type()));
  ++depth;
  const double began = thread_ms();
  const bool taken = QApplication::notify(receiver, event);
  const double ms = thread_ms() - began;
  --depth;
  if (ms > longest_turn.ms) longest_turn = {ms, of};
  return taken;
}

}  // namespace wrapgauge
