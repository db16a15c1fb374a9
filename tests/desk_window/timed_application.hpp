#pragma once
// An application that knows which turn of its window's thread took the longest. Processor time is counted,
// not time by the clock: what else the machine does makes no difference.

#include <QApplication>
#include <QString>
#include <chrono>

namespace wrapgauge {

class TimedApplication : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override;

  // One event with all that it sets off at once.
  struct Turn {
    double ms = 0.0;
    QString of;  // who took which event
  };
  static const Turn& longest();
  static void begin_anew();

  // Of the calling thread, and of all threads of the program together.
  static double thread_ms();
  static double program_ms();
};

}  // namespace wrapgauge
