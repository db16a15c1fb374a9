#include "model/study/ceiling_report.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

std::string inlet_text(const CeilingInlet& inlet) {
  const std::string pressure = setting_text(inlet.gauge),
                    volume = fixed_text(rounded_down(inlet.volume / mL, 0.1), 1) + " mL";
  if (inlet.pushed)
    return "'" + inlet.inlet + "' " + fixed_text(rounded_down(*inlet.pushed / mL, 0.1), 1) +
           " mL of air pushed in, at " + pressure;
  return "'" + inlet.inlet + "' " +
         (inlet.by_volume ? volume + " at " + pressure : pressure + ", holding " + volume);
}

std::string inlets_text(const std::vector<CeilingInlet>& inlets) {
  std::string text;
  for (const CeilingInlet& inlet : inlets) text += (text.empty() ? "" : "; ") + inlet_text(inlet);
  return text;
}

std::string scope_text(const InletCeiling& ceiling) {
  return ceiling.inlet
             ? "Highest inflation within the limits, inlet '" + *ceiling.inlet + "' alone, the others open: "
             : "Highest inflation within the limits, all inlets in the plan's proportion: ";
}

std::string reach_text(const InletCeiling& ceiling) {
  return inlets_text(ceiling.inlets) + " (" + percent_text(ceiling.at.inflation) +
         " of what the plan asks for).";
}

std::string limit_point_text(const InletCeiling& ceiling) {
  const std::string& chambers = ceiling.limit_chambers;
  switch (ceiling.limit_kind.value_or(LimitKind::kRunsAway)) {
    case LimitKind::kOverstretched:
      return "a sheet of chamber " + chambers +
             " is stretched further than its material is known for, before any limit is met; take a "
             "thicker or stiffer sheet.";
    case LimitKind::kFolds:
      return "a sheet folds while chamber " + chambers +
             " is filled, before any limit is met, and a fold presses in a line, harder than any "
             "figure here; fasten it more loosely or take a thicker sheet.";
    case LimitKind::kRunsAway:
      break;
  }
  return "the bulge of chamber " + chambers +
         " runs away, before any limit is met; fill by volume, or take a thicker or stiffer sheet.";
}

// What is said of a check, without doubling the full stop.
std::string said_of(const LimitShare& nearest) {
  const bool ends = !nearest.sentence.empty() && nearest.sentence.back() == '.';
  return nearest.sentence + (ends ? "" : ".");
}

std::string stop_text(const InletCeiling& ceiling) {
  if (ceiling.stop == CeilingStop::kLimitPoint)
    return "What stops it: above this " + limit_point_text(ceiling);
  if (ceiling.stop == CeilingStop::kNoEquilibrium)
    return "What stops it: above this the solver found no equilibrium, so there are no numbers, though no "
           "limit is met below it.";
  if (!ceiling.above || !ceiling.above->equilibrium)
    return "What stops it: '" + ceiling.at.nearest.where + "'.";
  const LimitShare& above = ceiling.above->nearest;
  if (above.of_time)
    return "What stops it is time, not pressure: 5 % above, a place counts as pressed and not as rested. " +
           said_of(above);
  return "What stops it: '" + above.where + "'; 5 % above: " + said_of(above);
}

std::string check_text(const CeilingCheck& check) {
  if (!check.equilibrium) return "there is no equilibrium";
  const LimitShare& nearest = check.nearest;
  const std::string peak = " (predicted peak anywhere " + pressure_text(check.peak) + ")";
  if (nearest.above() && nearest.share <= 1.0) return "'" + nearest.where + "' is above a limit" + peak;
  return "'" + nearest.where + "' is highest, at " + percent_text(nearest.share) + " of its limit" + peak;
}

std::string verified_text(const InletCeiling& ceiling) {
  std::string text = "Solved there: " + check_text(ceiling.at);
  if (ceiling.above) text += "; solved 5 % above it: " + check_text(*ceiling.above);
  return text +
         (ceiling.confirmed() ? "." : ". NOT CONFIRMED: 5 % above it nothing is above a limit either.");
}

// What stops everything: "Deflated and only fastened, 'pad' is already at 140 % of its limit."
std::string none_text(const CeilingCheck& check) {
  const LimitShare& nearest = check.nearest;
  const std::string when = check.inflation > 0.0 ? "Already at " + number_text(100.0 * check.inflation, 2) +
                                                       " % of what the plan asks for, '"
                                                 : "Deflated and only fastened, '";
  return when + nearest.where + "' is " +
         (nearest.share > 1.0 ? "already at " + percent_text(nearest.share) + " of its limit."
                              : "already above a limit.");
}

std::string none_advice(const CeilingCheck& check) {
  if (check.nearest.of_time)
    return std::string(
               " What breaks the rule is time, not pressure: shorten the hold or the session, or rest "
               "longer") +
           (check.inflation <= 0.0 ? "; or loosen the closure, so that vented places rest." : ".");
  if (check.inflation <= 0.0 && check.nearest.share > 1.0)
    return " Inflating only adds to it: loosen the closure first.";
  return "";
}

