#include "app/desk/window/measures_panel.hpp"

#include <QCoreApplication>

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
constexpr std::size_t count_of(auto... titles) {
  return sizeof...(titles);
}
[[maybe_unused]] constexpr std::size_t kTitles =
    count_of(QT_TRANSLATE_NOOP("Measure", "Wrist"), QT_TRANSLATE_NOOP("Measure", "Length"),
             QT_TRANSLATE_NOOP("Measure", "Girth hand root"), QT_TRANSLATE_NOOP("Measure", "Girth wrist"),
             QT_TRANSLATE_NOOP("Measure", "Girth above"), QT_TRANSLATE_NOOP("Measure", "Aspect wrist"),
             QT_TRANSLATE_NOOP("Measure", "Edge"), QT_TRANSLATE_NOOP("Measure", "Forearm"),
             QT_TRANSLATE_NOOP("Measure", "Girth forearm"), QT_TRANSLATE_NOOP("Measure", "Girth elbow"),
             QT_TRANSLATE_NOOP("Measure", "Aspect elbow"), QT_TRANSLATE_NOOP("Measure", "Upper arm"),
             QT_TRANSLATE_NOOP("Measure", "Girth middle"), QT_TRANSLATE_NOOP("Measure", "Girth armpit"),
             QT_TRANSLATE_NOOP("Measure", "Hand back"), QT_TRANSLATE_NOOP("Measure", "Girth hand"),
             QT_TRANSLATE_NOOP("Measure", "Aspect hand"), QT_TRANSLATE_NOOP("Measure", "Thigh"),
             QT_TRANSLATE_NOOP("Measure", "Girth lower thigh"), QT_TRANSLATE_NOOP("Measure", "Girth thigh"),
             QT_TRANSLATE_NOOP("Measure", "Knee"), QT_TRANSLATE_NOOP("Measure", "Girth knee"),
             QT_TRANSLATE_NOOP("Measure", "Girth below"), QT_TRANSLATE_NOOP("Measure", "Calf"),
             QT_TRANSLATE_NOOP("Measure", "Girth ankle"), QT_TRANSLATE_NOOP("Measure", "Girth calf"),
             QT_TRANSLATE_NOOP("Measure", "Aspect ankle"), QT_TRANSLATE_NOOP("Measure", "Aspect knee"),
             QT_TRANSLATE_NOOP("Measure", "Ankle"), QT_TRANSLATE_NOOP("Measure", "Girth malleoli"),
             QT_TRANSLATE_NOOP("Measure", "Aspect malleoli"), QT_TRANSLATE_NOOP("Measure", "Lower leg"),
             QT_TRANSLATE_NOOP("Measure", "Torso"), QT_TRANSLATE_NOOP("Measure", "Girth hip"),
             QT_TRANSLATE_NOOP("Measure", "Girth waist"), QT_TRANSLATE_NOOP("Measure", "Girth chest"),
             QT_TRANSLATE_NOOP("Measure", "Aspect hip"), QT_TRANSLATE_NOOP("Measure", "Aspect waist"),
             QT_TRANSLATE_NOOP("Measure", "Aspect chest"), QT_TRANSLATE_NOOP("Measure", "Head band"),
             QT_TRANSLATE_NOOP("Measure", "Girth head"), QT_TRANSLATE_NOOP("Measure", "Aspect head"),
             QT_TRANSLATE_NOOP("Measure", "Tapered limb"), QT_TRANSLATE_NOOP("Measure", "Girth distal"),
             QT_TRANSLATE_NOOP("Measure", "Girth proximal"), QT_TRANSLATE_NOOP("Measure", "Middle"),
             QT_TRANSLATE_NOOP("Measure", "Aspect distal"), QT_TRANSLATE_NOOP("Measure", "Aspect proximal"),
             QT_TRANSLATE_NOOP("Measure", "Cylinder"), QT_TRANSLATE_NOOP("Measure", "Girth"),
             QT_TRANSLATE_NOOP("Measure", "Aspect"), QT_TRANSLATE_NOOP("Measure", "Cone"),
             QT_TRANSLATE_NOOP("Measure", "Sphere"), QT_TRANSLATE_NOOP("Measure", "Ellipsoid"),
             QT_TRANSLATE_NOOP("Measure", "Cuff"), QT_TRANSLATE_NOOP("Measure", "Height"),
             QT_TRANSLATE_NOOP("Measure", "Chambers"), QT_TRANSLATE_NOOP("Measure", "Rows"),
             QT_TRANSLATE_NOOP("Measure", "Stretch"), QT_TRANSLATE_NOOP("Measure", "Backing"),
             QT_TRANSLATE_NOOP("Measure", "Seam"), QT_TRANSLATE_NOOP("Measure", "Rim"),
             QT_TRANSLATE_NOOP("Measure", "Corner"), QT_TRANSLATE_NOOP("Measure", "Channel"),
             QT_TRANSLATE_NOOP("Measure", "Overlap"), QT_TRANSLATE_NOOP("Measure", "Sleeve"),
             QT_TRANSLATE_NOOP("Measure", "Bands"), QT_TRANSLATE_NOOP("Measure", "Growth"),
             QT_TRANSLATE_NOOP("Measure", "Strap width"), QT_TRANSLATE_NOOP("Measure", "Graduated sleeve"),
             QT_TRANSLATE_NOOP("Measure", "Stretch distal"), QT_TRANSLATE_NOOP("Measure", "Stretch proximal"),
             QT_TRANSLATE_NOOP("Measure", "Round pad"), QT_TRANSLATE_NOOP("Measure", "Diameter"),
             QT_TRANSLATE_NOOP("Measure", "Rings"), QT_TRANSLATE_NOOP("Measure", "Spots"),
             QT_TRANSLATE_NOOP("Measure", "Spot radius"), QT_TRANSLATE_NOOP("Measure", "Quilted pack"),
             QT_TRANSLATE_NOOP("Measure", "Cover"), QT_TRANSLATE_NOOP("Measure", "Spacing"));

}  // namespace

