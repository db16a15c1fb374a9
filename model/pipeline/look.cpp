#include <algorithm>
#include <string>

#include "model/body/part_rules.hpp"
#include "model/body/place_words.hpp"
#include "model/core/counted.hpp"
#include "model/core/number_text.hpp"
#include "model/limits/fit_finding.hpp"
#include "model/pipeline/fastening_pressure.hpp"
#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/pipeline/solve_forecast.hpp"
#include "model/wrap/fit_words.hpp"

namespace wrapgauge {
namespace {

std::string percent_text(double stretch) {
  return fixed_text(100.0 * (stretch - 1.0), 1);
}

// Before it is fastened, so that it is not taken for the stretch round the body.
std::string quality_words(const WrapQuality& quality) {
  return quality.part + ": laid on the skin, not yet fastened or inflated, stretched by " +
         percent_text(quality.stretch_min) + " to " + percent_text(quality.stretch_max) +
         " %, sheared by up to " + fixed_text(quality.shear_max_deg, 1) + " degrees";
}

// The girths stand in the warning about them, if there is one, and are said once.
std::vector<std::string> fit_words(const Fit& fit) {
  std::vector<std::string> words;
  bool girths_said = fit.sections.empty();
  for (const Finding& finding : fit_findings(fit)) {
    girths_said = girths_said || finding.source_key == kRoundKey;
    words.push_back("warning: " + english(finding.sentence));
  }
  if (!girths_said) words.insert(words.begin(), "closure: " + english(fastened_words(fit)));
  return words;
}

// The lowest of the limits is of that size; a stiff backing presses so at a stretch that is not called tight.
constexpr Pressure kFasteningSaid = 1.0 * kPa;  // judgement

// Estimate has the solved figure in its place.
std::optional<std::string> fastening_words(const Prepared& prepared) {
  if (prepared.wrap.fit.sections.empty()) return std::nullopt;
  const Pressure pressure = fastening_pressure(prepared);
  if (pressure < kFasteningSaid) return std::nullopt;
  return "fastening: at station " + fixed_text(tightest(prepared.wrap.fit).station / mm, 1) +
         " mm it would press with about " + english(figures_of(pressure)) +
         " before it is inflated (a stretched ring on this tissue, not solved; limits are held against what "
         "estimate solves)";
}

// "place: on the outer side, anchored at station 120.0 mm"; a body that does not say its front has no sides.
std::string place_words(const Body& body, const Wrap& wrap) {
  const auto facing = facing_of(body, wrap.outward);
  const std::string side = facing ? "on the " + english(facing_words(*facing)) + ", " : "";
  return "place: " + side + "anchored at station " +
         fixed_text((wrap.anchor_m - body.axis.origin_m).dot(body.axis.direction) / 1e-3, 1) + " mm";
}

std::string part_words(const Body& body) {
  if (!is_worn(*body.part))
    return "part: Test object: no limit is applied to it, and nobody may wear the device";
  std::string words = "part: " + std::string(body_part_name(*body.part));
  if (body.side) words += ", " + std::string(side_name(*body.side));
  if (!tissue_was_chosen_for(body.part, body.tissue_site))
    words += "; tissue not confirmed: its row was not chosen for this part";
  return words;
}

std::string site_words(const LimitInputs& inputs) {
  const auto proposed = std::count_if(inputs.bony_sites.begin(), inputs.bony_sites.end(), is_proposed);
  std::string words = "sites: " + std::to_string(inputs.bony_sites.size()) + " marked";
  if (proposed > 0) words += ", " + std::to_string(proposed) + " of them only proposed: confirm or drop each";
  if (inputs.sites_confirmed) return words + "; no others, by word of " + inputs.sites_confirmed->who;
  return inputs.sites_known ? words
                            : words +
                                  "; until they are marked or their absence is confirmed "
                                  "(body.sites_confirmed) every place is judged as if it lay over bone";
}

}  // namespace

Result<std::vector<std::string>> look(const Plan& plan, const Body& body, const Resources& resources) {
  const auto ready_body = body_of_plan(plan, body);
  if (!ready_body) return ready_body.problem();
  const auto prepared = prepare(plan, *ready_body, resources, mesh_of_plan(plan));
  if (!prepared) return prepared.problem();
  const FlatMesh& flat = prepared->setup.flat;
  std::vector<std::string> words;
  words.push_back("body: '" + ready_body->name + "', " + std::to_string(ready_body->surface.faces.rows()) +
                  " triangles, tissue '" + prepared->tissue.name + "'");
  words.push_back(part_words(*ready_body));
  if (is_worn(*ready_body->part)) words.push_back(site_words(limit_inputs(plan, *prepared)));
  words.push_back("layout: '" + plan.layout.name + "', " + counted(plan.layout.chambers.size(), "chamber") +
                  " fed by " + counted(flat.group_inlet.size(), "inlet") + ", skin sheet " +
                  prepared->skin_grade.hardness + ", outer sheet " + prepared->outer_grade.hardness);
  words.push_back(place_words(*ready_body, prepared->wrap));
  words.push_back("mesh: " + std::to_string(flat.vertices_m.rows()) + " flat vertices, " +
                  std::to_string(flat.triangles.rows()) + " triangles");
  for (const WrapQuality& quality : prepared->wrap.quality) words.push_back(quality_words(quality));
  for (std::string& sentence : fit_words(prepared->wrap.fit)) words.push_back(std::move(sentence));
  if (auto sentence = fastening_words(*prepared)) words.push_back(*sentence);
  if (auto sentence = long_solve_words(forecast_solve(plan, *prepared))) words.push_back(*sentence);
  words.push_back("ready: everything an estimate needs is there; nothing has been solved.");
  return words;
}

}  // namespace wrapgauge
