#include "app/picture/legend.hpp"

#include <algorithm>

#include "app/picture/colour_map.hpp"
#include "app/picture/label_places.hpp"
#include "app/picture/nice_axis.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/nearest_among_points.hpp"

namespace wrapgauge {
namespace {

constexpr double kDot = 3.0;  // radius where a line to words begins, pixels
constexpr double kRim = 4.0;  // pixels: words keep this far from the picture's sides

QString number(double value, int decimals) {
  return QString::fromStdString(fixed_text(value, decimals));
}

void draw_limit_mark(QPainter& painter, const QRectF& bar, const MapScene& scene, const BarMark& mark) {
  const double share = mark.pressure_pa / scene.top_pa;
  if (share > 1.0) return;
  const double y = bar.bottom() - share * bar.height();
  painter.setPen(QPen(QColor(255, 255, 255), 4.4));
  painter.drawLine(QPointF(bar.left() - 8, y), QPointF(bar.right() + 4, y));
  painter.setPen(QPen(kInk, 2.2));
  painter.drawLine(QPointF(bar.left() - 8, y), QPointF(bar.right() + 4, y));
  painter.setFont(picture_font(13, true));
  const QRectF box(bar.left() - 12 - 110, y - 19, 110, 38);
  painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter,
                   "limit " + number(mark.limit_pa / 1e3, 1) + " kPa\n÷ " + number(scene.model_factor, 1));
}

}  // namespace

QFont picture_font(int pixels, bool bold) {
  QFont font;
  font.setPixelSize(pixels);
  font.setBold(bold);
  return font;
}

QSizeF MapLabels::plate_size(const QStringList& lines, int pixels) const {
  double width = 0.0;
  for (const QString& line : lines)
    width = std::max(width, QFontMetricsF(picture_font(pixels, true)).horizontalAdvance(line));
  return {width + 10.0, 1.3 * pixels * static_cast<double>(lines.size()) + 6.0};
}

QRectF MapLabels::plate(const QPointF& centre, const QStringList& lines, int pixels) const {
  const QSizeF size = plate_size(lines, pixels);
  QRectF box({centre.x() - 0.5 * size.width(), centre.y() - 0.5 * size.height()}, size);
  const QRectF whole = QRectF(painter_.window()).adjusted(kRim, kRim, -kRim, -kRim);
  box.moveLeft(std::max(whole.left(), std::min(box.left(), whole.right() - box.width())));
  return box;
}

bool keeps_clear(const QRectF& plate, const std::vector<QRectF>& taken) {
  return std::none_of(taken.begin(), taken.end(),
                      [&](const QRectF& other) { return other.intersects(plate); });
}

void MapLabels::put(const QPointF& centre, const QStringList& lines, int pixels) {
  const QRectF box = plate(centre, lines, pixels);
  taken_.push_back(box);
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(QColor(255, 255, 255, 222));
  painter_.drawRoundedRect(box, 5.0, 5.0);
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(kInk);
  for (int k = 0; k < lines.size(); ++k) {
    painter_.setFont(picture_font(pixels, k == 0));
    painter_.drawText(QRectF(box.left(), box.top() + 3.0 + 1.3 * pixels * k, box.width(), 1.3 * pixels),
                      Qt::AlignCenter, lines[k]);
  }
}

bool MapLabels::put_inside(const QPolygonF& part, const QPointF& centre, const QStringList& lines,
                           const std::vector<int>& sizes) {
  for (const int pixels : sizes)
    if (const auto place = place_inside(part, centre, plate_size(lines, pixels), taken_)) {
      put(*place, lines, pixels);
      return true;
    }
  return false;
}

QPointF MapLabels::point_in_sight(const QPolygonF& part, const QPointF& wanted) const {
  return place_inside(part, wanted, {2.0 * kDot + 2.0, 2.0 * kDot + 2.0}, taken_).value_or(wanted);
}

bool MapLabels::put_beside(const QRectF& room, const QPolygonF& whole, const QPointF& target,
                           const QStringList& lines, int pixels) {
  const auto place = place_beside(room, whole, target, plate_size(lines, pixels), taken_);
  if (!place) return false;
  painter_.setPen(QPen(kInk, 1.2));
  painter_.drawLine(line_up_to({target, *place}, plate(*place, lines, pixels)));
  painter_.setBrush(kInk);
  painter_.drawEllipse(target, kDot, kDot);
  put(*place, lines, pixels);
  return true;
}