void say_ceiling(const InletCeiling& ceiling, std::vector<std::string>& words) {
  if (ceiling.stop == CeilingStop::kAlreadyAbove) {
    words.push_back(scope_text(ceiling) + "none. " + none_text(ceiling.at) + " " +
                    said_of(ceiling.at.nearest) + none_advice(ceiling.at));
    return;
  }
  if (ceiling.stop == CeilingStop::kWithin) {
    words.push_back(scope_text(ceiling) + "no limit is met up to " + reach_text(ceiling) +
                    " Ask for more in the plan to look further.");
    return;
  }
  words.push_back(scope_text(ceiling) + reach_text(ceiling));
  words.push_back(stop_text(ceiling));
  words.push_back(verified_text(ceiling));
}

std::string valves_text(const ReliefCheck& relief) {
  std::string text = "Set the relief valve no higher than " + relief_text(relief.settings) +
                     ". The rule: " + relief.rule +
                     ". Solved with every inlet there, the most pressed place takes " +
                     percent_text(relief.place_share) + " of its limit.";
  if (relief.too_high) text += " ABOVE LIMIT: " + *relief.too_high;
  return text;
}

std::string share_text(const CeilingCheck& check) {
  if (!check.equilibrium) return "no equilibrium";
  if (check.nearest.above() && check.nearest.share <= 1.0) return "above a limit";
  return percent_text(check.nearest.share) + " of the limit";
}

std::string stop_brief(const InletCeiling& ceiling) {
  if (ceiling.limit_kind == LimitKind::kOverstretched)
    return "above it a sheet of " + ceiling.limit_chambers + " is stretched too far";
  if (ceiling.limit_kind == LimitKind::kFolds)
    return "above it a sheet folds while " + ceiling.limit_chambers + " is filled";
  if (ceiling.limit_kind) return "above it the bulge of " + ceiling.limit_chambers + " runs away";
  if (ceiling.stop == CeilingStop::kNoEquilibrium) return "above it no equilibrium was found";
  const bool known = ceiling.above && ceiling.above->equilibrium;
  if (known && ceiling.above->nearest.of_time) return "time stops it, not pressure";
  return "'" + (known ? ceiling.above->nearest.where : ceiling.at.nearest.where) + "' stops it";
}

std::string brief_text(const InletCeiling& ceiling) {
  const std::string scope = ceiling.inlet ? "With only '" + *ceiling.inlet + "' inflated: " : "";
  if (ceiling.stop == CeilingStop::kAlreadyAbove)
    return scope + "No inflation is within the limits. " + none_text(ceiling.at) + none_advice(ceiling.at);
  if (ceiling.stop == CeilingStop::kWithin)
    return scope + "No limit was met up to " + inlets_text(ceiling.inlets) + ".";
  std::string text = scope + "Highest inflation within the limits: " + inlets_text(ceiling.inlets) + ", " +
                     percent_text(ceiling.at.inflation) + " of the plan's; " + stop_brief(ceiling) +
                     ". Solved there: " + share_text(ceiling.at);
  if (ceiling.above) text += "; 5 % above: " + share_text(*ceiling.above);
  return text + (ceiling.confirmed() ? "." : ". NOT CONFIRMED.");
}

std::string counted_text(const Ceiling& ceiling) {
  return "Predicted pressures are multiplied by " + number_text(ceiling.model_factor, 3) +
         ", the model factor" +
         (ceiling.spread_factor > 1.0 ? ", and again by " + number_text(ceiling.spread_factor, 3) +
                                            " for the spread of the inputs (95th percentile of the runs)"
                                      : "; the spread of the inputs is left out");
}

std::string basis_text(const Ceiling& ceiling) {
  return counted_text(ceiling) + ". Mesh edge " + fixed_text(ceiling.edge / mm, 1) + " mm. " + ceiling.model +
         ". Not a medical device; measure on a bench before anyone wears it, and ask a clinician.";
}

double rounded(double value) {
  return std::round(value * 1e4) / 1e4;
}

// Of a setting, which is never rounded up.
double floored(double value) {
  return rounded(rounded_down(value, 1e-4));
}

struct LimitKindName {
  const char *stop, *where;  // values and keys of the JSON
};

LimitKindName name_of(LimitKind kind) {
  switch (kind) {
    case LimitKind::kOverstretched:
      return {"sheet stretched too far", "overstretched_in"};
    case LimitKind::kFolds:
      return {"sheet folds", "folds_in"};
    case LimitKind::kRunsAway:
      break;
  }
  return {"runs away", "runs_away_in"};
}

const char* stop_name(const InletCeiling& ceiling) {
  if (ceiling.limit_kind) return name_of(*ceiling.limit_kind).stop;
  switch (ceiling.stop) {
    case CeilingStop::kNoEquilibrium:
      return "no equilibrium found above";
    case CeilingStop::kAlreadyAbove:
      return "above a limit before anything is inflated";
    case CeilingStop::kWithin:
      return "nothing met";
    default:
      break;
  }
  return "limit";
}

