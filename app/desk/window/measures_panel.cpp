#include "app/desk/window/measures_panel.hpp"

#include <QCoreApplication>
#include <QVBoxLayout>
#include <array>

#include "app/desk/session/text.hpp"
#include "app/desk/window/step_form.hpp"
#include "bodyforms/form.hpp"

namespace wrapgauge {
namespace {

const Form* form_called(const std::string& name) {
  for (const Form& form : forms())
    if (form.name == name) return &form;
  return nullptr;
}

bool is_length(const FormParameter& parameter) {
  return parameter.most > 10.0;  // aspects are plain numbers of a few units
}

// The names of forms and of their measures, and of layouts that are made, for the translator.
[[maybe_unused]] constexpr std::array kTitles{QT_TRANSLATE_NOOP("Measure", "Wrist"),
                                              QT_TRANSLATE_NOOP("Measure", "Length"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth hand root"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth wrist"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth above"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect wrist"),
                                              QT_TRANSLATE_NOOP("Measure", "Edge"),
                                              QT_TRANSLATE_NOOP("Measure", "Forearm"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth forearm"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth elbow"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect elbow"),
                                              QT_TRANSLATE_NOOP("Measure", "Upper arm"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth middle"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth armpit"),
                                              QT_TRANSLATE_NOOP("Measure", "Hand back"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth hand"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect hand"),
                                              QT_TRANSLATE_NOOP("Measure", "Thigh"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth lower thigh"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth thigh"),
                                              QT_TRANSLATE_NOOP("Measure", "Knee"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth knee"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth below"),
                                              QT_TRANSLATE_NOOP("Measure", "Calf"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth ankle"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth calf"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect ankle"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect knee"),
                                              QT_TRANSLATE_NOOP("Measure", "Ankle"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth malleoli"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect malleoli"),
                                              QT_TRANSLATE_NOOP("Measure", "Lower leg"),
                                              QT_TRANSLATE_NOOP("Measure", "Torso"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth hip"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth waist"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth chest"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect hip"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect waist"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect chest"),
                                              QT_TRANSLATE_NOOP("Measure", "Head band"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth head"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect head"),
                                              QT_TRANSLATE_NOOP("Measure", "Tapered limb"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth distal"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth proximal"),
                                              QT_TRANSLATE_NOOP("Measure", "Middle"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect distal"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect proximal"),
                                              QT_TRANSLATE_NOOP("Measure", "Cylinder"),
                                              QT_TRANSLATE_NOOP("Measure", "Girth"),
                                              QT_TRANSLATE_NOOP("Measure", "Aspect"),
                                              QT_TRANSLATE_NOOP("Measure", "Cone"),
                                              QT_TRANSLATE_NOOP("Measure", "Sphere"),
                                              QT_TRANSLATE_NOOP("Measure", "Ellipsoid"),
                                              QT_TRANSLATE_NOOP("Measure", "Cuff"),
                                              QT_TRANSLATE_NOOP("Measure", "Height"),
                                              QT_TRANSLATE_NOOP("Measure", "Chambers"),
                                              QT_TRANSLATE_NOOP("Measure", "Rows"),
                                              QT_TRANSLATE_NOOP("Measure", "Stretch"),
                                              QT_TRANSLATE_NOOP("Measure", "Backing"),
                                              QT_TRANSLATE_NOOP("Measure", "Seam"),
                                              QT_TRANSLATE_NOOP("Measure", "Rim"),
                                              QT_TRANSLATE_NOOP("Measure", "Corner"),
                                              QT_TRANSLATE_NOOP("Measure", "Channel"),
                                              QT_TRANSLATE_NOOP("Measure", "Overlap"),
                                              QT_TRANSLATE_NOOP("Measure", "Sleeve"),
                                              QT_TRANSLATE_NOOP("Measure", "Bands"),
                                              QT_TRANSLATE_NOOP("Measure", "Ease"),
                                              QT_TRANSLATE_NOOP("Measure", "Graduated sleeve"),
                                              QT_TRANSLATE_NOOP("Measure", "Ease distal"),
                                              QT_TRANSLATE_NOOP("Measure", "Ease proximal"),
                                              QT_TRANSLATE_NOOP("Measure", "Round pad"),
                                              QT_TRANSLATE_NOOP("Measure", "Diameter"),
                                              QT_TRANSLATE_NOOP("Measure", "Rings"),
                                              QT_TRANSLATE_NOOP("Measure", "Spots"),
                                              QT_TRANSLATE_NOOP("Measure", "Spot radius"),
                                              QT_TRANSLATE_NOOP("Measure", "Quilted pack"),
                                              QT_TRANSLATE_NOOP("Measure", "Cover"),
                                              QT_TRANSLATE_NOOP("Measure", "Spacing")};

}  // namespace

QString parameter_title(const std::string& name) {
  QString title = text(name).replace(QChar('_'), QChar(' ')).replace(QChar('-'), QChar(' '));
  if (!title.isEmpty()) title[0] = title[0].toUpper();
  return QCoreApplication::translate("Measure", title.toUtf8().constData());
}

MeasuresPanel::MeasuresPanel(QWidget* parent)
    : QWidget(parent),
      form_(new Choice(tr("Form of the body"), this)),
      sex_(new Choice(tr("Survey"), this)),
      side_(new Choice(tr("Side"), this)),
      percentile_(new NumberField(tr("Percentile"), QStringLiteral("%"), {1.0, 99.0, 0, 5.0}, this)),
      about_(words_label({}, this)),
      fields_(new QFormLayout) {
  for (const Form& form : forms()) form_->add(parameter_title(form.name), text(form.name), text(form.about));
  sex_->add(tr("men"), int(Sex::kMale));
  sex_->add(tr("women"), int(Sex::kFemale));
  side_->add(tr("right"), int(BodySide::kRight));
  side_->add(tr("left"), int(BodySide::kLeft));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  QFormLayout* top = column_form(nullptr);
  top->addRow(tr("Form"), form_);
  top->addRow(tr("Survey of"), sex_);
  top->addRow(tr("Percentile"), percentile_);
  top->addRow(tr("Side"), side_);
  column->addLayout(top);
  column->addWidget(about_);
  fields_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  column->addLayout(fields_);
  connect(form_, &Choice::chosen, this, [this](const QVariant& value) {
    body_.form = value.toString().toStdString();
    body_.parameters.clear();
    if (!form_called(body_.form)->sided) body_.person.side = BodySide::kRight;
    emit edited({});
  });
  connect(sex_, &Choice::chosen, this, [this](const QVariant& value) {
    body_.person.sex = static_cast<Sex>(value.toInt());
    emit edited({});
  });
  connect(side_, &Choice::chosen, this, [this](const QVariant& value) {
    body_.person.side = static_cast<BodySide>(value.toInt());
    emit edited({});
  });
  connect(percentile_, &NumberField::edited, this, [this](double value) {
    body_.person.percentile = value;
    if (!body_.person.sex) body_.person.sex = Sex::kMale;
    emit edited(QStringLiteral("body.percentile"));
  });
}

void MeasuresPanel::show_form(const BodyForm& body) {
  body_ = body;
  form_->show_value(text(body.form));
  show_person();
  if (built_for_ != body.form) rebuild_fields();
  fill_values();
}

void MeasuresPanel::show_person() {
  sex_->show_value(int(body_.person.sex.value_or(Sex::kMale)));
  percentile_->show_value(body_.person.percentile.value_or(50.0));
  side_->show_value(int(body_.person.side));
  const Form* form = form_called(body_.form);
  side_->setEnabled(form && form->sided);
  about_->setText(form ? text(form->about) : QString());
}

void MeasuresPanel::rebuild_fields() {
  while (fields_->rowCount() > 0) fields_->removeRow(0);
  numbers_.clear();
  built_for_ = body_.form;
  const Form* form = form_called(body_.form);
  if (!form) return;
  for (const FormParameter& parameter : form->parameters) {
    const QString title = parameter_title(parameter.name);
    const bool length = is_length(parameter);
    auto* field =
        new NumberField(title, length ? QStringLiteral("mm") : QString(),
                        {parameter.least, parameter.most, length ? 1 : 3, length ? 1.0 : 0.01}, this);
    field->say_source(text(parameter.meaning + ". " + parameter.source));
    fields_->addRow(title, field);
    fields_->labelForField(field)->setToolTip(field->toolTip());
    connect(field, &NumberField::edited, this, [this, name = parameter.name](double value) {
      body_.parameters[name] = value;
      emit edited(QStringLiteral("body.") + text(name));
    });
    numbers_[parameter.name] = field;
  }
}

// Measures that were not given are shown as the survey has them.
void MeasuresPanel::fill_values() {
  std::map<std::string, double> coarse = body_.parameters;
  if (numbers_.contains("edge")) coarse["edge"] = numbers_["edge"]->maximum();
  const auto made = make_measured_form(body_.form, coarse, body_.person);
  const Form* form = form_called(body_.form);
  if (!form) return;
  for (const FormParameter& parameter : form->parameters) {
    NumberField* field = numbers_[parameter.name];
    const auto given = body_.parameters.find(parameter.name);
    double value = parameter.default_value.value_or(parameter.least);
    if (made && parameter.name != "edge") value = made->values.at(parameter.name);
    field->show_value(given != body_.parameters.end() ? given->second : value);
    QFont font = field->font();
    font.setBold(given != body_.parameters.end());  // what was given stands out from what the survey says
    field->setFont(font);
  }
}

}  // namespace wrapgauge
