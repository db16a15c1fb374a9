#include <string>

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
