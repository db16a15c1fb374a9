#include "app/desk/window/inflation_step.hpp"

#include <algorithm>

#include "app/desk/window/supply_fields.hpp"

namespace wrapgauge {
namespace {

const InletProgram* program_of(const Plan& plan, const std::string& inlet) {
  for (const InletProgram& program : plan.inflation)
    if (program.inlet == inlet) return &program;
  return nullptr;
}

}  // namespace

InflationStep::InflationStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      none_(words_label(tr("The layout has no inlet yet."), this)),
      inlets_(new QVBoxLayout),
      supply_(this, column_form(nullptr),
              [this](const QString& words, const QString& merge, const auto& edit) {
                change(words, merge, [&](Plan& plan) {
                  edit(plan);
                  settle_session(plan);
                });
              }) {
  add_supply_rows(supply_);
  QVBoxLayout* column = plain_column(this);
  column->addWidget(none_);
  column->addLayout(inlets_);
  column->addLayout(&supply_.layout());
}

void InflationStep::rebuild_inlets() {
  for (const auto& [name, fields] : fields_) fields->deleteLater();
  fields_.clear();
  for (const Inlet& inlet : plan().layout.inlets) {
    auto* fields = new InletFields(inlet.name, this);
    inlets_->addWidget(fields);
    fields_.push_back({inlet.name, fields});
    connect(fields, &InletFields::edited, this, [this, fields, name = inlet.name](const QString& merge) {
      change(tr("Inflation"), merge, [&](Plan& plan) {
        const InletProgram program = fields->program();
        const auto at = std::find_if(plan.inflation.begin(), plan.inflation.end(),
                                     [&](const InletProgram& old) { return old.inlet == name; });
        if (at == plan.inflation.end())
          plan.inflation.push_back(program);
        else
          *at = program;
      });
    });
  }
}

void InflationStep::show_state(const SessionState& now, const SessionState&) {
  const auto& inlets = now.plan->layout.inlets;
  none_->setVisible(inlets.empty());
  const bool same =
      std::equal(inlets.begin(), inlets.end(), fields_.begin(), fields_.end(),
                 [](const Inlet& inlet, const auto& field) { return inlet.name == field.first; });
  if (!same) rebuild_inlets();
  for (const auto& [name, fields] : fields_) fields->show_program(program_of(*now.plan, name));
  supply_.show(*now.plan);
}

}  // namespace wrapgauge
