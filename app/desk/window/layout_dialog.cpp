#include "app/desk/window/layout_dialog.hpp"

#include "app/desk/session/text.hpp"
#include "app/desk/window/measures_panel.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/measured_layout.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/forms/layout_form.hpp"

namespace wrapgauge {
namespace {

// Shares are typed in percent; everything else in the unit it has.
bool is_share(const LayoutParameter& parameter) {
  return parameter.unit.empty() && !parameter.whole;
}

double shown_for_one(const LayoutParameter& parameter) {
  return is_share(parameter) ? 100.0 : 1.0;
}

NumberField* new_field(const LayoutParameter& parameter, QWidget* parent) {
  const double scale = shown_for_one(parameter);
  const QString unit = is_share(parameter) ? QStringLiteral("%") : text(parameter.unit);
  const bool fine = !parameter.whole && !is_share(parameter) && parameter.unit != "mm";
  auto* field = new NumberField(
      parameter_title(parameter.name), unit,
      {scale * parameter.least, scale * parameter.most, parameter.whole ? 0 : 1, fine ? 0.1 : 1.0}, parent);
  field->show_value(scale * parameter.default_value);
  field->say_source(text(parameter.meaning + ". " + parameter.source));
  return field;
}

}  // namespace

LayoutDialog::LayoutDialog(PlanSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      form_(new Choice(tr("Kind of layout"), this)),
      fields_(new QFormLayout),
      about_(words_label({}, this)),
      outcome_(words_label({}, this)) {
  setWindowTitle(tr("Make a layout"));
  resize(520, 600);
  for (const LayoutForm& form : layout_forms())
    form_->add(parameter_title(form.name), text(form.name), text(form.about));
  auto* column = new QVBoxLayout(this);
  column->addWidget(form_);
  column->addWidget(about_);
  auto* box = new QWidget(this);
  box->setLayout(fields_);
  fields_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  column->addWidget(in_scroll(box, this), 1);
  column->addWidget(outcome_);
  take_ = add_dialog_buttons(*this, *column, tr("Make"));
  connect(form_, &Choice::chosen, this, &LayoutDialog::rebuild);
  rebuild();
}

void LayoutDialog::rebuild() {
  while (fields_->rowCount() > 0) fields_->removeRow(0);
  numbers_.clear();
  given_.clear();
  measured_.clear();
  const auto form = find_layout_form(form_->currentData().toString().toStdString());
  if (!form) return;
  about_->setText(text(form->about));
  for (const LayoutParameter& parameter : form->parameters) {
    NumberField* field = new_field(parameter, this);
    fields_->addRow(parameter_title(parameter.name), field);
    fields_->labelForField(field)->setToolTip(field->toolTip());
    connect(field, &NumberField::edited, this, [this, name = parameter.name] {
      given_.insert(name);
      measure();
      try_out();
    });
    numbers_[parameter.name] = field;
  }
  measure();
  try_out();
}

// Girths where the layout will lie, as the plan places it now, unless one was typed.
void LayoutDialog::measure() {
  const Body* body = session_.now().body();
  const auto* anchor = std::get_if<AnchorAtStation>(&session_.plan().placement.anchor);
  const auto form = find_layout_form(form_->currentData().toString().toStdString());
  unmeasured_ = false;
  if (!body || !anchor || !form) return;
  const auto measures = measures_of(*form, given(*form), *body, anchor->station);
  if (!measures) {  // the defaults stand until someone types
    unmeasured_ = true;
    return;
  }
  for (const LimbMeasure& measure : *measures) {
    measured_[measure.parameter] = measure.value_mm;
    numbers_[measure.parameter]->show_value(measure.value_mm);
  }
}

std::map<std::string, double> LayoutDialog::given(const LayoutForm& form) const {
  std::map<std::string, double> values;
  for (const LayoutParameter& parameter : form.parameters)
    if (given_.contains(parameter.name))
      values[parameter.name] = numbers_.at(parameter.name)->value() / shown_for_one(parameter);
  return values;
}

void LayoutDialog::try_out() {
  const auto form = find_layout_form(form_->currentData().toString().toStdString());
  if (!form) return;
  std::map<std::string, double> values = given(*form);
  values.insert(measured_.begin(), measured_.end());
  show_fitted(*form, values);
  const auto drawn = make_layout(form->name, values);
  take_->setEnabled(drawn.ok());
  if (!drawn) return outcome_->setText(text(drawn.problem().message));
  layout_ = *drawn;
  const Bounds2 box = bounds(layout_.outline_m);
  outcome_->setText(tr("%1 × %2 mm. Chambers: %3, inlets: %4.")
                        .arg(figures_text(fixed_text(1e3 * (box.high - box.low).x(), 1)),
                             figures_text(fixed_text(1e3 * (box.high - box.low).y(), 1)))
                        .arg(layout_.chambers.size())
                        .arg(layout_.inlets.size()) +
                    cautions());
}

// What is fitted to the girths and sheets follows them until it is typed.
void LayoutDialog::show_fitted(const LayoutForm& form, const std::map<std::string, double>& values) {
  const auto used = layout_parameters(form.name, values);
  if (!used) return;
  for (const LayoutParameter& parameter : form.parameters)
    if (parameter.fit && !given_.contains(parameter.name))
      numbers_[parameter.name]->show_value(shown_for_one(parameter) * used->at(parameter.name));
}

QString LayoutDialog::cautions() const {
  const Body* body = session_.now().body();
  const auto* anchor = std::get_if<AnchorAtStation>(&session_.plan().placement.anchor);
  const auto bulge = body && anchor ? girth_bulge(layout_, *body, anchor->station) : std::nullopt;
  QString words;
  if (unmeasured_ && anchor)
    words += u'\n' +
             tr("The girths are not this body's: with the layout's middle at station %1 mm, not all of its "
                "height has closed sections. Type the girths, or change station or height.")
                 .arg(figures_text(fixed_text(anchor->station / mm, 1)));
  for (const Phrase& caution : made_layout_cautions(layout_, bulge)) words += u'\n' + text(caution);
  return words;
}

}  // namespace wrapgauge
