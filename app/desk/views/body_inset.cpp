#include "app/desk/views/body_inset.hpp"

#include <algorithm>

#include "app/picture/label_places.hpp"
#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

constexpr double kRim = 6.0;                       // pixels between the plate's edge and what is in it
constexpr double kWidest = 0.25, kHighest = 0.35;  // shares of the view that the body may take
constexpr double kLeast = 56.0;  // pixels: the longer side of a body that still tells something
constexpr double kMost = 170.0;

bool covers_nothing(const QRectF& plate, const InsetRoom& room) {
  return keeps_clear(plate, room.taken) && keeps_clear(plate, room.drawn) &&
         std::none_of(room.lines.begin(), room.lines.end(),
                      [&](const QLineF& line) { return runs_through(line, plate); });
}

std::optional<QRectF> place_of_size(const QSizeF& size, const InsetRoom& room) {
  constexpr double kStep = 6.0;
  for (const double left : {room.view.right() - size.width(), room.view.left()})
    for (double top = room.view.bottom() - size.height(); top >= room.view.top(); top -= kStep)
      if (const QRectF plate({left, top}, size); covers_nothing(plate, room)) return plate;
  return std::nullopt;
}

QSizeF plate_round(const QSizeF& body, const QSizeF& words) {
  return {std::max(body.width(), words.width()) + 2.0 * kRim, body.height() + words.height() + 2.0 * kRim};
}

}  // namespace

std::optional<QRectF> place_inset(const QSizeF& body, const QSizeF& words, const InsetRoom& room) {
  constexpr double kSmaller = 0.85;
  const double longer = std::max(body.width(), body.height());
  if (!(longer > 0.0)) return std::nullopt;
  const QSizeF most(kWidest * room.view.width(), std::min(kMost, kHighest * room.view.height()));
  for (QSizeF size = body.scaled(most, Qt::KeepAspectRatio); std::max(size.width(), size.height()) >= kLeast;
       size *= kSmaller)
    if (const auto plate = place_of_size(plate_round(size, words), room)) return plate;
  return std::nullopt;
}

QRectF body_in_inset(const QRectF& plate, const QSizeF& words) {
  return plate.adjusted(kRim, kRim + words.height(), -kRim, -kRim);
}

}  // namespace wrapgauge
