#include "app/desk/views/flat_words.hpp"

#include <algorithm>
#include <utility>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {

QStringList broken_lines(const QString& words, const QFontMetricsF& metrics, double width) {
  QStringList lines;
  const QString held = QString(words).replace(QStringLiteral(" mm"), QStringLiteral("\u00a0mm"));
  for (const QString& line : held.split('\n')) {
    QString filled;
    for (const QString& word : line.split(' ', Qt::SkipEmptyParts)) {
      const QString longer = filled.isEmpty() ? word : filled + ' ' + word;
      if (!filled.isEmpty() && metrics.horizontalAdvance(longer) > width)
        lines += std::exchange(filled, word);
      else
        filled = longer;
    }
    lines += filled;
  }
  return lines;
}

QStringList chamber_lines(const QString& name, std::optional<Pressure> peak, PressureUnit first,
                          const QFontMetricsF& metrics, double width) {
  QStringList lines = broken_lines(name, metrics, width);
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
  return fixed_words(1e3 * length_m, 1);
}

}  // namespace wrapgauge
