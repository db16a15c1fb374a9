// Views on a screen: needs an X display with OpenGL 3.2, as xvfb-run gives. Skips loudly without one.

#include <gtest/gtest.h>

#include <QApplication>

int main(int count, char** arguments) {
  testing::InitGoogleTest(&count, arguments);
  if (qEnvironmentVariableIsEmpty("DISPLAY")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(count, arguments);
  return RUN_ALL_TESTS();
}
