// The application lives in main(): one that lived until the libraries' own exit would find their devices
// gone.
#include <gtest/gtest.h>

#include <QApplication>

int main(int count, char** arguments) {
  testing::InitGoogleTest(&count, arguments);
  QApplication application(count, arguments);
  return RUN_ALL_TESTS();
}
