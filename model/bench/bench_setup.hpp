#pragma once
// The plan's device as it is read on a bench: off every body, by the same mechanics as on one.

#include "model/core/result.hpp"
#include "model/inflation/load_path.hpp"
#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// How the device lies while it is read.
enum class Bedding {
  kTable,    // outer sheet down on a flat table, free, under its own weight; a closure is left open
  kClamped,  // all that is fused is held flat, such as between two boards with holes
  kPlate,    // on a table, under a rigid plate at a fixed height over it
};

// The whole layout flat and unfastened, its straps left out. As everywhere the outer sheet lies towards +z:
// the table is above it in this frame and what weighs points up. `gap`: from table to plate, only of kPlate.
// Weight: of the silicones alone. Problems: those of the layout's mesh; an unknown silicone; a gap that the
// empty device does not fit into (both in mm).
Result<InflationSetup> bench_setup(const Plan& plan, const Resources& resources, const FlatMeshOptions& mesh,
                                   Bedding bedding, Length gap = {});

// The flat vertex of the chamber that lies nearest to its middle, where a bulge is highest.
int middle_vertex(const InflationSetup& setup, ChamberId chamber);

// Of the skin sheet's bulge: from the table, or from where the fused sheets are held, to the face of the
// sheet, which a bulge makes thinner.
Length bulge_height(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                    int flat_vertex, Bedding bedding);

}  // namespace wrapgauge