void MapLabels::put_where_free(const std::vector<QPointF>& places, const QString& text, int pixels) {
  for (const QPointF& place : places)
    if (keeps_clear(plate(place, {text}, pixels), taken_)) return put(place, {text}, pixels);
}

bool MapLabels::put_over(const QRectF& room, const std::vector<QRectF>& others,
                         const std::vector<QPointF>& places, const QStringList& lines, int pixels) {
  for (const QPointF& place : places) {
    const QRectF box = plate(place, lines, pixels);
    if (!room.contains(box) || !keeps_clear(box, others) || !keeps_clear(box, taken_)) continue;
    put(place, lines, pixels);
    return true;
  }
  return false;
}

void label_contour(MapLabels& labels, const std::vector<QPointF>& contour,
                   const std::vector<QPointF>& others) {
  Points3 places_of_others(static_cast<Eigen::Index>(others.size()), 3);
  for (std::size_t k = 0; k < others.size(); ++k)
    places_of_others.row(static_cast<Eigen::Index>(k)) << others[k].x(), others[k].y(), 0.0;
  const NearestAmongPoints tree(places_of_others);
  std::vector<std::pair<double, std::size_t>> order;  // nearest other label, negative; piece
  for (std::size_t k = 0; k < contour.size(); ++k) {
    const auto nearest = tree.nearest({contour[k].x(), contour[k].y(), 0.0});
    order.emplace_back(nearest ? -nearest->distance_m : 0.0, k);
  }
  std::sort(order.begin(), order.end());
  std::vector<QPointF> places;
  for (const auto& [distance, k] : order) places.push_back(contour[k]);
  labels.put_where_free(places, "limit", 13);
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

QString override_caption(const LimitSet& limits) {
  constexpr qsizetype kLongest = 260;
  if (!limits.override_words) return {};
  const QString words = QString::fromStdString(english(*limits.override_words));
  return "\n" + (words.size() > kLongest ? words.left(kLongest) + "..." : words);
}

void draw_colour_bar(QPainter& painter, const QRectF& bar, const MapScene& scene) {
  const int steps = static_cast<int>(bar.height());
  for (int i = 0; i < steps; ++i)
    painter.fillRect(QRectF(bar.left(), bar.bottom() - i - 1, bar.width(), 1.5),
                     map_colour((i + 0.5) / steps));
  painter.setPen(QPen(kInk, 1.2));
  painter.drawRect(bar);
  painter.setFont(picture_font(14, true));
  painter.drawText(QRectF(bar.right() + 8, bar.top() - 40, 44, 20), Qt::AlignRight, "kPa");
  painter.drawText(QRectF(bar.right() + 56, bar.top() - 40, 56, 20), Qt::AlignRight, "mmHg");
  painter.setFont(picture_font(14));
  const double step = round_step(scene.top_pa, 6.5, 100.0);
  for (double value = 0.0; value <= scene.top_pa * 1.0001; value += step) {
    const double y = bar.bottom() - value / scene.top_pa * bar.height();
    painter.setPen(QPen(kInk, 1.2));
    painter.drawLine(QPointF(bar.right(), y), QPointF(bar.right() + 5, y));
    painter.drawText(QRectF(bar.right() + 8, y - 10, 44, 20), Qt::AlignRight | Qt::AlignVCenter,
                     number(value / 1e3, step < 1e3 ? 1 : 0));
    painter.drawText(QRectF(bar.right() + 56, y - 10, 56, 20), Qt::AlignRight | Qt::AlignVCenter,
                     number(value / mmHg.si(), 0));
  }
  for (const BarMark& mark : scene.limits) draw_limit_mark(painter, bar, scene, mark);
}

void draw_scale_bar(QPainter& painter, const QPointF& left, double pixels_per_m) {
  const double length_mm = scale_length_mm(pixels_per_m, 150.0);
  const QPointF right(left.x() + length_mm * 1e-3 * pixels_per_m, left.y());
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(left, right);
  for (const QPointF& end : {left, right}) painter.drawLine(end - QPointF(0, 5), end + QPointF(0, 5));
  painter.setFont(picture_font(14));
  painter.drawText(QRectF(right.x() + 8, left.y() - 10, 100, 20), Qt::AlignLeft | Qt::AlignVCenter,
                   number(length_mm, length_mm < 1.0 ? 1 : 0) + " mm");
}

}  // namespace wrapgauge
