#pragma once
// How hard a fastened layout pulls at its closure: the sum of what the tie between its two edges carries.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// 0 for a layout that does not close. `stitch_pa`: as it was solved with.
Force closing_pull(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state,
                   double stitch_pa = SheetSettings{}.stitch_pa);

}  // namespace wrapgauge
