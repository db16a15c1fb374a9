#pragma once
// How hard the sheets pull along each weld line: the edge of each chamber and channel, and each inset seam.
//
// At every mesh edge between an open region and a weld each of the two sheets pulls with |P N|, its nominal
// tension (N a mm of weld as drawn) in the triangle on the open side; the harder of the two counts. A weld
// line that is bent towards the open side gathers tension: the concentration is largest over mean along the
// line.

#include <vector>

#include "model/core/phrase.hpp"
#include "model/inflation/load_path.hpp"
#include "model/inflation/membrane_stress.hpp"

namespace wrapgauge {

struct SeamFigures {
  Phrase seam;  // "edge of chamber 'left'", "inset spot 2 of chamber 'left'"
  bool inset = false;
  LineTension largest, mean;  // mean over the length of the line
  double concentration = 1.0;
  Vec2 at_flat_m = Vec2::Zero();  // where the largest is
  Phrase sheet;                   // that pulls hardest there: "skin" or "outer"
  Length length;
};

// Largest tension first: what a seam holds is not known, so they are ranked by tension alone.
std::vector<SeamFigures> seam_figures(const InflationSetup& setup, const SheetMesh& sheet,
                                      const SheetStress& stress);

}  // namespace wrapgauge
