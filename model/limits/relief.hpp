#pragma once
// How high the mechanical relief valve of each inlet may be set, should the supply's own valve stick open.
// The one source of these figures: every page reads them here.

#include <string>
#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

struct InletRelief {
  std::string inlet;
  Pressure highest;  // gauge; rounded down to what is printed (setting_of)
  bool operator==(const InletRelief&) const = default;
};

// Read off a path, before they are solved (pipeline/solved_relief.hpp does that). One for each inlet that is
// inflated in the last state of `path`; `map` and `figures` belong to that state. Empty where no row holds,
// nothing is inflated or fastening alone takes more than the rule allows. All inlets are raised together in
// the plan's proportion until some place takes `limits.relief.times_limit` of its limit. Beyond the path a
// place is taken to gain as on the last step, or in proportion to the inflation where that is more. No
// setting passes the rule's cap; none lies more than a quarter above the plan where the air would then press
// harder than times_limit of the strictest limit under the inlet's own chambers: so far beyond the path the
// skin may take all of it.
std::vector<InletRelief> relief_settings(const LimitSet& limits, const LimitInputs& inputs,
                                         const InflationSetup& setup, const LoadPath& path,
                                         const ContactMap& map, const ContactFigures& figures);

// "2.9 kPa (21 mmHg) for inlet 'left', 1.4 kPa (10 mmHg) for inlet 'right'"; empty for none.
std::string relief_text(const std::vector<InletRelief>& relief);
Phrase relief_words(const std::vector<InletRelief>& relief);

// Pressure of a valve on every inlet alike; none where there is none.
std::optional<Pressure> lowest_relief(const std::vector<InletRelief>& relief);

}  // namespace wrapgauge
