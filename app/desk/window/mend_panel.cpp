#include "app/desk/window/mend_panel.hpp"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace wrapgauge {
namespace {

template <class Step>
const Step* find_step(const std::vector<MendStep>& steps) {
  for (const MendStep& step : steps)
    if (const auto* found = std::get_if<Step>(&step)) return found;
  return nullptr;
}

void check(QCheckBox* box, bool on) {
  const QSignalBlocker quiet(box);
  box->setChecked(on);
}

}  // namespace

MendPanel::MendPanel(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  const QString mm_unit = QStringLiteral("mm");
  hole_ = add_number(tr("Holes up to"), mm_unit, {1.0, 500.0, 0, 5.0});
  passes_ = add_number(tr("Passes of smoothing"), {}, {1.0, 100.0, 0, 1.0});
  distal_ = new Choice(tr("Distal end"), this);
  distal_->add(tr("thin end is distal"), int(DistalEnd::kThin));
  distal_->add(tr("thick end is distal"), int(DistalEnd::kThick));
  distal_->add(tr("as it is"), int(DistalEnd::kAsItIs));
  turn_ = add_number(tr("Turn about the axis"), QStringLiteral("°"), {-360.0, 360.0, 0, 5.0});
  cut_from_ = add_number(tr("Keep from"), mm_unit, {0.0, 2000.0, 0, 5.0});
  cut_to_ = add_number(tr("Keep to"), mm_unit, {0.0, 2000.0, 0, 5.0});
  edge_ = add_number(tr("Edge of the triangles"), mm_unit, {1.0, 20.0, 1, 0.5});
  table_ = add_step(tr("Drop the table it lies on"), {});
  crumbs_ = add_step(tr("Drop loose crumbs"), {});
  holes_ = add_step(tr("Fill holes up to"), {hole_});
  smooth_ = add_step(tr("Smooth, passes"), {passes_});
  pose_ = add_step(tr("Stand it upright"), {distal_, turn_});
  cut_ = add_step(tr("Keep from, to"), {cut_from_, cut_to_});
  mirror_ = add_step(tr("Make left right"), {});
  triangles_ = add_step(tr("Even triangles of"), {edge_});
  connect(distal_, &Choice::chosen, this, &MendPanel::edited);
}

NumberField* MendPanel::add_number(const QString& name, const QString& unit,
                                   const NumberField::Range& range) {
  auto* field = new NumberField(name, unit, range, this);
  connect(field, &NumberField::edited, this, &MendPanel::edited);
  return field;
}

QCheckBox* MendPanel::add_step(const QString& text, const std::vector<QWidget*>& fields) {
  auto* box = new QCheckBox(text, this);
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->addWidget(box);
  if (!fields.empty()) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 0, 0);
    for (QWidget* field : fields) {
      row->addWidget(field, 1);
      setTabOrder(box, field);
    }
    column->addLayout(row);
  }
  rows_.push_back({box, fields});
  connect(box, &QCheckBox::toggled, this, [this] {
    enable_fields();
    emit edited();
  });
  return box;
}

void MendPanel::enable_fields() {
  for (const auto& [box, fields] : rows_)
    for (QWidget* field : fields) field->setVisible(box->isChecked());
}

void MendPanel::show_steps(const std::vector<MendStep>& steps) {
  const auto* holes = find_step<FillHoles>(steps);
  const auto* smoothing = find_step<Smooth>(steps);
  const auto* posing = find_step<PoseLimb>(steps);
  const auto* cutting = find_step<CutLimb>(steps);
  const auto* decimating = find_step<Decimate>(steps);
  check(table_, find_step<DropTable>(steps));
  check(crumbs_, find_step<DropCrumbs>(steps));
  check(holes_, holes);
  check(smooth_, smoothing);
  check(pose_, posing);
  check(cut_, cutting);
  check(mirror_, find_step<MirrorLimb>(steps));
  check(triangles_, decimating);
  hole_->show_value((holes ? *holes : FillHoles{}).up_to / mm);
  passes_->show_value((smoothing ? *smoothing : Smooth{}).passes);
  distal_->show_value(int((posing ? *posing : PoseLimb{}).distal));
  turn_->show_value((posing ? *posing : PoseLimb{}).turn_deg);
  cut_from_->show_value(cutting ? cutting->from / mm : 0.0);
  cut_to_->show_value(cutting ? cutting->to / mm : 300.0);
  edge_->show_value((decimating ? *decimating : Decimate{}).edge / mm);
  enable_fields();
}

std::vector<MendStep> MendPanel::steps() const {
  std::vector<MendStep> steps;
  if (table_->isChecked()) steps.push_back(DropTable{});
  if (crumbs_->isChecked()) steps.push_back(DropCrumbs{});
  if (holes_->isChecked()) steps.push_back(FillHoles{hole_->value() * mm});
  if (smooth_->isChecked()) steps.push_back(Smooth{static_cast<int>(passes_->value())});
  if (pose_->isChecked())
    steps.push_back(PoseLimb{static_cast<DistalEnd>(distal_->currentData().toInt()), turn_->value()});
  if (cut_->isChecked()) steps.push_back(CutLimb{cut_from_->value() * mm, cut_to_->value() * mm});
  if (mirror_->isChecked()) steps.push_back(MirrorLimb{});
  if (triangles_->isChecked()) steps.push_back(Decimate{edge_->value() * mm});
  return steps;
}

}  // namespace wrapgauge
