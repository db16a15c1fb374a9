#include "app/picture/label_places.hpp"

#include <algorithm>

#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

constexpr int kGrid = 40;      // places along each side of a part's box
constexpr double kStep = 8.0;  // pixels between places beside the parts
constexpr double kGap = 4.0;   // pixels between a plate and what it keeps off

QRectF plate_at(const QPointF& middle, const QSizeF& size) {
  return {middle - QPointF(0.5 * size.width(), 0.5 * size.height()), size};
}

bool crosses(const QPolygonF& part, const QRectF& plate) {
  for (int i = 0; i < part.size(); ++i)
    if (runs_through({part[i], part[(i + 1) % part.size()]}, plate)) return true;
  return false;
}

double length_to(const QPointF& from, const QPointF& to) {
  return QLineF(from, to).length();
}

std::optional<QPointF> nearest(const std::vector<QPointF>& places, const QPointF& to) {
  const auto found = std::min_element(places.begin(), places.end(), [&](const QPointF& a, const QPointF& b) {
    return length_to(a, to) < length_to(b, to);
  });
  return found == places.end() ? std::nullopt : std::optional(*found);
}

// Where a line passes the sides of a rectangle.
std::vector<QPointF> crossings(const QLineF& line, const QRectF& plate) {
  const QPointF corners[] = {plate.topLeft(), plate.topRight(), plate.bottomRight(), plate.bottomLeft()};
  std::vector<QPointF> found;
  for (int i = 0; i < 4; ++i) {
    QPointF at;
    if (line.intersects(QLineF(corners[i], corners[(i + 1) % 4]), &at) == QLineF::BoundedIntersection)
      found.push_back(at);
  }
  return found;
}

}  // namespace

bool runs_through(const QLineF& line, const QRectF& plate) {
  if (plate.contains(line.p1()) || plate.contains(line.p2())) return true;
  return !crossings(line, plate).empty();
}

QLineF line_up_to(const QLineF& line, const QRectF& plate) {
  const auto first = nearest(crossings(line, plate), line.p1());
  return first ? QLineF(line.p1(), *first) : line;
}

std::optional<QPointF> place_inside(const QPolygonF& part, const QPointF& wanted, const QSizeF& plate,
                                    const std::vector<QRectF>& taken) {
  const auto fits = [&](const QPointF& middle) {
    const QRectF box = plate_at(middle, plate);
    return part.containsPoint(middle, Qt::OddEvenFill) && !crosses(part, box) && keeps_clear(box, taken);
  };
  if (fits(wanted)) return wanted;
  const QRectF box = part.boundingRect();
  std::vector<QPointF> places;
  for (int row = 1; row < kGrid; ++row)
    for (int column = 1; column < kGrid; ++column) {
      const QPointF middle(box.left() + box.width() * column / kGrid, box.top() + box.height() * row / kGrid);
      if (fits(middle)) places.push_back(middle);
    }
  return nearest(places, wanted);
}

std::optional<QPointF> place_beside(const QRectF& room, const QPolygonF& whole, const QPointF& target,
                                    const QSizeF& plate, const std::vector<QRectF>& taken) {
  std::vector<QPointF> clear, crossed;
  for (double y = room.top() + 0.5 * plate.height(); y <= room.bottom() - 0.5 * plate.height(); y += kStep)
    for (double x = room.left() + 0.5 * plate.width(); x <= room.right() - 0.5 * plate.width(); x += kStep) {
      const QPointF middle(x, y);
      const QRectF box = plate_at(middle, plate).adjusted(-kGap, -kGap, kGap, kGap);
      if (whole.containsPoint(middle, Qt::OddEvenFill) || crosses(whole, box) || !keeps_clear(box, taken))
        continue;
      const bool over = std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) {
        return !other.contains(target) && runs_through({target, middle}, other);
      });
      (over ? crossed : clear).push_back(middle);
    }
  return clear.empty() ? nearest(crossed, target) : nearest(clear, target);
}

}  // namespace wrapgauge
