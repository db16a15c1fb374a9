#pragma once
// What is above a limit, one plain sentence each: what, where, how much, against which limit from which
// source, what to do. Nothing here ever says that something is safe.

#include <optional>
#include <string>
#include <vector>

#include "model/contact/audit.hpp"
#include "model/contact/contact_map.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

enum class Severity { kNote, kWarn, kAboveLimit };

struct Finding {
  Severity severity = Severity::kNote;
  std::string where;  // chamber, bony site, "whole cuff", "weld", ...
  std::string sentence;
  double share_of_limit = 0.0;  // after the model factor; 0 where no limit applies
};

struct LimitInputs {
  UsePattern use = UsePattern::kSustained;
  std::vector<BonySite> bony_sites;
};

// Worst first.
std::vector<Finding> findings(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                              const LoadPath& path, const EquilibriumState& state, const ContactMap& map,
                              const ContactFigures& figures, const Audit& audit);

// The limit of the row that holds at each flat vertex, Pa. Predicted pressure x limits.model_factor is what
// is compared with it: a contour on a map of predicted pressure lies at limit / model_factor.
Eigen::VectorXd limit_on_layout_pa(const LimitSet& limits, const LimitInputs& inputs,
                                   const InflationSetup& setup, const EquilibriumState& state,
                                   const SheetMesh& sheet, const ContactFigures& figures);

}  // namespace wrapgauge
