#pragma once
// What the bond of a glued or taped rim bears.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// The largest pull off the skin and shear along it, together, over the area that a point of the rim stands
// for; 0 where no rim is glued. At the rim's inner edge it grows as the mesh gets finer.
Pressure bond_load(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state);

}  // namespace wrapgauge
