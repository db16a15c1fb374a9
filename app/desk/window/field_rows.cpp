#include "app/desk/window/field_rows.hpp"

namespace wrapgauge {

void FieldRows::place(const FieldText& text, QWidget* field) const {
  field->setObjectName(QString::fromLatin1(text.object));
  if (!text.title.isEmpty()) form_->addRow(text.title, field);
}

NumberField* FieldRows::new_number(const FieldText& text, const QString& unit,
                                   const NumberField::Range& range,
                                   std::function<void(double)> edited) const {
  auto* field = new NumberField(text.name(), unit, range, owner_);
  if (!text.source.isEmpty()) field->say_source(text.source);
  QObject::connect(field, &NumberField::edited, owner_, std::move(edited));
  place(text, field);
  return field;
}

OptionalNumber FieldRows::new_optional(const FieldText& text, const QString& unit,
                                       const NumberField::Range& range,
                                       std::function<void(std::optional<double>)> edited) const {
  auto row = std::make_shared<OptionalNumber>();
  *row =
      optional_number(owner_, text.title, unit, range, text.source, [row, edited] { edited(row->value()); });
  row->field->setObjectName(QString::fromLatin1(text.object));
  form_->addRow(row->box, row->field);
  return *row;
}

Choice* FieldRows::new_choice(const FieldText& text, const std::vector<ChoiceEntry>& entries,
                              std::function<void(const QVariant&)> edited) const {
  auto* field = new Choice(text.name(), owner_);
  field->add(entries);
  QObject::connect(field, &Choice::chosen, owner_, std::move(edited));
  place(text, field);
  return field;
}

QCheckBox* FieldRows::new_box(const FieldText& text, std::function<void(bool)> edited) const {
  auto* field = new QCheckBox(text.title, owner_);
  field->setObjectName(QString::fromLatin1(text.object));
  field->setToolTip(text.source);
  QObject::connect(field, &QCheckBox::clicked, owner_, std::move(edited));
  form_->addRow(field);
  return field;
}

LineField* FieldRows::new_line(const FieldText& text, std::function<void(const std::string&)> edited) const {
  auto* field = new LineField(text.name(), owner_);
  QObject::connect(field, &QLineEdit::editingFinished, owner_,
                   [field, edited] { edited(field->text().trimmed().toStdString()); });
  place(text, field);
  return field;
}

void FieldRows::be_there(QWidget* field, bool is_there) const {
  if (!hides_)
    field->setEnabled(is_there);
  else if (form_->indexOf(field) >= 0)
    form_->setRowVisible(field, is_there);
  else
    field->setVisible(is_there);
}

}  // namespace wrapgauge
