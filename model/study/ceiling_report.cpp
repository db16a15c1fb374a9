#include "model/study/ceiling_report.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

// A number that is a whole multiple but for rounding stays itself.
double down(double value, double step) {
  return std::floor(value / step + 1e-6) * step;
}

std::string inlet_text(const CeilingInlet& inlet) {
  const std::string pressure = pressure_down_text(inlet.gauge),
                    volume = fixed_text(down(inlet.volume / mL, 0.1), 1) + " mL";
  if (inlet.pushed)
    return "'" + inlet.inlet + "' " + fixed_text(down(*inlet.pushed / mL, 0.1), 1) +
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
  return ceiling.inlet ? "Ceiling of inlet '" + *ceiling.inlet + "' alone, the others open: "
                       : "Ceiling with all inlets scaled together in the plan's proportion: ";
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
             "figure here; close it less tightly or take a thicker sheet.";
    case LimitKind::kRunsAway:
      break;
  }
  return "the bulge of chamber " + chambers +
         " runs away, before any limit is met; fill by volume, or take a thicker or stiffer sheet.";
}

std::string stop_text(const InletCeiling& ceiling) {
  switch (ceiling.stop) {
    case CeilingStop::kLimitPoint:
      return "What stops it: above this " + limit_point_text(ceiling);
    case CeilingStop::kNoEquilibrium:
      return "What stops it: above this the solver found no equilibrium, so there are no numbers, though no "
             "limit is met below it.";
    default:
      return "What stops it: '" + ceiling.at.nearest.where + "'" +
             (ceiling.above && ceiling.above->equilibrium ? "; 5 % above: " + ceiling.above->nearest.sentence
                                                          : ".");
  }
}

std::string check_text(const CeilingCheck& check) {
  if (!check.equilibrium) return "there is no equilibrium";
  return "'" + check.nearest.where + "' comes nearest with " + percent_text(check.nearest.share) +
         " of its limit (predicted peak " + pressure_text(check.peak) + ")";
}

std::string verified_text(const InletCeiling& ceiling) {
  std::string text = "Solved at the answer: " + check_text(ceiling.at);
  if (ceiling.above) text += "; solved 5 % above it: " + check_text(*ceiling.above);
  return text +
         (ceiling.confirmed() ? "." : ". NOT CONFIRMED: 5 % above it nothing is above a limit either.");
}

void say_ceiling(const InletCeiling& ceiling, std::vector<std::string>& words) {
  if (ceiling.stop == CeilingStop::kAlreadyAbove) {
    words.push_back(scope_text(ceiling) + "none. Closed and not inflated, '" + ceiling.at.nearest.where +
                    "' is already at " + percent_text(ceiling.at.nearest.share) + " of its limit. " +
                    ceiling.at.nearest.sentence + " Inflating only adds to it: loosen the closure first.");
    return;
  }
  if (ceiling.stop == CeilingStop::kWithin) {
    words.push_back(scope_text(ceiling) + "not met up to " + reach_text(ceiling) +
                    " No relief setting follows; ask for more in the plan to look further.");
    return;
  }
  words.push_back(scope_text(ceiling) + reach_text(ceiling));
  words.push_back(stop_text(ceiling));
  words.push_back(verified_text(ceiling));
}

std::string settings_text(const ReliefSetting& relief) {
  std::string text;
  for (const CeilingInlet& inlet : relief.inlets)
    text += (text.empty() ? "" : ", ") + pressure_down_text(inlet.gauge) + " for inlet '" + inlet.inlet + "'";
  return text;
}

std::string relief_text(const ReliefSetting& relief) {
  std::string text =
      "Set the relief valve no higher than " + settings_text(relief) + ": " + relief.rule + ".";
  if (relief.at) text += " Solved there: " + check_text(*relief.at) + ".";
  return text;
}

std::string share_text(const CeilingCheck& check) {
  return check.equilibrium ? percent_text(check.nearest.share) + " of the limit" : "no equilibrium";
}

std::string stop_brief(const InletCeiling& ceiling) {
  if (ceiling.limit_kind == LimitKind::kOverstretched)
    return "above it a sheet of " + ceiling.limit_chambers + " is stretched too far";
  if (ceiling.limit_kind == LimitKind::kFolds)
    return "above it a sheet folds while " + ceiling.limit_chambers + " is filled";
  if (ceiling.limit_kind) return "above it the bulge of " + ceiling.limit_chambers + " runs away";
  if (ceiling.stop == CeilingStop::kNoEquilibrium) return "above it no equilibrium was found";
  return "'" + ceiling.at.nearest.where + "' stops it";
}

