#pragma once
// Numbers with their unit, edited one at a time; each finished edit is told once.

#include <QDoubleSpinBox>
#include <optional>

#include "model/core/quantity.hpp"

namespace wrapgauge {

class NumberField : public QDoubleSpinBox {
  Q_OBJECT
 public:
  struct Range {
    double least = -1e6, most = 1e6;
    int decimals = 1;
    double step = 1.0;
  };
  // `name` is what a screen reader says; `source` is shown on hover.
  NumberField(const QString& name, const QString& unit, const Range& range, QWidget* parent = nullptr);

  void show_value(double value);  // without telling it as an edit
  // What was shown, with all its digits, until someone types another number.
  double value() const;
  void say_source(const QString& source);

  // A point or a comma, whichever the language writes: no thousands are marked here.
  // A number out of range can be typed; it is refused when it is finished, with words beside the field.
  QValidator::State validate(QString& input, int& position) const override;
  void fixup(QString& input) const override;

 signals:
  void edited(double value);

 protected:
  void keyPressEvent(QKeyEvent* event) override;  // Enter ends the number and not the dialog it stands in
  void wheelEvent(QWheelEvent* event) override;   // a column that is scrolled changes no number

 private:
  std::optional<double> typed(const QString& input) const;
  void say_refused();

  double exact_ = 0.0, as_shown_ = 0.0;
  mutable std::optional<double> refused_;  // the number that was typed last and lies out of range
};

// A pressure in kPa and mmHg side by side; either can be edited.
class PressureField : public QWidget {
  Q_OBJECT
 public:
  PressureField(const QString& name, Pressure most, QWidget* parent = nullptr);

  void show_value(Pressure pressure);
  Pressure value() const;
  NumberField& kpa() { return *kpa_; }

 signals:
  void edited(Pressure pressure);

 private:
  NumberField *kpa_, *mmhg_;
};

}  // namespace wrapgauge
