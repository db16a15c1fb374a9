#pragma once
// Where a small picture of the whole body stands over the drawn part of it, in pixels of the view.

#include <QLineF>
#include <QRectF>
#include <optional>
#include <vector>

namespace wrapgauge {

struct InsetRoom {
  QRectF view;                // the inset stands in here
  std::vector<QRectF> taken;  // words, legend and buttons
  std::vector<QLineF> lines;  // from words to what they name
  std::vector<QRectF> drawn;  // boxes round all pieces of what is drawn on the skin; none is empty
};

// Its plate: as large as there is room for, on the right or else on the left, as low as can be. None: it
// would cover something. `body`: how wide and high it is seen, in any unit; `words`: those over it, pixels.
std::optional<QRectF> place_inset(const QSizeF& body, const QSizeF& words, const InsetRoom& room);

// The part of the plate that the body fills.
QRectF body_in_inset(const QRectF& plate, const QSizeF& words);

}  // namespace wrapgauge
