#include "app/desk/window/solving_panel.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

// A plan has a band only with an edge beside seams, and that edge is at most the other.
void settle_mesh(Plan& plan) {
  if (plan.mesh_seam_edge)
    plan.mesh_seam_edge = std::min(*plan.mesh_seam_edge, plan.mesh_edge);
  else
    plan.mesh_seam_band.reset();
}

}  // namespace

SolvingPanel::SolvingPanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      rows_(this, column_form(this), [this](const QString& words, const QString& merge, const auto& edit) {
        change(words, merge, [&](Plan& plan) {
          edit(plan);
          settle_mesh(plan);
        });
      }) {
  add_mesh();
  add_solver();
}

void SolvingPanel::add_mesh() {
  const NumberField::Range edges{0.5, 30.0, 1, 0.5};
  const FieldText edge(tr("Mesh edge"), tr("Edge of the final mesh"),
                       tr("Finer takes longer; the estimate says how far a coarser mesh is off."),
                       "mesh edge");
  const FieldText seam(tr("Beside seams"), {},
                       tr("Shorter edges beside seams and inset seams, where sheets bend most."),
                       "seam edge");
  const FieldText band(tr("As far as"), {},
                       tr("How far from a seam the shorter edges hold; 6 mm when left out."));
  rows_.number(edge, kInMm, edges, [](auto& plan) { return &plan.mesh_edge; });
  const auto beside = rows_.optional(
      seam, kInMm, edges, [](auto& plan) { return &plan.mesh_seam_edge; }, 0.5);
  const auto far = rows_.optional(
      band, kInMm, {0.0, 50.0, 1, 1.0}, [](auto& plan) { return &plan.mesh_seam_band; }, 6.0);
  rows_.also([beside, far](const Plan& plan) {
    beside.offer(std::max(0.5, 0.5 * (plan.mesh_edge / mm)));
    far.box->setEnabled(plan.mesh_seam_edge.has_value());
  });
}

void SolvingPanel::add_solver() {
  const FieldText steps(tr("Steps"), tr("Recorded states on the way to the full inflation"),
                        tr("Steps of the slider from closed to inflated; 6 when left out."),
                        "recorded states");
  rows_.number(steps, kPlain, {1.0, 100.0, 0, 1.0}, [](auto& plan) { return &plan.solver.steps; });
  const FieldText compare(
      tr("Compare with the other way"), {},
      tr("Solves again with compression carried the other way, and says how chambers differ; "
         "takes twice as long."));
  const FieldText slack(tr("Sheets carry no compression"), {},
                        tr("They wrinkle at once instead of pushing back."));
  rows_.box(FieldText(tr("Sheets resist bending")), [](auto& plan) { return &plan.solver.bending; });
  rows_.box(slack, [](auto& plan) { return &plan.solver.relaxed_compression; });
  rows_.box(compare, [](auto& plan) { return &plan.compare_wrinkled; });
}

}  // namespace wrapgauge
