#include "app/desk/views/pressure_words.hpp"

#include "app/desk/words/phrase_text.hpp"
#include "model/core/pressure_figures.hpp"

namespace wrapgauge {

QString pressure_words(Pressure pressure, PressureUnit first) {
  const QString kilopascal = figures_text(kpa_figure(pressure)) + " kPa";
  const QString millimetres = figures_text(mmhg_figure(pressure)) + " mmHg";
  return first == PressureUnit::kKilopascal ? kilopascal + " (" + millimetres + ")"
                                            : millimetres + " (" + kilopascal + ")";
}

}  // namespace wrapgauge
