#include "model/layout/forms/form_dimensions.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wrapgauge {
namespace {

std::vector<FormDimension> dimensions_of(const std::string& form,
                                         const std::map<std::string, double>& given) {
  const auto layout = make_layout(form, given);
  const auto values = layout_parameters(form, given);
  EXPECT_TRUE(layout && values) << form;
  return layout && values ? form_dimensions(*values, *layout) : std::vector<FormDimension>{};
}

bool has(const std::vector<FormDimension>& all, const std::string& name) {
  return std::any_of(all.begin(), all.end(), [&](const FormDimension& one) { return one.parameter == name; });
}

TEST(FormDimensions, AreAsLongAsTheParametersSay) {
  const std::pair<const char*, std::map<std::string, double>> cases[] = {
      {"cuff", {}},
      {"cuff", {{"rows", 2}, {"chambers", 3}, {"growth", 40}}},
      {"cuff", {{"chambers", 1}}},
      {"sleeve", {}},
      {"sleeve", {{"bands", 1}}},
      {"graduated-sleeve", {}},
      {"round-pad", {}},
      {"round-pad", {{"rings", 0}}},
      {"quilted-pack", {}}};
  for (const auto& [form, given] : cases) {
    SCOPED_TRACE(form);
    const auto values = layout_parameters(form, given);
    for (const FormDimension& one : dimensions_of(form, given)) {
      if (one.parameter == kWidthDimension || one.parameter == "spacing") continue;
      EXPECT_NEAR(1e3 * (one.to_m - one.from_m).norm(), values->at(one.parameter), 0.1) << one.parameter;
    }
  }
}

TEST(FormDimensions, EveryLengthThatIsDrawnHasOne) {
  for (const char* name : {"height", "rim", "corner", "seam", "channel", "overlap", "width"})
    EXPECT_TRUE(has(dimensions_of("cuff", {}), name)) << name;
  for (const char* name : {"diameter", "rim", "seam", "spot-radius"})
    EXPECT_TRUE(has(dimensions_of("round-pad", {}), name)) << name;
  for (const char* name : {"height", "spot-radius", "spacing", "strap-width"})
    EXPECT_TRUE(has(dimensions_of("quilted-pack", {}), name)) << name;
}

TEST(FormDimensions, WhatTheLayoutHasNoneOfHasNoArrow) {
  EXPECT_FALSE(has(dimensions_of("cuff", {{"chambers", 1}}), "seam"));
  EXPECT_FALSE(has(dimensions_of("cuff", {{"overlap", 0}}), "overlap"));
  EXPECT_FALSE(has(dimensions_of("round-pad", {{"rings", 0}}), "seam"));
}

}  // namespace
}  // namespace wrapgauge
