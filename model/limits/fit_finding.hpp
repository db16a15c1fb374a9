#pragma once
// What the fit alone tells, before anything is solved: said alike by `look` and beside solved figures.

#include "model/limits/finding.hpp"
#include "model/wrap/fit.hpp"

namespace wrapgauge {

// Warnings, each with its stations: too tight, too loose or unevenly stretched round the body; a layout that
// does not close stretched or pressed together by lying on a curved body; edges that do not meet; a tail
// that goes round again. Where each begins is judgement, said in the sentence.
std::vector<Finding> fit_findings(const Fit& fit);
// Source key of the one that tells the girths.
inline constexpr const char* kRoundKey = "fit round the body";

}  // namespace wrapgauge
