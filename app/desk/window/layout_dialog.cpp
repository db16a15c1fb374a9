#include "app/desk/window/layout_dialog.hpp"

#include <QApplication>
#include <QScreen>
#include <algorithm>
#include <cmath>

#include "app/desk/session/start_pressure.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/field_remark.hpp"
#include "app/desk/window/measures_panel.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/measured_layout.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/forms/form_dimensions.hpp"
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

// A pressure that nobody chose is to be one that presses little.
QString start_words() {
  return LayoutDialog::tr(
             "An inlet that has no pressure yet starts at %1: low on purpose, by judgement. Raise it in the "
             "step Inflation.")
      .arg(text(figures_of(kStartPressure)));
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
      field_box_(new QWidget(this)),
      picture_(new LayoutPicture(this)),
      about_(words_label({}, this)),
      outcome_(words_label({}, this)) {
  setWindowTitle(tr("Make a layout"));
  resize(QSize(1000, 660).boundedTo(0.94 * screen()->availableSize()));
  for (const LayoutForm& form : layout_forms())
    form_->add(parameter_title(form.name), text(form.name), text(table_words(form.about)));
  arrange();
  connect(form_, &Choice::chosen, this, &LayoutDialog::rebuild);
  connect(qApp, &QApplication::focusChanged, this,
          [this](const QWidget*, const QWidget* now) { show_chosen(now); });
  rebuild();
}

void LayoutDialog::arrange() {
  field_box_->setLayout(fields_);
  fields_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  auto* side = new QWidget(this);
  QVBoxLayout* left = plain_column(side);
  left->addWidget(form_);
  left->addWidget(about_);
  left->addWidget(in_scroll(field_box_, this), 1);
  side->setFixedWidth(330);
  auto* row = new QHBoxLayout;
  row->addWidget(side);
  row->addWidget(picture_, 1);
  auto* column = new QVBoxLayout(this);
  column->addLayout(row, 1);
  column->addWidget(outcome_);
  take_ = add_dialog_buttons(*this, *column, tr("Make"));
}

void LayoutDialog::rebuild() {
  while (fields_->rowCount() > 0) fields_->removeRow(0);
  numbers_.clear();
  given_.clear();
  measured_.clear();
  good_.clear();
  edited_.clear();
  const auto form = find_layout_form(form_->currentData().toString().toStdString());
  if (!form) return;
  about_->setText(text(table_words(form->about)));
  for (const LayoutParameter& parameter : form->parameters) {
    NumberField* field = new_field(parameter, this);
    fields_->addRow(parameter_title(parameter.name), field);
    fields_->labelForField(field)->setToolTip(field->toolTip());
    connect(field, &NumberField::edited, this, [this, name = parameter.name] {
      given_.insert(name);
      edited_ = name;
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
  const auto drawn = made_here(*form, values);
  take_->setEnabled(drawn.ok());
  picture_->show_outdated(!drawn);
  if (!drawn) {
    const QString words = refusal(*form, values);
    outcome_->setText(words.isEmpty() ? text(drawn.problem()) : words);
    if (!words.isEmpty()) FieldRemark::say(*numbers_.at(edited_), words);
    return;
  }
  layout_ = drawn->layout;
  wider_ = drawn->wider;
  good_ = drawn->values;
  show_fitted(*form, good_);
  show_drawn(good_);
  const Bounds2 box = bounds(layout_.outline_m);
  outcome_->setText(tr("%1 × %2 mm. Chambers: %3, inlets: %4.")
                        .arg(figures_text(fixed_text(1e3 * (box.high - box.low).x(), 1)),
                             figures_text(fixed_text(1e3 * (box.high - box.low).y(), 1)))
                        .arg(layout_.chambers.size())
                        .arg(layout_.inlets.size()) +
                    u' ' + start_words() + cautions());
}

// For the body, where the plan places it now.
Result<MadeForBody> LayoutDialog::made_here(const LayoutForm& form,
                                            const std::map<std::string, double>& values) const {
  const Body* body = session_.now().body();
  const auto* anchor = std::get_if<AnchorAtStation>(&session_.plan().placement.anchor);
  if (body && anchor && !unmeasured_) return make_for_body(form, values, *body, anchor->station);
  auto layout = make_layout(form.name, values);
  const auto used = layout_parameters(form.name, values);
  if (!layout || !used) return layout ? used.problem() : layout.problem();
  return MadeForBody{std::move(layout).value(), *used, 0.0};
}

void LayoutDialog::show_drawn(const std::map<std::string, double>& used) {
  std::vector<PictureArrow> arrows;
  for (const FormDimension& one : form_dimensions(used, layout_))
    arrows.push_back({one.parameter == kWidthDimension ? tr("Width") : parameter_title(one.parameter),
                      tr("%1 mm").arg(fixed_words(1e3 * (one.to_m - one.from_m).norm(), 1)), one.from_m,
                      one.to_m, one.whole});
  picture_->show_layout(layout_, std::move(arrows));
}

// How far towards what is typed the field can go from where it could be made last, in its own digits.
QString LayoutDialog::refusal(const LayoutForm& form, std::map<std::string, double> values) const {
  const auto was = good_.find(edited_);
  const auto field = numbers_.find(edited_);
  if (was == good_.end() || field == numbers_.end()) return {};
  const auto parameter = std::find_if(form.parameters.begin(), form.parameters.end(),
                                      [&](const LayoutParameter& one) { return one.name == edited_; });
  const double digits = std::pow(10.0, field->second->decimals()) * shown_for_one(*parameter);
  const auto can_be = [&](double tick) {
    values[edited_] = tick / digits;
    return make_layout(form.name, values).ok();
  };
  double good = std::round(was->second * digits),
         bad = std::round(field->second->value() / shown_for_one(*parameter) * digits);
  if (!can_be(good)) return {};
  while (std::abs(bad - good) > 1.5) {
    const double middle = std::round(0.5 * (good + bad));
    (can_be(middle) ? good : bad) = middle;
  }
  const QString unit = field->second->suffix();
  const auto words = [&](double shown) { return fixed_words(shown, field->second->decimals()) + unit; };
  const double bound = good / digits * shown_for_one(*parameter), typed = field->second->value();
  return (typed > bound ? tr("%1: with these other sizes at most %2 can be made, not %3.")
                        : tr("%1: with these other sizes at least %2 is needed, not %3."))
      .arg(parameter_title(edited_), words(bound), words(typed));
}

void LayoutDialog::show_chosen(const QWidget* focus) {
  for (const auto& [name, field] : numbers_)
    if (focus && (field == focus || field->isAncestorOf(focus)))
      return picture_->show_chosen(parameter_title(name));
}

// What is fitted to the girths and sheets follows them until it is typed.
void LayoutDialog::show_fitted(const LayoutForm& form, const std::map<std::string, double>& used) {
  for (const LayoutParameter& parameter : form.parameters)
    if (parameter.fit && !given_.contains(parameter.name))
      numbers_[parameter.name]->show_value(shown_for_one(parameter) * used.at(parameter.name));
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
  for (const Phrase& caution : made_layout_cautions(layout_, bulge, wider_)) words += u'\n' + text(caution);
  return words;
}

}  // namespace wrapgauge
