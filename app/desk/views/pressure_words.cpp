#include "app/desk/views/pressure_words.hpp"

#include "model/core/number_text.hpp"

namespace wrapgauge {

QString pressure_words(Pressure pressure, PressureUnit first) {
  const QString kilopascal = QString::fromStdString(fixed_text(pressure / kPa, 1)) + " kPa";
  const QString millimetres = QString::fromStdString(fixed_text(pressure / mmHg, 0)) + " mmHg";
  return first == PressureUnit::kKilopascal ? kilopascal + " (" + millimetres + ")"
                                            : millimetres + " (" + kilopascal + ")";
}

}  // namespace wrapgauge
