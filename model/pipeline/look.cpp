#include <algorithm>
#include <string>

#include "model/body/part_rules.hpp"
#include "model/core/number_text.hpp"
#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

std::string closing_words(const ClosureReport& closure) {
  const auto mm_text = [](Length length) { return fixed_text(length / mm, 1) + " mm"; };
  return "closure: girth " + mm_text(closure.girth_at_anchor) + ", closing length " +
         mm_text(closure.closing_length_used) + " (" + mm_text(closure.closing_length_needed) +
         " would meet without stretching)";
}

std::string quality_words(const WrapQuality& quality) {
  return quality.part + ": laid on with stretch " + fixed_text(quality.stretch_min, 3) + " to " +
         fixed_text(quality.stretch_max, 3) + ", shear up to " + fixed_text(quality.shear_max_deg, 1) +
         " degrees";
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
  std::string words = "sites: " + std::to_string(inputs.bony_sites.size()) + " places that bear less";
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
  words.push_back("layout: '" + plan.layout.name + "', " + std::to_string(plan.layout.chambers.size()) +
                  " chambers fed by " + std::to_string(flat.group_inlet.size()) + " inlets, skin sheet " +
                  prepared->skin_grade.hardness + ", outer sheet " + prepared->outer_grade.hardness);
  words.push_back("mesh: " + std::to_string(flat.vertices_m.rows()) + " flat vertices, " +
                  std::to_string(flat.triangles.rows()) + " triangles");
  if (prepared->wrap.closure) words.push_back(closing_words(*prepared->wrap.closure));
  for (const WrapQuality& quality : prepared->wrap.quality) words.push_back(quality_words(quality));
  words.push_back("ready: everything an estimate needs is there; nothing has been solved.");
  return words;
}

}  // namespace wrapgauge
