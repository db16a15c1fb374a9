// How soon the window answers, on a screen that is not there:
//   xvfb-run -a -s "-screen 0 1600x1000x24" build/release/tests/bench/wrapgauge_window_bench
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <iostream>

#include "app/desk/window/look.hpp"

int main(int count, char** arguments) {
  if (qEnvironmentVariableIsEmpty("DISPLAY")) {
    std::cerr << "There is no screen to open the window on: run this under xvfb-run.\n";
    return 2;
  }
  benchmark::Initialize(&count, arguments);
  if (benchmark::ReportUnrecognizedArguments(count, arguments)) return 1;
  QTemporaryDir settings;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
  QApplication application(count, arguments);
  QApplication::setApplicationName(QStringLiteral("wrapgauge-desk"));
  QApplication::setOrganizationName(QStringLiteral("wrapgauge-bench"));
  wrapgauge::apply_look(wrapgauge::Look::kLight);
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
