#pragma once
// What is above a limit, one plain sentence each: what, where, how much, against which limit from which
// source, what to do. Nothing here ever says that something is safe.

#include <optional>
#include <string>
#include <vector>

#include "model/contact/audit.hpp"
#include "model/contact/contact_map.hpp"
#include "model/core/phrase.hpp"
#include "model/limits/limit_set.hpp"
#include "model/limits/programme.hpp"

namespace wrapgauge {

// kStop: must not be worn like this at all; a result that holds one is never called done.
enum class Severity { kNote, kWarn, kAboveLimit, kStop };

std::string_view severity_text(Severity severity);  // "note", "warning", "above limit", "stop"

struct Finding {
  Severity severity = Severity::kNote;
  std::string where;  // chamber, bony site, "whole cuff", "weld", ...
  Phrase sentence;
  double share_of_limit = 0.0;           // after the model factor; 0 where no limit applies
  std::optional<double> model_factor{};  // the one its sentence speaks of
};

struct LimitInputs {
  UsePattern use = UsePattern::kSustained;
  std::vector<BonySite> bony_sites;
  std::vector<InflationTarget> targets;               // a group each
  std::optional<Session> session;                     // none: exposure over time is not worked out
  std::vector<std::vector<ProgrammeStep>> programme;  // a group each, when there is a session
};

// Without exposure, which has its own.
std::vector<Finding> findings(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                              const LoadPath& path, const EquilibriumState& state, const ContactMap& map,
                              const ContactFigures& figures, const Audit& audit);

void worst_first(std::vector<Finding>& findings);

// The limit of the row that holds at each flat vertex, Pa. Predicted pressure x limits.model_factor is what
// is compared with it: a contour on a map of predicted pressure lies at limit / model_factor.
Eigen::VectorXd limit_on_layout_pa(const LimitSet& limits, const LimitInputs& inputs,
                                   const InflationSetup& setup, const EquilibriumState& state,
                                   const SheetMesh& sheet, const ContactFigures& figures);

// The row that holds at each flat vertex; null where the set has none.
std::vector<const LimitRow*> rows_on_layout(const LimitSet& limits, const LimitInputs& inputs,
                                            const InflationSetup& setup, const EquilibriumState& state,
                                            const SheetMesh& sheet, const ContactFigures& figures);

}  // namespace wrapgauge
