#include "app/desk/window/number_field.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QWheelEvent>
#include <utility>

#include "app/desk/window/field_remark.hpp"

namespace wrapgauge {

NumberField::NumberField(const QString& name, const QString& unit, const Range& range, QWidget* parent)
    : QDoubleSpinBox(parent) {
  setAccessibleName(unit.isEmpty() ? name : name + QStringLiteral(", ") + unit);
  setRange(range.least, range.most);
  setDecimals(range.decimals);
  setSingleStep(range.step);
  if (!unit.isEmpty()) setSuffix(QStringLiteral(" ") + unit);
  setKeyboardTracking(false);
  setGroupSeparatorShown(false);
  setFocusPolicy(Qt::StrongFocus);
  connect(this, &QDoubleSpinBox::valueChanged, this, &NumberField::edited);
  connect(this, &QDoubleSpinBox::editingFinished, this, &NumberField::say_refused);
}

void NumberField::show_value(double value) {
  if (value == exact_ && QDoubleSpinBox::value() == as_shown_) return;  // what is being typed stays
  const QSignalBlocker quiet(this);
  setValue(value);
  exact_ = value;
  as_shown_ = QDoubleSpinBox::value();
}

double NumberField::value() const {
  const double now = QDoubleSpinBox::value();
  return now == as_shown_ ? exact_ : now;
}

QValidator::State NumberField::validate(QString& input, int& position) const {
  const QString mark = locale().decimalPoint();
  input.replace(QChar('.'), mark).replace(QChar(','), mark);
  const QValidator::State state = QDoubleSpinBox::validate(input, position);
  const auto number = state == QValidator::Invalid ? typed(input) : std::nullopt;
  return number && (*number < minimum() || *number > maximum()) ? QValidator::Intermediate : state;
}

std::optional<double> NumberField::typed(const QString& input) const {
  QString words = input;
  if (words.endsWith(suffix())) words.chop(suffix().size());
  bool is_number = false;
  const double number = locale().toDouble(words.trimmed(), &is_number);
  return is_number ? std::optional(number) : std::nullopt;
}

void NumberField::fixup(QString& input) const {
  const auto number = typed(input);
  if (number && (*number < minimum() || *number > maximum())) refused_ = number;
  QDoubleSpinBox::fixup(input);
}

void NumberField::say_refused() {
  const auto refused = std::exchange(refused_, std::nullopt);
  if (!refused) return;
  const bool above = *refused > maximum();
  const auto with_unit = [this](double number) {
    return locale().toString(number, 'f', decimals()) + suffix();
  };
  FieldRemark::say(*this, (above ? tr("%1 is above %2, the most that can be entered here; it stays %3.")
                                 : tr("%1 is below %2, the least that can be entered here; it stays %3."))
                              .arg(with_unit(*refused), with_unit(above ? maximum() : minimum()), text()));
}

void NumberField::say_source(const QString& source) {
  setToolTip(source);
  setAccessibleDescription(source);
}

void NumberField::wheelEvent(QWheelEvent* event) {
  if (hasFocus())
    QDoubleSpinBox::wheelEvent(event);
  else
    event->ignore();
}

void NumberField::keyPressEvent(QKeyEvent* event) {
  QDoubleSpinBox::keyPressEvent(event);
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) event->accept();
}

PressureField::PressureField(const QString& name, Pressure most, QWidget* parent)
    : QWidget(parent),
      kpa_(new NumberField(name, QStringLiteral("kPa"), {0.0, most / kPa, 2, 0.1}, this)),
      mmhg_(new NumberField(name, QStringLiteral("mmHg"), {0.0, most / mmHg, 1, 1.0}, this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(kpa_, 1);
  row->addWidget(mmhg_, 1);
  setFocusProxy(kpa_);
  connect(kpa_, &NumberField::edited, this, [this](double value) {
    mmhg_->show_value(value * kPa / mmHg);
    emit edited(value * kPa);
  });
  connect(mmhg_, &NumberField::edited, this, [this](double value) {
    kpa_->show_value(value * mmHg / kPa);
    emit edited(value * mmHg);
  });
}

void PressureField::show_value(Pressure pressure) {
  kpa_->show_value(pressure / kPa);
  mmhg_->show_value(pressure / mmHg);
}

Pressure PressureField::value() const {
  return kpa_->value() * kPa;
}

}  // namespace wrapgauge
