#pragma once
// A test whose window speaks German.

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>

#include "tests/desk_words/german.hpp"

namespace wrapgauge::test {

class InGerman : public testing::Test {
 protected:
  void SetUp() override {
    QLocale::setDefault(QLocale(QLocale::German));
    QCoreApplication::installTranslator(&german_);
  }
  void TearDown() override {
    QCoreApplication::removeTranslator(&german_);
    QLocale::setDefault(QLocale::c());
  }
  German german_;
};

}  // namespace wrapgauge::test
