#include "app/desk/window/solving_panel.hpp"

#include <QFormLayout>
#include <algorithm>

namespace wrapgauge {

SolvingPanel::SolvingPanel(PlanSession& session, QWidget* parent) : StepForm(session, parent) {
  QFormLayout* form = column_form(this);
  make_mesh(*form);
  make_solver(*form);
}

void SolvingPanel::make_mesh(QFormLayout& form) {
  const QString mm_unit = QStringLiteral("mm");
  edge_ = new NumberField(tr("Edge of the standard mesh"), mm_unit, {0.5, 30.0, 1, 0.5}, this);
  edge_->setObjectName(QStringLiteral("mesh edge"));
  edge_->say_source(tr("Finer takes longer; the estimate says how far a coarser mesh is off."));
  const auto take = [this] { take_mesh(); };
  seam_edge_ =
      optional_number(this, tr("Beside seams"), mm_unit, {0.5, 30.0, 1, 0.5},
                      tr("Shorter edges beside seams and inset seams, where sheets bend most."), take);
  seam_edge_.field->setObjectName(QStringLiteral("seam edge"));
  seam_band_ = optional_number(this, tr("As far as"), mm_unit, {0.0, 50.0, 1, 1.0},
                               tr("How far from a seam the shorter edges hold; 6 mm when left out."), take);
  form.addRow(tr("Mesh edge"), edge_);
  form.addRow(seam_edge_.box, seam_edge_.field);
  form.addRow(seam_band_.box, seam_band_.field);
  connect(edge_, &NumberField::edited, this, &SolvingPanel::take_mesh);
}

void SolvingPanel::make_solver(QFormLayout& form) {
  steps_ =
      new NumberField(tr("Recorded states on the way to the full inflation"), {}, {1.0, 100.0, 0, 1.0}, this);
  steps_->setObjectName(QStringLiteral("recorded states"));
  steps_->say_source(tr("Steps of the slider from closed to inflated; 6 when left out."));
  bending_ = new QCheckBox(tr("Sheets resist bending"), this);
  slack_ = new QCheckBox(tr("Sheets carry no compression"), this);
  slack_->setToolTip(tr("They wrinkle at once instead of pushing back."));
  compare_ = new QCheckBox(tr("Compare with the other way"), this);
  compare_->setToolTip(
      tr("Solves again with compression carried the other way, and says how chambers differ; "
         "takes twice as long."));
  form.addRow(tr("Steps"), steps_);
  for (QCheckBox* box : {bending_, slack_, compare_}) form.addRow(box);
  connect(steps_, &NumberField::edited, this, [this](double value) {
    change(tr("Recorded states"), QStringLiteral("solver.steps"),
           [&](Plan& plan) { plan.solver.steps = static_cast<int>(value); });
  });
  connect(bending_, &QCheckBox::clicked, this, [this](bool on) {
    change(tr("Bending of the sheets"), {}, [&](Plan& plan) { plan.solver.bending = on; });
  });
  connect(slack_, &QCheckBox::clicked, this, [this](bool on) {
    change(tr("Compression of the sheets"), {}, [&](Plan& plan) { plan.solver.relaxed_compression = on; });
  });
  connect(compare_, &QCheckBox::clicked, this, [this](bool on) {
    change(tr("Compare ways of solving"), {}, [&](Plan& plan) { plan.compare_wrinkled = on; });
  });
}

// A plan has a band only with an edge beside seams, and that edge is at most the other.
void SolvingPanel::take_mesh() {
  change(tr("Mesh"), QStringLiteral("mesh"), [this](Plan& plan) {
    const auto in_mm = [](const OptionalNumber& number) {
      const auto value = number.value();
      return value ? std::optional(*value * mm) : std::nullopt;
    };
    plan.mesh_edge = edge_->value() * mm;
    plan.mesh_seam_edge = in_mm(seam_edge_);
    if (plan.mesh_seam_edge) plan.mesh_seam_edge = std::min(*plan.mesh_seam_edge, plan.mesh_edge);
    plan.mesh_seam_band = plan.mesh_seam_edge ? in_mm(seam_band_) : std::nullopt;
  });
}

void SolvingPanel::show_plan() {
  const auto in_mm = [](const std::optional<Length>& length) {
    return length ? std::optional(*length / mm) : std::nullopt;
  };
  const double edge_mm = plan().mesh_edge / mm;
  edge_->show_value(edge_mm);
  seam_edge_.show(in_mm(plan().mesh_seam_edge), std::max(0.5, 0.5 * edge_mm));
  seam_band_.show(in_mm(plan().mesh_seam_band), 6.0);
  seam_band_.box->setEnabled(plan().mesh_seam_edge.has_value());
  steps_->show_value(plan().solver.steps);
  bending_->setChecked(plan().solver.bending);
  slack_->setChecked(plan().solver.relaxed_compression);
  compare_->setChecked(plan().compare_wrinkled);
}

}  // namespace wrapgauge
