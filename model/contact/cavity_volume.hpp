#pragma once
// How the volume of a group of joined chambers is shared among them.

#include <vector>

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// Volume between the sheets over each chamber. A group's volume is cut along the prisms that stand on its
// flat triangles; what lies in its channels is shared in proportion, so the shares of a group sum to the
// state's own group volume.
std::vector<Volume> chamber_volumes(const InflationSetup& setup, const SheetMesh& sheet,
                                    const EquilibriumState& state);

}  // namespace wrapgauge
