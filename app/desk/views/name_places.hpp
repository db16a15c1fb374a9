#pragma once
// Where a name stands over the drawn body, in pixels of the view: clear of the hatching of what lies above
// its limit.

#include <QPointF>
#include <optional>
#include <vector>

#include "app/desk/views/flat_labels.hpp"

namespace wrapgauge {

struct NamedPlace {
  QString words;
  QPointF at;                 // where it stands best
  std::vector<QPointF> area;  // points all over what it names; may be empty
};

struct NameRoom {
  QRectF view;  // all names stand in here
  QFontMetricsF metrics;
  std::vector<QPointF> hatched;  // points all over the hatching
  std::vector<QPointF> areas;    // of all that is named: a name that points at its own stands on none
  std::vector<QRectF> taken;     // what names keep clear of; each name is added
};

// Where it stands best or elsewhere over what it names, where it covers no hatching; else beside all that is
// named, with a line to its place; else where it covers least. None: other names stand there already.
std::optional<FlatLabel> place_name(const NamedPlace& place, NameRoom& room);

// How many of the points lie under one of the plates.
int covered(const std::vector<QRectF>& plates, const std::vector<QPointF>& points);

}  // namespace wrapgauge
