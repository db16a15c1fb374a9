#pragma once
// The inputs of a plan, as people change them one at a time.

#include <QString>
#include <vector>

#include "model/plan/plan.hpp"

namespace wrapgauge {

enum class PlanPart { kBody, kTissue, kLayout, kWear, kInflation, kLimits, kSolving, kCalibration };

QString part_words(PlanPart part);  // "the layout", to be read in the middle of a sentence

// Parts in which two plans differ, in the order of work, to the last digit. Neither the plan's name nor the
// file that a layout was read from is an input.
std::vector<PlanPart> changed_parts(const Plan& before, const Plan& after);

// "the layout and the inflation"; empty when nothing changed.
QString parts_words(const std::vector<PlanPart>& parts);

}  // namespace wrapgauge
