#pragma once
#include <string>

#include "model/note/summary.hpp"

namespace wrapgauge {

// Every figure of an estimate, units in the keys (kPa, mmHg, mL, N, mm), rounded to what a prediction
// deserves. Documented in docs/command-line.md.
std::string summary_json(const Summary& summary);

}  // namespace wrapgauge
