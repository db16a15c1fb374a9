#pragma once
// What no solved shape can be, whatever balances in it; looked at before it is called a result.

#include <optional>
#include <vector>

#include "model/inflation/sheet_contact.hpp"

namespace wrapgauge {

// Air closed in with a group, as its volume at atmospheric pressure.
struct ClosedAir {
  double air_m3 = 0.0, dead_m3 = 0.0;
};

// How far a state may miss each. Judgement, but that the sheets' share is what their contact is made for.
struct PossibleState {
  double least_volume_m3 = -1e-9;  // of a group or chamber: 1 mm3 is rounding, printed as 0.0 mL
  double sheet_share = 0.02;       // of the thinner sheet: the sheets through one another, a cell's mean
  double air_share = 1e-6;         // of the air closed in: gone or come
};

// None, or kNotConverged in one sentence: a chamber below zero, sheets through one another, air that
// vanished. `cells`: of gap_cells() for the same mesh. `air`: of each group that holds some. Volumes are
// added up prism by prism between the sheets, apart from the solver's own closed surface.
std::optional<Problem> why_impossible(const InflationSetup& setup, const SheetMesh& sheet,
                                      const std::vector<GapCell>& cells, const EquilibriumState& state,
                                      const std::vector<std::optional<ClosedAir>>& air,
                                      const PossibleState& may_miss = {});

}  // namespace wrapgauge
