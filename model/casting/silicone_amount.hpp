#pragma once
// How much silicone each sheet takes, so that the right amount is mixed.

#include "model/casting/casting_check.hpp"

namespace wrapgauge {

struct SheetAmount {
  std::string sheet;     // "skin sheet", "outer sheet"
  std::string material;  // hardness
  Length thickness;
  Area area;      // as cast: the outline's; less by the prestretch when the sheet is stretched before fusing
  Volume volume;  // area x thickness
  Volume to_mix;  // with the spill allowance
  double grams_to_mix = 0.0;
  std::string density_source;  // of the silicone table's row
};

// Both sheets cover the whole outline, chambers and all; straps are cloth and take none.
std::vector<SheetAmount> silicone_amounts(const Layout& layout, const SheetGrades& grades,
                                          const CastingRules& rules);

}  // namespace wrapgauge
