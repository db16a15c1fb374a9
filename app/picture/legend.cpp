#include "app/picture/legend.hpp"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/picture/colour_map.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

QString number(double value, int decimals) {
  return QString::fromStdString(fixed_text(value, decimals));
}

double tick_step_pa(double top_pa) {
  for (double step = 100.0;; step *= 10.0)
    for (const double factor : {1.0, 2.0, 5.0})
      if (top_pa / (factor * step) <= 6.5) return factor * step;
}

void draw_limit_mark(QPainter& painter, const QRectF& bar, const MapScene& scene, const LimitMark& mark) {
  const double share = mark.pressure_pa / scene.top_pa;
  if (share > 1.0) return;
  const double y = bar.bottom() - share * bar.height();
  painter.setPen(QPen(QColor(255, 255, 255), 4.4));
  painter.drawLine(QPointF(bar.left() - 8, y), QPointF(bar.right() + 4, y));
  painter.setPen(QPen(kInk, 2.2));
  painter.drawLine(QPointF(bar.left() - 8, y), QPointF(bar.right() + 4, y));
  painter.setFont(picture_font(13, true));
  const QRectF box(bar.left() - 12 - 90, y - 19, 90, 38);
  painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter,
                   "limit " + number(mark.limit_pa / 1e3, 1) + " kPa\n÷ " + number(scene.model_factor, 1));
}

void draw_hatch_above(QPainter& painter, const QRectF& bar, double share) {
  if (share >= 1.0) return;
  painter.save();
  painter.setClipRect(QRectF(bar.left(), bar.top(), bar.width(), (1.0 - share) * bar.height()));
  painter.setPen(QPen(share > 0.5 ? QColor(250, 250, 250) : QColor(250, 250, 250), 1.6));
  for (double at = bar.top() - bar.width(); at < bar.bottom() + bar.width(); at += 8.0)
    painter.drawLine(QPointF(bar.left(), at + bar.width()), QPointF(bar.right(), at));
  painter.restore();
}

}  // namespace

QFont picture_font(int pixels, bool bold) {
  QFont font;
  font.setPixelSize(pixels);
  font.setBold(bold);
  return font;
}

void draw_text_over_map(QPainter& painter, const QPointF& centre, const QString& text, int pixels,
                        bool bold) {
  const QFont font = picture_font(pixels, bold);
  const QFontMetricsF metrics(font);
  QPainterPath path;
  path.addText(QPointF(centre.x() - 0.5 * metrics.horizontalAdvance(text),
                       centre.y() + 0.5 * (metrics.ascent() - metrics.descent())),
               font, text);
  painter.strokePath(path, QPen(QColor(255, 255, 255, 225), 4.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.fillPath(path, kInk);
}

void draw_title(QPainter& painter, const QString& title, const QString& subtitle) {
  painter.setPen(kInk);
  painter.setFont(picture_font(26, true));
  const QFontMetricsF metrics(painter.font());
  painter.drawText(QRectF(36, 20, kPictureWidth - 72, 36), Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(title, Qt::ElideRight, kPictureWidth - 72));
  painter.setFont(picture_font(16));
  painter.drawText(QRectF(36, 56, kPictureWidth - 72, 24), Qt::AlignLeft | Qt::AlignVCenter, subtitle);
}

void draw_caption(QPainter& painter, const QStringList& lines) {
  painter.setPen(kInk);
  painter.setFont(picture_font(14));
  painter.drawText(QRectF(36, kPictureHeight - 66, kPictureWidth - 72, 54),
                   Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, lines.join("\n"));
}

void draw_colour_bar(QPainter& painter, const QRectF& bar, const MapScene& scene) {
  const int steps = static_cast<int>(bar.height());
  for (int i = 0; i < steps; ++i)
    painter.fillRect(QRectF(bar.left(), bar.bottom() - i - 1, bar.width(), 1.5),
                     map_colour((i + 0.5) / steps));
  if (scene.limits.size() == 1) draw_hatch_above(painter, bar, scene.limits[0].pressure_pa / scene.top_pa);
  painter.setPen(QPen(kInk, 1.2));
  painter.drawRect(bar);
  painter.setFont(picture_font(14, true));
  painter.drawText(QRectF(bar.right() + 8, bar.top() - 40, 44, 20), Qt::AlignRight, "kPa");
  painter.drawText(QRectF(bar.right() + 56, bar.top() - 40, 56, 20), Qt::AlignRight, "mmHg");
  painter.setFont(picture_font(14));
  const double step = tick_step_pa(scene.top_pa);
  for (double value = 0.0; value <= scene.top_pa * 1.0001; value += step) {
    const double y = bar.bottom() - value / scene.top_pa * bar.height();
    painter.setPen(QPen(kInk, 1.2));
    painter.drawLine(QPointF(bar.right(), y), QPointF(bar.right() + 5, y));
    painter.drawText(QRectF(bar.right() + 8, y - 10, 44, 20), Qt::AlignRight | Qt::AlignVCenter,
                     number(value / 1e3, step < 1e3 ? 1 : 0));
    painter.drawText(QRectF(bar.right() + 56, y - 10, 56, 20), Qt::AlignRight | Qt::AlignVCenter,
                     number(value / mmHg.si(), 0));
  }
  for (const LimitMark& mark : scene.limits) draw_limit_mark(painter, bar, scene, mark);
}

void draw_scale_bar(QPainter& painter, const QPointF& left, double pixels_per_m) {
  double length_mm = 1.0;
  for (const double candidate : {2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0})
    if (candidate * 1e-3 * pixels_per_m <= 150.0) length_mm = candidate;
  const QPointF right(left.x() + length_mm * 1e-3 * pixels_per_m, left.y());
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(left, right);
  for (const QPointF& end : {left, right}) painter.drawLine(end - QPointF(0, 5), end + QPointF(0, 5));
  painter.setFont(picture_font(14));
  painter.drawText(QRectF(right.x() + 8, left.y() - 10, 100, 20), Qt::AlignLeft | Qt::AlignVCenter,
                   number(length_mm, 0) + " mm");
}

}  // namespace wrapgauge
