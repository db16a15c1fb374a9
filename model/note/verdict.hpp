#pragma once
// What an estimate came to, in one sentence that stands first on every surface.

#include "model/note/summary.hpp"

namespace wrapgauge {

// "Above the limit in 3 places; worst: left back, 112 % of 4.0 kPa (30 mmHg)."
Phrase verdict(const Summary& summary);

// "4.0 kPa (30 mmHg)", "30 %", "2.0", "13.3 kPa·min": what is held against a limit beside that limit, and the
// limit itself.
struct MeasuredFigures {
  Phrase predicted, with_factor, limit;
};
MeasuredFigures figures_of(const Measured& measured);

// "3.0 kPa (23 mmHg), with the factor 4.5 kPa (34 mmHg), limit 4.0 kPa (30 mmHg)"
Phrase measured_words(const Measured& measured);

// "Cause: inflation. Lower the pressure ..."; either may be missing.
Phrase cause_and_action(const Finding& finding);

// How much of its limit a finding takes, as it stands beside its figures everywhere: what is held against the
// limit, over the limit. Of a stretch 3.0 against 2.0 that is 1.5, whatever orders the findings.
double said_share(const Finding& finding);

// One line: "Left back: 3.0 kPa (23 mmHg), with the factor 4.5 kPa (34 mmHg), limit 4.0 kPa (30 mmHg): 112 %.
// Cause: inflation. Lower the pressure ...". The sentence itself where nothing was measured.
Phrase card_line(const Finding& finding);

// Limits and tables that are not those that the program ships, a sentence each; every output carries them.
std::vector<std::string> not_the_programs_own(const Summary& summary);

// The place as a card names it.
Phrase place_of(const Finding& finding);

}  // namespace wrapgauge