QString parameter_title(const std::string& name) {
  QString title = text(name).replace(QChar('_'), QChar(' ')).replace(QChar('-'), QChar(' '));
  if (!title.isEmpty()) title[0] = title[0].toUpper();
  return QCoreApplication::translate("Measure", title.toUtf8().constData());
}

MeasuresPanel::MeasuresPanel(FieldForm<BodyForm>::Take take, QWidget* parent)
    : QWidget(parent),
      about_(words_label({}, this)),
      take_(std::move(take)),
      person_(this, column_form(nullptr), take_),
      measures_(this, column_form(nullptr), take_) {
  std::vector<ChoiceEntry> all;
  for (const Form& form : forms())
    all.push_back({parameter_title(form.name), text(form.name), text(form.about)});
  person_.choice_by(
      FieldText(tr("Form"), tr("Form of the body")), all,
      [](const BodyForm& body) { return text(body.form); },
      [](BodyForm& body, const QVariant& value) {
        body.form = value.toString().toStdString();
        body.parameters.clear();
        if (!form_called(body.form)->sided) body.person.side = BodySide::kRight;
      });
  person_.choice_by(
      FieldText(tr("Survey of"), tr("Survey")),
      {{tr("men"), int(Sex::kMale)}, {tr("women"), int(Sex::kFemale)}},
      [](const BodyForm& body) { return int(body.person.sex.value_or(Sex::kMale)); },
      [](BodyForm& body, const QVariant& value) { body.person.sex = static_cast<Sex>(value.toInt()); });
  person_.number_by(
      FieldText(tr("Percentile")), kInPercent.words, {1.0, 99.0, 0, 5.0},
      [](const BodyForm& body) { return std::optional(body.person.percentile.value_or(50.0)); },
      [](BodyForm& body, double value) {
        body.person.percentile = value;
        if (!body.person.sex) body.person.sex = Sex::kMale;
      });
  Choice* side = person_.choice(FieldText(tr("Side")),
                                {{tr("right"), int(BodySide::kRight)}, {tr("left"), int(BodySide::kLeft)}},
                                [](auto& body) { return &body.person.side; });
  person_.also([this, side](const BodyForm& body) {
    const Form* form = form_called(body.form);
    side->setEnabled(form && form->sided);
    about_->setText(form ? text(form->about) : QString());
  });
  QVBoxLayout* column = plain_column(this);
  column->addLayout(&person_.layout());
  column->addWidget(about_);
  column->addLayout(&measures_.layout());
}

void MeasuresPanel::show_form(const BodyForm& body) {
  if (built_for_ != body.form) rebuild(body.form);
  take_survey(body);
  person_.show(body);
  measures_.show(body);
}

void MeasuresPanel::rebuild(const std::string& form_name) {
  QFormLayout* rows = &measures_.layout();
  while (rows->rowCount() > 0) rows->removeRow(0);
  measures_ = FieldForm<BodyForm>(this, rows, take_);
  built_for_ = form_name;
  const Form* form = form_called(form_name);
  if (!form) return;
  for (const FormParameter& parameter : form->parameters) add_measure(parameter);
}

// What was given stands out from what the survey says.
void MeasuresPanel::add_measure(const FormParameter& parameter) {
  const bool length = is_length(parameter);
  const std::string name = parameter.name;
  NumberField* field = measures_.number_by(
      FieldText(parameter_title(name), {}, text(parameter.meaning + ". " + parameter.source)),
      length ? kInMm.words : kPlain.words,
      {parameter.least, parameter.most, length ? 1 : 3, length ? 1.0 : 0.01},
      [this, name](const BodyForm& body) {
        const auto given = body.parameters.find(name);
        return std::optional(given != body.parameters.end() ? given->second : surveyed_.at(name));
      },
      [name](BodyForm& body, double value) { body.parameters[name] = value; });
  measures_.layout().labelForField(field)->setToolTip(field->toolTip());
  measures_.also([field, name](const BodyForm& body) {
    QFont font = field->font();
    font.setBold(body.parameters.contains(name));
    field->setFont(font);
  });
}

// The measures that the survey gives this person with what is known of them; those of a coarse mesh are the
// same.
void MeasuresPanel::take_survey(const BodyForm& body) {
  const Form* form = form_called(body.form);
  if (!form) return;
  std::map<std::string, double> coarse = body.parameters;
  for (const FormParameter& parameter : form->parameters)
    if (parameter.name == "edge") coarse["edge"] = parameter.most;
  const auto made = make_measured_form(body.form, coarse, body.person);
  for (const FormParameter& parameter : form->parameters)
    surveyed_[parameter.name] = made && parameter.name != "edge"
                                    ? made->values.at(parameter.name)
                                    : parameter.default_value.value_or(parameter.least);
}

}  // namespace wrapgauge
