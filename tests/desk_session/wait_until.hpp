#pragma once
// Tests of the window wait for states, never for a time: what takes a second on a quiet machine takes a
// minute on a busy one.

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QThread>

namespace wrapgauge {

// So long that only what never comes takes it.
constexpr int kNeverComes_ms = 300000;

// Lets events run until `done`; whether it was done before the time was up.
template <class Done>
bool wait_until(Done done, int most_ms = kNeverComes_ms) {
  QElapsedTimer timer;
  timer.start();
  while (!done()) {
    if (timer.elapsed() > most_ms) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QThread::msleep(2);
  }
  return true;
}

// For what must not come: lets events run for a time in which it would have come.
inline void let_pass(int ms) {
  QElapsedTimer timer;
  timer.start();
  wait_until([&] { return timer.elapsed() >= ms; });
}

}  // namespace wrapgauge
