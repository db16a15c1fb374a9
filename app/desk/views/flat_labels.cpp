#include "app/desk/views/flat_labels.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

QRectF round_centre(const QPointF& centre, const QSizeF& size) {
  return {centre - QPointF(0.5 * size.width(), 0.5 * size.height()), size};
}

// Of a loop without holes, whatever its sense.
double area_of(const QPainterPath& path) {
  double twice = 0.0;
  for (int k = 0; k + 1 < path.elementCount(); ++k) {
    const QPointF a = path.elementAt(k), b = path.elementAt(k + 1);
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return 0.5 * std::abs(twice);
}

// How far the shape goes to both sides of its place for words, on the height of that.
double width_at(const QPainterPath& path, const QPointF& inside) {
  double left = path.boundingRect().left(), right = path.boundingRect().right();
  for (int k = 0; k + 1 < path.elementCount(); ++k) {
    const QPointF a = path.elementAt(k), b = path.elementAt(k + 1);
    if ((a.y() > inside.y()) == (b.y() > inside.y())) continue;
    const double x = a.x() + (inside.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
    (x < inside.x() ? left : right) = x < inside.x() ? std::max(left, x) : std::min(right, x);
  }
  return right - left;
}

bool is_free(const QRectF& plate, const LabelRoom& room) {
  return room.view.contains(plate) && keeps_clear(plate, room.taken);
}

// Plates round the material, those with the shortest way to the chamber first.
std::vector<QRectF> places_beside(const QPointF& from, const QSizeF& size, const QRectF& material) {
  constexpr double kGap = 12.0, kBetween = 6.0;
  constexpr int kRows = 3, kAside = 3;
  const QSizeF step = size + QSizeF(kBetween, kBetween);
  std::vector<QPointF> centres;
  for (int row = 0; row < kRows; ++row)
    for (int aside = -kAside; aside <= kAside; ++aside) {
      const double across = from.x() + 0.5 * aside * step.width(),
                   up = from.y() + 0.5 * aside * step.height();
      const double over = kGap + 0.5 * size.height() + row * step.height();
      const double beside = kGap + 0.5 * size.width() + row * step.width();
      centres.insert(centres.end(), {{across, material.top() - over},
                                     {across, material.bottom() + over},
                                     {material.left() - beside, up},
                                     {material.right() + beside, up}});
    }
  const auto way = [&](const QPointF& centre) { return QLineF(from, centre).length(); };
  std::stable_sort(centres.begin(), centres.end(),
                   [&](const QPointF& a, const QPointF& b) { return way(a) < way(b) - 1e-6; });
  std::vector<QRectF> plates;
  for (const QPointF& centre : centres) plates.push_back(round_centre(centre, size));
  return plates;
}

// Just within the chamber, on the way from the words to its place for them.
QPointF end_of_leader(const QPainterPath& path, const QPointF& from, const QPointF& inside) {
  constexpr double kWithin = 5.0;  // pixels
  const QLineF way(from, inside);
  for (double at = 0.0; at < way.length(); at += 1.0)
    if (path.contains(way.pointAt(at / way.length())))
      return way.pointAt(std::min(1.0, (at + kWithin) / way.length()));
  return inside;
}

FlatLabel within(const LabelledShape& shape, double width, const QFontMetricsF& metrics) {
  FlatLabel label{shape.words(width), {}, {}};
  label.plate = round_centre(shape.inside, plate_size(label.lines.join('\n'), metrics));
  return label;
}

}  // namespace

std::optional<FlatLabel> place_label(const LabelledShape& shape, LabelRoom& room) {
  constexpr double kFewHidden = 0.25, kMostHidden = 0.45;  // of the chamber
  if (!room.view.contains(shape.inside)) return std::nullopt;
  const auto take = [&](FlatLabel label) {
    room.taken.push_back(label.plate);
    return label;
  };
  const double one_unit = room.metrics.horizontalAdvance("00.0 kPa +");
  const double full = width_at(shape.path, shape.inside) - kPlateRim, brief = std::min(full, one_unit);
  const double area = std::max(1.0, area_of(shape.path));
  for (const auto& [width, most] : {std::pair(full, kFewHidden), {brief, kMostHidden}}) {
    const FlatLabel label = within(shape, width, room.metrics);
    const bool shows = label.plate.width() * label.plate.height() <= most * area;
    if (shows && is_free(label.plate, room) && shape.path.contains(label.plate)) return take(label);
  }
  FlatLabel beside{shape.words(one_unit), {}, {}};
  for (const QRectF& plate :
       places_beside(shape.inside, plate_size(beside.lines.join('\n'), room.metrics), room.material))
    if (is_free(plate, room)) {
      beside.plate = plate;
      beside.points_at = end_of_leader(shape.path, plate.center(), shape.inside);
      return take(beside);
    }
  const FlatLabel over = within(shape, brief, room.metrics);
  return is_free(over.plate, room) ? std::optional(take(over)) : std::nullopt;
}

// All leaders first, so that none runs over words.
void draw_labels(QPainter& painter, const std::vector<FlatLabel>& labels, const LegendLook& look) {
  constexpr double kDot = 2.5, kLine = 1.2, kHalo = 4.0;
  for (const FlatLabel& label : labels) {
    if (!label.points_at) continue;
    const QLineF leader(label.plate.center(), *label.points_at);
    painter.setPen(QPen(look.colours.plate, kHalo));
    painter.drawLine(leader);
    painter.setPen(QPen(look.colours.ink, kLine));
    painter.drawLine(leader);
    painter.setPen(QPen(look.colours.plate, 0.5 * kHalo));
    painter.setBrush(look.colours.ink);
    painter.drawEllipse(*label.points_at, kDot + 1.0, kDot + 1.0);
  }
  for (const FlatLabel& label : labels)
    draw_plate(painter, label.plate.center(), label.lines.join('\n'), look);
}

}  // namespace wrapgauge
