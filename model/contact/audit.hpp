#pragma once
// Does the answer balance? Worked out from stresses and pressures, apart from the solver's own residual.

#include "model/contact/contact_map.hpp"

namespace wrapgauge {

struct Audit {
  double lateral_balance = 0.0;  // |sum of contact force across the axis| / sum of |contact force|
  double axial_balance = 0.0;    // the same along the axis
  Force push_along_axis;         // normal contact pressure alone, along the axis: what friction has to hold
  // Closed layouts: half the worn device cut off by planes through the axis. Contact force on the half
  // against closure and sheet tension and chamber pressure on the cut; worst relative difference over the
  // planes.
  double cut_balance = 0.0;
  int cuts = 0;
  double residual_n = 0.0;
};

Audit audit(const Body& body, const InflationSetup& setup, const LoadPath& path,
            const EquilibriumState& state);

}  // namespace wrapgauge
