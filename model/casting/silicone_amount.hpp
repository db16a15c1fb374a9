#pragma once
// How much silicone each sheet and the layer that fuses them take, so that the right amount is mixed.

#include "model/casting/casting_check.hpp"

namespace wrapgauge {

// What is cast besides the layout itself. Zero or more each.
struct CastingAllowance {
  Length trim_border;   // that a sheet reaches beyond the outline, all round
  Length fusing_layer;  // thickness of the liquid layer between the sheets
  double spill = 0.0;   // share of each volume
};
CastingAllowance casting_allowance(const CastingRules& rules);  // the rules' own

struct SheetAmount {
  std::string sheet;     // "skin sheet", "outer sheet", "fusing layer"
  std::string material;  // hardness
  Length thickness;
  Area area;      // as cast, trim border and all; less by the prestretch of a sheet stretched before fusing
  Volume volume;  // area x thickness
  Volume to_mix;  // with the spill
  double grams_to_mix = 0.0;
  std::string density_source;  // of the silicone table's row
};

// Both sheets cover the outline and its trim border, chambers and all; straps are cloth and take none. The
// border's area is perimeter x border + pi border^2: exact for a convex outline (Steiner), a little too much
// round an inward corner. The fusing layer lies where the outline is neither chamber nor channel, and is of
// the outer sheet's material; left out when it has no thickness.
std::vector<SheetAmount> silicone_amounts(const Layout& layout, const SheetGrades& grades,
                                          const CastingAllowance& allowance);

double grams_of(const std::vector<SheetAmount>& amounts);  // in all

// Grams or millilitres with the digits that such an amount deserves: to the nearest 1 below 20, 5 below 200,
// 10 below 1000, 50 above (judgement: densities are from memory and the spill is judgement).
std::string about_amount(double amount);

}  // namespace wrapgauge
