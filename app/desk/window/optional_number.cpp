#include "app/desk/window/optional_number.hpp"

#include <QSignalBlocker>

namespace wrapgauge {

std::optional<double> OptionalNumber::value() const {
  if (!box->isChecked()) return std::nullopt;
  return field->value();
}

void OptionalNumber::show(std::optional<double> value, double otherwise) const {
  const QSignalBlocker quiet(box);
  box->setChecked(value.has_value());
  field->setEnabled(value.has_value());
  field->show_value(value.value_or(otherwise));
}

void OptionalNumber::offer(double number) const {
  if (!box->isChecked()) field->show_value(number);
}

OptionalNumber optional_number(QWidget* parent, const QString& title, const QString& unit,
                               const NumberField::Range& range, const QString& source,
                               const std::function<void()>& edited) {
  const OptionalNumber row{new QCheckBox(title, parent), new NumberField(title, unit, range, parent)};
  // As tall as its row, as other labels are: a box of its own height would stand at the row's upper edge.
  row.box->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Preferred);
  row.field->say_source(source);
  row.box->setToolTip(source);
  row.field->setEnabled(false);
  QObject::connect(row.field, &NumberField::edited, parent, edited);
  QObject::connect(row.box, &QCheckBox::toggled, parent, [row, edited](bool on) {
    row.field->setEnabled(on);
    edited();
  });
  return row;
}

}  // namespace wrapgauge
