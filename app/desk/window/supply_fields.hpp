#pragma once
// The session over time, and what fills, holds and vents the device.

#include "app/desk/window/choice.hpp"
#include "app/desk/window/optional_number.hpp"
#include "model/plan/plan.hpp"

class QFormLayout;

namespace wrapgauge {

class SupplyFields : public QWidget {
  Q_OBJECT
 public:
  explicit SupplyFields(QWidget* parent = nullptr);

  void show_plan(const Plan& plan);
  void apply(Plan& plan) const;

 signals:
  void edited();

 private:
  OptionalNumber add_optional(QFormLayout& form, const QString& title, const QString& unit,
                              const NumberField::Range& range, const QString& source);
  NumberField* add_number(QFormLayout& form, const QString& title, const QString& unit,
                          const NumberField::Range& range, const QString& source);
  void make_session(QFormLayout& form);
  void make_supply(QFormLayout& form);
  void make_filling(QFormLayout& form);

  OptionalNumber minutes_, hold_, off_, syringe_, pump_, tubing_, relief_, celsius_, contact_;
  NumberField *ramp_, *syringe_bore_, *thumb_, *tubing_bore_, *dead_;
  Choice* medium_;
};

}  // namespace wrapgauge
