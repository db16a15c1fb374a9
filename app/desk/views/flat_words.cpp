#include "app/desk/views/flat_words.hpp"

#include <algorithm>

#include "app/desk/views/pressure_words.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

QStringList broken(const QString& name, const QFontMetricsF& metrics, double width) {
  if (metrics.horizontalAdvance(name) <= width) return {name};
  QStringList lines;
  for (const QString& word : name.split(' ', Qt::SkipEmptyParts)) {
    const QString longer = lines.isEmpty() ? word : lines.last() + ' ' + word;
    if (!lines.isEmpty() && metrics.horizontalAdvance(longer) <= width)
      lines.last() = longer;
    else
      lines += word;
  }
  return lines;
}

}  // namespace

QStringList chamber_lines(const QString& name, std::optional<Pressure> peak, PressureUnit first,
                          const QFontMetricsF& metrics, double width) {
  QStringList lines = broken(name, metrics, width);
  if (peak) {
    const QString whole = pressure_words(*peak, first);
    QString shown = whole;
    for (const char* cut : {" (", " "})
      if (metrics.horizontalAdvance(shown) > width) shown = whole.section(QLatin1String(cut), 0, 0);
    lines += shown;
  }
  for (QString& line : lines) line = metrics.elidedText(line, Qt::ElideRight, std::max(width, 12.0));
  return lines;
}

QString millimetres(double length_m) {
  return QString::fromStdString(fixed_text(1e3 * length_m, 1));
}

}  // namespace wrapgauge
