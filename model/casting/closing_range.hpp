#pragma once
// The smallest and the largest girth that a closing layout goes round.

#include "model/casting/casting_check.hpp"

namespace wrapgauge {

// Girths hold at the layout's middle height. The second closing line may lie anywhere from the last chamber
// or channel to the layout's end; the girth there is closing length x (1 + stretch), the stretch being the
// closure's (0 when it gives a closing length).
struct ClosingRange {
  Length shortest, longest;  // closing lengths; the longest leaves nothing to hold it by
  Length longest_held;       // less the overlap of the rules; below `shortest` it cannot be held at all
  double stretch = 0.0;

  Length smallest_girth() const { return (1.0 + stretch) * shortest; }
  Length largest_girth() const { return (1.0 + stretch) * longest; }
  Length largest_held_girth() const { return (1.0 + stretch) * longest_held; }
};

// None for a layout that does not close.
std::optional<ClosingRange> closing_range(const Layout& layout, const CastingRules& rules);

// How much of the outline's height (0 to 1) one of the two lines that meet, at a closing length, lies on the
// sheet or a strap. The layout has a closure.
enum class WhichLine { kFirst, kSecond };
double share_on_sheet(const Layout& layout, Length closing_length, WhichLine which);

// The second closing line, at a closing length, where too little of it lies on the sheet or a strap.
std::optional<CastingFinding> check_second_line(const Layout& layout, Length closing_length,
                                                const CastingRules& rules);

// The overlap that is left at a closing length, when it is less than the rules ask for.
std::optional<CastingFinding> check_overlap(const Layout& layout, Length closing_length,
                                            const CastingRules& rules);

}  // namespace wrapgauge
