#include "app/desk/views/state_contact.hpp"

#include <algorithm>

#include "app/picture/map_scene.hpp"
#include "model/contact/skin_side.hpp"
#include "model/limits/limit_share.hpp"

namespace wrapgauge {
namespace {

void read_state(const Estimate& estimate, const EquilibriumState& at, StateContact& contact) {
  contact.map = contact_map(estimate.setup, estimate.path, at);
  contact.figures = contact_figures(estimate.body, estimate.setup,
                                    {estimate.skin_grade.elongation_at_break,
                                     estimate.outer_grade.elongation_at_break, estimate.tissue_depth_m},
                                    estimate.path, at, contact.map);
  contact.findings =
      findings(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path, at, contact.map,
               contact.figures, audit(estimate.body, estimate.setup, estimate.path, at));
  worst_first(contact.findings);
}

}  // namespace

StateContact state_contact(const Estimate& estimate, const SkinSurface& skin, int state) {
  const EquilibriumState& at = estimate.path.states[static_cast<std::size_t>(state)];
  StateContact contact;
  if (&at == &estimate.path.states.back()) {
    contact.map = estimate.map;
    contact.figures = estimate.figures;
    contact.findings = estimate.findings;
  } else {
    read_state(estimate, at, contact);
  }
  contact.threshold_pa = layout_threshold_pa(estimate, at, contact.figures);
  contact.share_of_limit = share_of_limit(estimate.limits, estimate.limit_inputs, estimate.setup, at,
                                          estimate.path.sheet, contact.figures, contact.map.mean_1cm2_pa);
  contact.on_skin = skin.nearest(skin_side(estimate.setup, estimate.path.sheet, at.positions_m).vertices_m);
  if (estimate.setup.flat.triangles.rows() > 0)
    contact.worn_tree.emplace(TriangleMesh{contact.on_skin.points_m, estimate.setup.flat.triangles});
  if (at.group_pressure_pa.size() > 0)
    contact.inside = Pressure(std::max(0.0, at.group_pressure_pa.maxCoeff()));
  return contact;
}

const Finding* finding_of(const StateContact& contact, const std::string& chamber) {
  for (const Finding& finding : contact.findings)
    if (finding.where == chamber) return &finding;
  return nullptr;
}

}  // namespace wrapgauge
