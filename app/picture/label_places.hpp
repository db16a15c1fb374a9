#pragma once
// Where the words about a part of a picture may stand: inside the part, or beside everything with a line to
// it.

#include <QLineF>
#include <QPolygonF>
#include <optional>
#include <vector>

namespace wrapgauge {

// Plates are the rectangles that words stand on; pixels throughout.

// The place nearest to `wanted` for the middle of a plate of this size that lies wholly inside `part` and
// overlaps none of `taken`. Tried on a grid of `part`'s box; none: there is no such place.
std::optional<QPointF> place_inside(const QPolygonF& part, const QPointF& wanted, const QSizeF& plate,
                                    const std::vector<QRectF>& taken);

// The place for a plate within `room`, off `whole` (a polygon) and off `taken`, to which the line from
// `target` is shortest; of those, one whose line crosses none of `taken`, if there is one.
std::optional<QPointF> place_beside(const QRectF& room, const QPolygonF& whole, const QPointF& target,
                                    const QSizeF& plate, const std::vector<QRectF>& taken);

// The line cut off where it enters the rectangle in which it ends.
QLineF line_up_to(const QLineF& line, const QRectF& plate);

// Whether a straight line runs through a rectangle.
bool runs_through(const QLineF& line, const QRectF& plate);

}  // namespace wrapgauge
