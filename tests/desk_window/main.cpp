#include <gtest/gtest.h>

#include <QApplication>
#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTranslator>
#include <iostream>

#include "app/desk/window/look.hpp"
#include "tests/desk_window/timed_application.hpp"

int main(int count, char** arguments) {
  if (qEnvironmentVariableIsEmpty("DISPLAY")) {
    std::cerr << "SKIPPED: no screen, so the window was not tried; run it under xvfb-run.\n";
    return 77;
  }
  testing::InitGoogleTest(&count, arguments);
  QTemporaryDir settings;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
  wrapgauge::TimedApplication application(count, arguments);
  QApplication::setApplicationName(QStringLiteral("wrapgauge-desk"));
  QApplication::setOrganizationName(QStringLiteral("wrapgauge-test"));
  // For pictures only: the tests look for English words.
  QTranslator translation;
  const QString language = qEnvironmentVariable("WRAPGAUGE_TEST_LANGUAGE");
  const QFileInfo program(QStringLiteral(WRAPGAUGE_DESK_PROGRAM));
  if (!language.isEmpty()) {
    if (!translation.load(QStringLiteral("wrapgauge-desk_%1").arg(language), program.absolutePath())) {
      std::cerr << "no words of the language '" << language.toStdString() << "' lie beside the program.\n";
      return 1;
    }
    QApplication::installTranslator(&translation);
    QLocale::setDefault(QLocale(language));
  }
  wrapgauge::apply_look(qEnvironmentVariable("WRAPGAUGE_TEST_LOOK") == QStringLiteral("dark")
                            ? wrapgauge::Look::kDark
                            : wrapgauge::Look::kLight);
  return RUN_ALL_TESTS();
}
