#include "app/desk/views/pressure_words.hpp"

#include "model/core/pressure_figures.hpp"

namespace wrapgauge {

QString pressure_words(Pressure pressure, PressureUnit first) {
  const QString kilopascal = QString::fromStdString(kpa_figure(pressure)) + " kPa";
  const QString millimetres = QString::fromStdString(mmhg_figure(pressure)) + " mmHg";
  return first == PressureUnit::kKilopascal ? kilopascal + " (" + millimetres + ")"
                                            : millimetres + " (" + kilopascal + ")";
}

}  // namespace wrapgauge
