#include "app/desk/views/view_legend.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "app/desk/words/phrase_text.hpp"
#include "app/picture/colour_map.hpp"
#include "app/picture/nice_axis.hpp"

namespace wrapgauge {
namespace {

constexpr double kBarWide = 14.0;

// One side of the bar: ticks at round values of its unit.
void draw_ticks(QPainter& painter, const QRectF& bar, double top, bool left, const ViewColours& colours) {
  const double height = painter.fontMetrics().height();
  const double step = round_step(top, std::max(2.0, bar.height() / (1.8 * height)), 0.01);
  painter.setPen(QPen(colours.ink, 1.0));
  for (double value = 0.0; value <= top * 1.0001; value += step) {
    const double y = bar.bottom() - value / top * bar.height();
    const double x = left ? bar.left() : bar.right(), out = left ? -4.0 : 4.0;
    painter.drawLine(QPointF(x, y), QPointF(x + out, y));
    const QRectF box(left ? x - 66.0 : x + 6.0, y - height, 60.0, 2.0 * height);
    painter.drawText(box, (left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                     fixed_words(value, step < 1.0 ? 1 : 0));
  }
}

void draw_bar(QPainter& painter, const QRectF& bar, const LegendLook& look) {
  for (int i = 0; i < static_cast<int>(bar.height()); ++i)
    painter.fillRect(QRectF(bar.left(), bar.bottom() - i - 1, bar.width(), 1.5),
                     map_colour((i + 0.5) / bar.height(), look.dimmed));
  painter.setPen(QPen(look.colours.ink, 1.0));
  painter.drawRect(bar);
}

void draw_limits(QPainter& painter, const QRectF& bar, const MapScene& scale, const LegendLook& look) {
  for (const BarMark& mark : scale.limits) {
    const double y = bar.bottom() - mark.pressure_pa / scale.top_pa * bar.height();
    if (y < bar.top()) continue;
    painter.setPen(QPen(look.colours.paper, 4.0));
    painter.drawLine(QPointF(bar.left() - 2, y), QPointF(bar.right() + 2, y));
    painter.setPen(QPen(look.colours.ink, 2.0));
    painter.drawLine(QPointF(bar.left() - 6, y), QPointF(bar.right() + 6, y));
  }
}

// A view in which a full legend would take the room that the body needs.
bool is_narrow(double view_width) {
  return view_width < 430.0;
}

double bar_width(const QFontMetricsF& metrics) {
  return 2.0 * (metrics.horizontalAdvance("mmHg") + 14.0) + kBarWide;
}

QString limits_words(const MapScene& scale, PressureUnit first, bool narrow) {
  if (scale.limits.empty()) return {};
  QStringList values;
  for (const BarMark& mark : scale.limits) {
    const Pressure limit(mark.limit_pa);
    values += first == PressureUnit::kKilopascal ? fixed_words(limit / kPa, 1) : fixed_words(limit / mmHg, 0);
  }
  return (narrow ? QCoreApplication::translate("ViewLegend", "— limit\n%1 %2\n÷ %3")
                 : QCoreApplication::translate("ViewLegend", "— limit %1 %2 ÷ %3"))
      .arg(values.join(", "), first == PressureUnit::kKilopascal ? "kPa" : "mmHg",
           fixed_words(scale.model_factor, 1));
}

}  // namespace

int legend_width(const QFont& font, double view_width) {
  const QFontMetricsF metrics(font);
  const double words =
      metrics.horizontalAdvance(is_narrow(view_width) ? "— 4.0 kPa" : "— limit 4.0 kPa ÷ 1.5");
  return static_cast<int>(std::max(words, bar_width(metrics)) + 32.0);
}

QRectF draw_pressure_legend(QPainter& painter, const QRectF& area, const MapScene& scale,
                            const LegendLook& look) {
  painter.setFont(look.font);
  const QFontMetricsF metrics(look.font);
  const bool narrow = is_narrow(area.width());
  const double line = metrics.height(), side = metrics.horizontalAdvance("mmHg") + 14.0;
  const QString limits = limits_words(scale, look.first, narrow);
  const QSizeF below = limits.isEmpty() ? QSizeF() : metrics.size(0, limits);
  const double width = std::max(bar_width(metrics), below.width() + 16.0);
  const double height =
      std::min(area.height() - 16.0, (narrow ? 120.0 : 260.0) + 2.0 * line + below.height());
  const QRectF plate(area.right() - width - 8.0, area.top() + 8.0, width, height);
  if (height < 6.0 * line || width > 0.6 * area.width()) return {};
  draw_bare_plate(painter, plate, look.colours);
  const QRectF bar(plate.center().x() - 0.5 * kBarWide, plate.top() + 1.9 * line, kBarWide,
                   height - 2.7 * line - below.height());
  painter.drawText(QRectF(bar.left() - side - 4, plate.top() + 3, side, line), Qt::AlignRight, "kPa");
  painter.drawText(QRectF(bar.right() + 6, plate.top() + 3, side + 6, line), Qt::AlignLeft, "mmHg");
  draw_bar(painter, bar, look);
  draw_ticks(painter, bar, scale.top_pa / kPa.si(), true, look.colours);
  draw_ticks(painter, bar, scale.top_pa / mmHg.si(), false, look.colours);
  draw_limits(painter, bar, scale, look);
  painter.drawText(
      QRectF(plate.left(), plate.bottom() - below.height() - 0.4 * line, plate.width(), below.height()),
      Qt::AlignCenter, limits);
  return plate;
}

void draw_bare_plate(QPainter& painter, const QRectF& plate, const ViewColours& colours) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(colours.plate);
  painter.drawRoundedRect(plate, 5.0, 5.0);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(colours.ink);
}

QRectF draw_length_scale(QPainter& painter, const QRectF& area, double pixels_per_m, const LegendLook& look) {
  const double length_mm = scale_length_mm(pixels_per_m, 110.0);
  painter.setFont(look.font);
  const QFontMetricsF metrics(look.font);
  const QString words = fixed_words(length_mm, length_mm < 1.0 ? 1 : 0) + " mm";
  const double pixels = length_mm * 1e-3 * pixels_per_m, text = metrics.horizontalAdvance(words);
  const QRectF plate(area.left() + 8, area.bottom() - metrics.height() - 14, pixels + text + 26,
                     metrics.height() + 6);
  draw_bare_plate(painter, plate, look.colours);
  const QPointF left(plate.left() + 8, plate.center().y()), right = left + QPointF(pixels, 0);
  painter.setPen(QPen(look.colours.ink, 2.0));
  painter.drawLine(left, right);
  for (const QPointF& end : {left, right}) painter.drawLine(end - QPointF(0, 5), end + QPointF(0, 5));
  painter.drawText(QRectF(right.x() + 8, plate.top(), text + 8, plate.height()), Qt::AlignVCenter, words);
  return plate;
}

QRectF draw_plate(QPainter& painter, const QPointF& centre, const QString& words, const LegendLook& look) {
  const QSizeF size = plate_size(words, QFontMetricsF(look.font));
  const QRectF plate(centre - QPointF(0.5 * size.width(), 0.5 * size.height()), size);
  painter.setFont(look.font);
  draw_bare_plate(painter, plate, look.colours);
  painter.drawText(plate, Qt::AlignCenter, words);
  return plate;
}

QSizeF plate_size(const QString& words, const QFontMetricsF& metrics) {
  return metrics.size(0, words) + QSizeF(kPlateRim, 4.0);
}

}  // namespace wrapgauge
