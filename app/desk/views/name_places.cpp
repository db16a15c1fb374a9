#include "app/desk/views/name_places.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

// A plate near the edge is moved inside rather than cut.
QRectF plate_at(const QPointF& centre, const QSizeF& size, const QRectF& view) {
  QRectF plate(centre - QPointF(0.5 * size.width(), 0.5 * size.height()), size);
  plate.moveLeft(std::clamp(plate.left(), view.left(), std::max(view.left(), view.right() - size.width())));
  return plate;
}

struct Standing {
  QRectF plate;
  int covers = 0;
};

// Of the free places over what is named the one that covers least, then the nearest to where it stands best.
std::optional<Standing> over_its_area(const NamedPlace& place, const QSizeF& size, const NameRoom& room) {
  std::vector<QPointF> centres = place.area;
  const auto way = [&](const QPointF& centre) { return QLineF(place.at, centre).length(); };
  std::sort(centres.begin(), centres.end(),
            [&](const QPointF& a, const QPointF& b) { return way(a) < way(b); });
  centres.insert(centres.begin(), place.at);
  std::optional<Standing> best;
  for (const QPointF& centre : centres) {
    const QRectF plate = plate_at(centre, size, room.view);
    if (!keeps_clear(plate, room.taken)) continue;
    const int covers = covered({plate}, room.hatched);
    if (!best || covers < best->covers) best = {plate, covers};
    if (covers == 0) break;
  }
  return best;
}

std::optional<QRectF> beside_all(const NamedPlace& place, const QSizeF& size, const NameRoom& room) {
  constexpr int kRings = 20, kWays = 24;
  constexpr double kStep = 10.0;  // pixels
  for (int ring = 1; ring <= kRings; ++ring)
    for (int k = 0; k < kWays; ++k) {
      const double angle = 2.0 * std::numbers::pi * k / kWays;
      const QPointF by((ring * kStep + 0.5 * size.width()) * std::cos(angle),
                       (ring * kStep + 0.5 * size.height()) * std::sin(angle));
      const QRectF plate = plate_at(place.at + by, size, room.view);
      if (room.view.contains(plate) && keeps_clear(plate, room.taken) && !plate.contains(place.at) &&
          covered({plate}, room.hatched) + covered({plate}, room.areas) == 0)
        return plate;
    }
  return std::nullopt;
}

}  // namespace

int covered(const std::vector<QRectF>& plates, const std::vector<QPointF>& points) {
  return static_cast<int>(std::count_if(points.begin(), points.end(), [&](const QPointF& point) {
    return std::any_of(plates.begin(), plates.end(),
                       [&](const QRectF& plate) { return plate.contains(point); });
  }));
}

std::optional<FlatLabel> place_name(const NamedPlace& place, NameRoom& room) {
  const QSizeF size = plate_size(place.words, room.metrics);
  const auto take = [&](const QRectF& plate, std::optional<QPointF> points_at) {
    room.taken.push_back(plate);
    return FlatLabel{{place.words}, plate, points_at};
  };
  const auto over = over_its_area(place, size, room);
  if (over && over->covers == 0) return take(over->plate, {});
  if (!over && place.area.empty()) return std::nullopt;  // names of sites close together would crowd the view
  if (const auto beside = beside_all(place, size, room)) return take(*beside, place.at);
  return over ? std::optional(take(over->plate, {})) : std::nullopt;
}

}  // namespace wrapgauge
