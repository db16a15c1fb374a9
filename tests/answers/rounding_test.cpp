// No rounding hides an excess.
#include <gtest/gtest.h>

#include "model/core/beside_limit.hpp"
#include "tests/answers/many_plans.hpp"

namespace wrapgauge::answers {
namespace {

// The first number of a text such as "2.004 kPa (15.03 mmHg)".
double first_number(const std::string& text) {
  return std::stod(text.substr(text.find_first_of("0123456789")));
}

TEST(AnswerInWords, PrintsEveryExcessAsOne) {
  int excesses = 0;
  for (const AskedPlan& asked : many_plans()) {
    const auto& estimate = answer_of(asked);
    if (!estimate) continue;
    for (const Finding& finding : estimate->findings) {
      if (!finding.measured || finding.measured->amount != Amount::kPressure) continue;
      if (finding.severity < Severity::kAboveLimit ||
          finding.measured->with_factor <= finding.measured->limit)
        continue;
      ++excesses;
      const Pressure limit(finding.measured->limit), raised(finding.measured->with_factor);
      const std::string shown = english(figures_beside(raised, limit)),
                        beside = english(limit_figures(limit)), sentence = english(finding.sentence);
      EXPECT_GT(first_number(shown), first_number(beside)) << asked.words;
      EXPECT_NE(sentence.find(shown), std::string::npos) << sentence << " does not say " << shown;
      EXPECT_NE(sentence.find(beside), std::string::npos) << sentence << " does not say " << beside;
    }
  }
  EXPECT_GE(excesses, 20);
}

}  // namespace
}  // namespace wrapgauge::answers
