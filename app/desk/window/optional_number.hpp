#pragma once
// A number that may be left out of the plan: unchecked, the plan does not name it.

#include <QCheckBox>
#include <functional>
#include <optional>

#include "app/desk/window/number_field.hpp"

namespace wrapgauge {

struct OptionalNumber {
  QCheckBox* box = nullptr;
  NumberField* field = nullptr;

  std::optional<double> value() const;
  void show(std::optional<double> value, double otherwise) const;
  void offer(double number) const;  // shown as long as it is left out
};

// `edited` is told of each change of either; `source` is shown on hover.
OptionalNumber optional_number(QWidget* parent, const QString& title, const QString& unit,
                               const NumberField::Range& range, const QString& source,
                               const std::function<void()>& edited);

}  // namespace wrapgauge
