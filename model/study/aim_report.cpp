#include "model/study/aim_report.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/core/version.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

std::string names_text(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "'" : ", '") + name + "'";
  return text;
}

std::string fine_text(Pressure pressure) {
  return fixed_text(pressure / kPa, 2) + " kPa (" + fixed_text(pressure / mmHg, 1) + " mmHg)";
}

// Of a setting, which is never rounded up.
std::string fine_setting_text(Pressure pressure) {
  return fixed_text(rounded_down(pressure / kPa, 0.01), 2) + " kPa (" +
         fixed_text(rounded_down(pressure / mmHg, 0.1), 1) + " mmHg)";
}

// "chambers 'a', 'b' at 2.10 kPa (15.8 mmHg), holding 12.3 mL"
std::string supplies_text(const AimOutcome& outcome, bool by_inlet) {
  std::string text;
  for (const AimInlet& inlet : outcome.inlets)
    text += (text.empty() ? "" : "; ") +
            (by_inlet ? "inlet '" + inlet.inlet + "'" : names_text(inlet.chambers)) + " " +
            fine_setting_text(inlet.gauge) + ", holding " + fixed_text(inlet.volume / mL, 1) + " mL";
  return text;
}

std::string means_text(const AimOutcome& outcome) {
  std::string text;
  for (const AimChamber& chamber : outcome.chambers)
    text += (text.empty() ? "" : "; ") + ("'" + chamber.chamber + "' ") + fine_text(chamber.mean) +
            (chamber.wanted ? " of " + fine_text(*chamber.wanted) : " (not asked for)");
  return "Mean contact pressure: " + text + ".";
}

std::string miss_text(const AimOutcome& outcome) {
  const AimChamber& worst = outcome.worst();
  return "misses most under '" + worst.chamber + "', by " +
         fine_text(Pressure(std::abs((worst.mean - *worst.wanted).si())));
}

// As an estimate says it: everything above a limit, else what comes nearest to one.
void say_limits(const AimOutcome& outcome, std::vector<std::string>& words) {
  const auto mark = [](Severity severity) {
    return std::string(severity == Severity::kStop ? "Stop: " : "Above a limit: ");
  };
  for (const Finding& finding : outcome.judgement.findings)
    if (finding.severity >= Severity::kAboveLimit)
      words.push_back(mark(finding.severity) + english(finding.sentence));
  for (const Hazard& hazard : outcome.judgement.hazards)
    if (hazard.severity >= Severity::kAboveLimit)
      words.push_back(mark(hazard.severity) + english(hazard.name) + ": " + english(hazard.sentence));
  if (outcome.judgement.worst() < Severity::kAboveLimit)
    words.push_back("'" + outcome.nearest.where + "' comes nearest to a limit, with " +
                    percent_text(outcome.nearest.share) + " of it after the model factor.");
}

void say_split(const Aim& aim, std::vector<std::string>& words) {
  const AimOutcome& split = *aim.split;
  const std::string how = (aim.closed_channels.empty()
                               ? ""
                               : ", with the channels " + names_text(aim.closed_channels) + " fused shut");
  if (split.reached)
    words.push_back("Reached with " + std::to_string(split.inlets.size()) + " inlets" + how +
                    ", one for each of: " + supplies_text(split, false) + ".");
  else
    words.push_back("No split of the chambers into inlets was found that reaches it; with one a chamber" +
                    how + ", the nearest is " + supplies_text(split, false) + ", which " + miss_text(split) +
                    ".");
  words.push_back(means_text(split));
  say_limits(split, words);
}

Json pressure_json(Pressure pressure) {
  return std::round(pressure / kPa * 1e4) / 1e4;
}

Json mmhg_json(Pressure pressure) {
  return std::round(pressure / mmHg * 1e3) / 1e3;
}

Json judgement_json(const Judgement& judgement) {
  Json list = Json::array();
  for (const Finding& finding : judgement.findings)
    if (finding.severity >= Severity::kWarn)
      list.push_back({{"severity", severity_text(finding.severity)},
                      {"where", finding.where},
                      {"sentence", english(finding.sentence)}});
  for (const Hazard& hazard : judgement.hazards)
    if (hazard.severity >= Severity::kWarn)
      list.push_back({{"severity", severity_text(hazard.severity)},
                      {"where", english(hazard.name)},
                      {"sentence", english(hazard.sentence)}});
  return list;
}

Json outcome_json(const AimOutcome& outcome) {
  Json json{{"reached", outcome.reached}, {"inlets", Json::array()}, {"chambers", Json::array()}};
  for (const AimInlet& inlet : outcome.inlets)
    json["inlets"].push_back({{"inlet", inlet.inlet},
                              {"chambers", inlet.chambers},
                              {"gauge_kPa", rounded_down(inlet.gauge / kPa, 1e-4)},
                              {"gauge_mmHg", rounded_down(inlet.gauge / mmHg, 1e-3)},
                              {"volume_mL", std::round(inlet.volume / mL * 1e4) / 1e4}});
  for (const AimChamber& chamber : outcome.chambers)
    json["chambers"].push_back({{"chamber", chamber.chamber},
                                {"wanted_kPa", chamber.wanted ? pressure_json(*chamber.wanted) : Json()},
                                {"mean_kPa", pressure_json(chamber.mean)},
                                {"mean_mmHg", mmhg_json(chamber.mean)},
                                {"peak_1cm2_kPa", pressure_json(chamber.peak)},
                                {"peak_1cm2_mmHg", mmhg_json(chamber.peak)}});
  json["worst"] = severity_text(outcome.judgement.worst());
  json["findings"] = judgement_json(outcome.judgement);
  json["share_of_limit"] = std::round(outcome.nearest.share * 1e4) / 1e4;
  json["nearest_limit"] = outcome.nearest.sentence;
  json["solves"] = outcome.solves;
  return json;
}

}  // namespace

std::vector<std::string> aim_words(const Aim& aim) {
  std::vector<std::string> words;
  const AimOutcome& drawn = aim.as_drawn;
  words.push_back(drawn.reached ? "Reached as drawn with " + supplies_text(drawn, true) + "."
                                : "Not reached as drawn. The nearest is " + supplies_text(drawn, true) +
                                      ", which " + miss_text(drawn) + ".");
  words.push_back(means_text(drawn));
  say_limits(drawn, words);
  if (aim.split) say_split(aim, words);
  if (aim.rises)
    words.push_back("The mean pressure rises towards the trunk, " + *aim.rises +
                    ", which hinders the blood that flows back (common practice, no source).");
  if (aim.limits_override) words.push_back(*aim.limits_override);
  words.push_back(aim.model +
                  "; not a medical device. Set the pressure on a bench and measure before anyone wears it.");
  return words;
}

std::string aim_json(const Aim& aim, const std::string& plan, const std::string& inputs_hash) {
  Json json;
  json["wrapgauge-aim"] = 1;
  json["program"] = std::string(program_version());
  json["plan"] = plan;
  json["inputs_hash"] = inputs_hash;
  json["as_drawn"] = outcome_json(aim.as_drawn);
  json["split"] = aim.split ? outcome_json(*aim.split) : Json();
  json["closed_channels"] = aim.closed_channels;
  json["rises_towards_trunk"] = aim.rises ? Json(*aim.rises) : Json();
  json["limits_override"] = aim.limits_override ? Json(*aim.limits_override) : Json();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
