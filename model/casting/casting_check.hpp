#pragma once
// Can the layout be cast, and will it behave? Each finding with the number, the place and what to change.

#include <optional>
#include <vector>

#include "model/casting/casting_rules.hpp"
#include "model/core/phrase.hpp"
#include "model/layout/layout.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {

struct CastingFinding {
  CastingRule rule;
  Phrase sentence;     // the number, the place and what to change
  double value = 0.0;  // measured, in the unit of `threshold`
  double threshold = 0.0;
  std::optional<Vec2> place_m;  // in the layout
  std::vector<ProblemPlace> parts;
};

struct SheetGrades {
  SiliconeGrade skin, outer;
};
// Problem: a hardness that is not in the table.
Result<SheetGrades> sheet_grades(const Layout& layout, const std::vector<SiliconeGrade>& silicones);

// Widths of seams, gaps, channels, necks and chambers, thin sheets, sharp corners and notches, curl, twist,
// inlets on or near welds, closing lines off the sheet. The layout has to pass check_layout. Empty when
// nothing was found; in the order of the checks.
std::vector<CastingFinding> check_casting(const Layout& layout, const SheetGrades& grades,
                                          const CastingRules& rules);

// A corner of an open region, with the radius it is rounded by. A polygon's corner stands for a curve that
// was flattened to within 0.05 mm, so the radius is the smaller of
//   chord / (2 sin(turn / 2))  and  0.05 mm / (1 - cos(turn / 2)),
// chord being the shorter of the corner's two sides (derived; the first for a finely, the second for a
// coarsely flattened curve).
struct Corner {
  Vec2 place_m;
  double radius_m;
  double turn_rad;  // > 0: to the left
};
std::vector<Corner> corners(const Polygon& loop);

// How sharply two sheets curl that were fused at different stretch along x, in 1/m of the layout's length
// along x; > 0: its edges come towards the skin, whose sheet was stretched more. Timoshenko 1925, J. Opt.
// Soc. Am. 11, 233-255 (from memory), the logarithm of the ratio of stretches in place of the difference of
// thermal strains: two elastic strips, nothing that holds them, the backing left out. Stretches above zero.
double prestretch_curl(const Sheet& skin, const Sheet& outer, Pressure skin_modulus, Pressure outer_modulus);

}  // namespace wrapgauge