Json inlets_json(const std::vector<CeilingInlet>& inlets) {
  Json list = Json::array();
  for (const CeilingInlet& inlet : inlets)
    list.push_back({{"inlet", inlet.inlet},
                    {"by", inlet.pushed      ? "air pushed in"
                           : inlet.by_volume ? "volume"
                                             : "pressure"},
                    {"pushed_mL", inlet.pushed ? Json(floored(*inlet.pushed / mL)) : Json()},
                    {"gauge_kPa", floored(inlet.gauge / kPa)},
                    {"gauge_mmHg", floored(inlet.gauge / mmHg)},
                    {"volume_mL", floored(inlet.volume / mL)}});
  return list;
}

Json check_json(const CeilingCheck& check) {
  Json json{{"share_of_plan", rounded(check.inflation)}, {"equilibrium", check.equilibrium}};
  if (!check.equilibrium) return json;
  json["share_of_limit"] = rounded(check.nearest.share);
  json["severity"] = severity_text(check.nearest.severity);
  json["where"] = check.nearest.where;
  json["of_time"] = check.nearest.of_time;
  json["sentence"] = check.nearest.sentence;
  json["peak_kPa"] = rounded(check.peak / kPa);
  return json;
}

Json relief_json(const ReliefCheck& relief) {
  Json json{{"inlets", Json::array()},
            {"words", relief_text(relief.settings)},
            {"rule", relief.rule},
            {"share_of_limit", rounded(relief.place_share)},
            {"too_high", relief.too_high ? Json(*relief.too_high) : Json()}};
  for (const InletRelief& inlet : relief.settings)
    json["inlets"].push_back({{"inlet", inlet.inlet},
                              {"gauge_kPa", floored(inlet.highest / kPa)},
                              {"gauge_mmHg", floored(inlet.highest / mmHg)}});
  return json;
}

Json ceiling_of_inlet(const InletCeiling& ceiling) {
  Json json{{"inlet", ceiling.inlet ? Json(*ceiling.inlet) : Json()},
            {"stop", stop_name(ceiling)},
            {"inlets", inlets_json(ceiling.inlets)},
            {"at", check_json(ceiling.at)},
            {"five_percent_above", ceiling.above ? check_json(*ceiling.above) : Json()},
            {"confirmed", ceiling.confirmed()},
            {"solves", ceiling.solves}};
  if (ceiling.limit_kind) json[name_of(*ceiling.limit_kind).where] = ceiling.limit_chambers;
  return json;
}

}  // namespace

std::string percent_text(double share) {
  const double percent = 100.0 * share;
  if (share <= 1.0) return fixed_text(rounded_down(percent, 1.0), 0) + " %";
  int decimals = 0;
  for (double scale = 1.0; decimals < 6 && std::round(percent * scale) <= 100.0 * scale; scale *= 10.0)
    ++decimals;
  return fixed_text(percent, decimals) + " %";
}

std::vector<std::string> ceiling_words(const Ceiling& ceiling) {
  std::vector<std::string> words;
  say_ceiling(ceiling.together, words);
  if (ceiling.relief) words.push_back(valves_text(*ceiling.relief));
  for (const InletCeiling& alone : ceiling.alone) say_ceiling(alone, words);
  if (ceiling.limits_override) words.push_back(*ceiling.limits_override);
  words.push_back(basis_text(ceiling));
  return words;
}

std::vector<std::string> ceiling_brief(const Ceiling& ceiling) {
  std::vector<std::string> words{brief_text(ceiling.together)};
  for (const InletCeiling& alone : ceiling.alone) words.push_back(brief_text(alone));
  if (ceiling.relief) words.push_back("Relief valve at most " + relief_text(ceiling.relief->settings) + ".");
  words.push_back(counted_text(ceiling) + "; mesh edge " + fixed_text(ceiling.edge / mm, 1) + " mm.");
  return words;
}

std::optional<std::string> relief_brief(const Ceiling& ceiling) {
  if (!ceiling.relief) return std::nullopt;
  return relief_text(ceiling.relief->settings);
}

std::string ceiling_json(const Ceiling& ceiling, const std::string& plan, const std::string& inputs_hash) {
  Json json;
  json["wrapgauge-ceiling"] = 1;
  json["program"] = std::string(program_version());
  json["plan"] = plan;
  json["inputs_hash"] = inputs_hash;
  json["edge_mm"] = rounded(ceiling.edge / mm);
  json["model_factor"] = ceiling.model_factor;
  json["spread_factor"] = rounded(ceiling.spread_factor);
  json["limits_override"] = ceiling.limits_override ? Json(*ceiling.limits_override) : Json();
  json["plan_within_limits"] = ceiling.plan_within;
  json["together"] = ceiling_of_inlet(ceiling.together);
  json["relief"] = ceiling.relief ? relief_json(*ceiling.relief) : Json();
  json["alone"] = Json::array();
  for (const InletCeiling& alone : ceiling.alone) json["alone"].push_back(ceiling_of_inlet(alone));
  json["words"] = ceiling_words(ceiling);
  json["brief"] = ceiling_brief(ceiling);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