std::string brief_text(const InletCeiling& ceiling) {
  const std::string scope = ceiling.inlet ? "With only '" + *ceiling.inlet + "' inflated: " : "";
  if (ceiling.stop == CeilingStop::kAlreadyAbove)
    return scope + "No inflation is within the limits: closed and not inflated, '" +
           ceiling.at.nearest.where + "' is already at " + percent_text(ceiling.at.nearest.share) +
           " of its limit.";
  if (ceiling.stop == CeilingStop::kWithin)
    return scope + "No limit was met up to " + inlets_text(ceiling.inlets) + ".";
  std::string text = scope + "Highest inflation within the limits: " + inlets_text(ceiling.inlets) + ", " +
                     percent_text(ceiling.at.inflation) + " of the plan's; " + stop_brief(ceiling) +
                     ". Solved there: " + share_text(ceiling.at);
  if (ceiling.above) text += "; 5 % above: " + share_text(*ceiling.above);
  return text + (ceiling.confirmed() ? "." : ". NOT CONFIRMED.");
}

std::string counted_text(const Ceiling& ceiling) {
  return "Predicted pressures count " + number_text(ceiling.model_factor, 3) + " times, the model factor" +
         (ceiling.spread_factor > 1.0
              ? ", and " + number_text(ceiling.spread_factor, 3) +
                    " times more for the spread of the inputs (95th percentile of the runs)"
              : "; the spread of the inputs is left out");
}

std::string basis_text(const Ceiling& ceiling) {
  return counted_text(ceiling) + ". Mesh edge " + fixed_text(ceiling.edge / mm, 1) +
         " mm. Not a medical device; measure on a bench before anyone wears it, and ask a clinician.";
}

double rounded(double value) {
  return std::round(value * 1e4) / 1e4;
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
      return "above a limit when not inflated";
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
                    {"pushed_mL", inlet.pushed ? Json(rounded(*inlet.pushed / mL)) : Json()},
                    {"gauge_kPa", rounded(inlet.gauge / kPa)},
                    {"gauge_mmHg", rounded(inlet.gauge / mmHg)},
                    {"volume_mL", rounded(inlet.volume / mL)}});
  return list;
}

Json check_json(const CeilingCheck& check) {
  Json json{{"share_of_plan", rounded(check.inflation)}, {"equilibrium", check.equilibrium}};
  if (!check.equilibrium) return json;
  json["share_of_limit"] = rounded(check.nearest.share);
  json["where"] = check.nearest.where;
  json["sentence"] = check.nearest.sentence;
  json["peak_kPa"] = rounded(check.peak / kPa);
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

std::string pressure_down_text(Pressure pressure) {
  return fixed_text(down(pressure / kPa, 0.1), 1) + " kPa (" + fixed_text(down(pressure / mmHg, 1.0), 0) +
         " mmHg)";
}

std::string percent_text(double share) {
  return fixed_text(100.0 * share, 0) + " %";
}

std::vector<std::string> ceiling_words(const Ceiling& ceiling) {
  std::vector<std::string> words;
  say_ceiling(ceiling.together, words);
  if (ceiling.relief) words.push_back(relief_text(*ceiling.relief));
  for (const InletCeiling& alone : ceiling.alone) say_ceiling(alone, words);
  if (ceiling.limits_override) words.push_back(*ceiling.limits_override);
  words.push_back(basis_text(ceiling));
  return words;
}

std::vector<std::string> ceiling_brief(const Ceiling& ceiling) {
  std::vector<std::string> words{brief_text(ceiling.together)};
  for (const InletCeiling& alone : ceiling.alone) words.push_back(brief_text(alone));
  if (ceiling.relief) words.push_back("Relief valve at most " + settings_text(*ceiling.relief) + ".");
  words.push_back(counted_text(ceiling) + "; mesh edge " + fixed_text(ceiling.edge / mm, 1) + " mm.");
  return words;
}

std::optional<std::string> relief_brief(const Ceiling& ceiling) {
  if (!ceiling.relief) return std::nullopt;
  return settings_text(*ceiling.relief);
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
  json["together"] = ceiling_of_inlet(ceiling.together);
  json["relief"] = Json();
  if (ceiling.relief)
    json["relief"] = {{"inlets", inlets_json(ceiling.relief->inlets)},
                      {"words", settings_text(*ceiling.relief)},
                      {"rule", ceiling.relief->rule},
                      {"at", ceiling.relief->at ? check_json(*ceiling.relief->at) : Json()}};
  json["alone"] = Json::array();
  for (const InletCeiling& alone : ceiling.alone) json["alone"].push_back(ceiling_of_inlet(alone));
  json["words"] = ceiling_words(ceiling);
  json["brief"] = ceiling_brief(ceiling);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
