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
#include "model/limits/people.hpp"
#include "model/limits/programme.hpp"
#include "model/wrap/fit.hpp"

namespace wrapgauge {

// kStop: must not be worn like this at all; a result that holds one is never called done.
enum class Severity { kNote, kWarn, kAboveLimit, kStop };

std::string_view severity_text(Severity severity);  // "note", "warning", "above limit", "stop"

// What presses, stretches or lasts too much comes from it.
enum class Cause {
  kNone,
  kFastening,  // of the closure alone, deflated
  kInflation,
  kEdge,     // an edge or a strap presses harder than the chamber does
  kBone,     // little tissue over bone, nerve, vessel or tendon
  kRunaway,  // a bulge that grows by itself, a sheet stretched beyond what is known
  kTime,     // pressure that would pass for a shorter time
};
std::string_view cause_text(Cause cause);  // "the closure alone", "inflation", ...; kNone: empty

enum class Amount { kPressure, kStrain, kStretch, kExposure };  // Pa, 1, 1, Pa s

// What was predicted against which limit, all in the amount's unit.
struct Measured {
  Amount amount = Amount::kPressure;
  double predicted = 0.0;
  double with_factor = 0.0;  // what is held against the limit; strain and stretch have no factor
  double limit = 0.0;
  Phrase row;  // of the limit: "over bone or a nerve, held for a minute at most"
};

// One card: a fact about one place. Surfaces pick from its fields and choose their length.
struct Finding {
  Severity severity = Severity::kNote;
  std::string where;                     // chamber, bony site, "whole cuff", "seam", ...
  Phrase sentence;                       // the whole of it, with source
  double share_of_limit = 0.0;           // after the model factor; 0 where no limit applies
  std::optional<double> model_factor{};  // the one its sentence speaks of
  Phrase place{};                        // as a card names it: "Closing strap over the ulna"; empty: `where`
  std::optional<Measured> measured{};    // none: nothing is held against a limit
  Cause cause = Cause::kNone;
  Phrase action{};             // one thing to do, which fits the place
  std::string source_key{};    // of the limit's row or rule: "bony, short hold", "tissue strain"
  std::optional<Vec3> at_m{};  // on the skin, where it points; none: no single place
  bool comes_first = false;    // what the others rest on: it stands before them all
};

struct LimitInputs {
  UsePattern use = UsePattern::kSustained;
  std::vector<BonySite> bony_sites;
  std::vector<InflationTarget> targets;               // a group each
  std::optional<Session> session;                     // none: exposure over time is not worked out
  std::vector<std::vector<ProgrammeStep>> programme;  // a group each, when there is a session
  std::optional<BodyPart> part{};                     // none: judged by the strictest rules
  // Sites are marked, or someone gave their word that there are none: else the bony row holds everywhere.
  bool sites_known = false;
  std::optional<Length> bone_anywhere{};  // tissue was taken no deeper than this, as over bone
  std::optional<SitesConfirmed> sites_confirmed{};
  std::optional<Clearance> cleared_by{};
  Fit fit{};
};

// Without exposure, which has its own.
std::vector<Finding> findings(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                              const LoadPath& path, const EquilibriumState& state, const ContactMap& map,
                              const ContactFigures& figures, const Audit& audit);

// What the others rest on, then by severity, within one severity the largest share of a limit first.
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
