#pragma once
// The program's own tables, for the casting tests.

#include <gtest/gtest.h>

#include "model/casting/casting_check.hpp"

namespace wrapgauge::test {

inline CastingRules rules() {
  auto read = read_casting_rules(std::string(WRAPGAUGE_SOURCE_DIR) + "/resources/casting.json");
  EXPECT_TRUE(read) << (read ? "" : read.problem().message);
  return *read;
}

inline SheetGrades grades_of(const Layout& layout) {
  const auto silicones =
      read_silicone_grades(std::string(WRAPGAUGE_SOURCE_DIR) + "/resources/silicones.json");
  EXPECT_TRUE(silicones);
  const auto grades = sheet_grades(layout, *silicones);
  EXPECT_TRUE(grades) << (grades ? "" : grades.problem().message);
  return *grades;
}

inline std::vector<CastingFinding> findings_of(const Layout& layout) {
  return check_casting(layout, grades_of(layout), rules());
}

}  // namespace wrapgauge::test
