#pragma once
#include <QImage>
#include <QRectF>

#include "app/desk/views/shown_plan.hpp"

namespace wrapgauge {

// The contact pressure of one state on the flat layout: colours, hatch and the limit's contour, transparent
// beside the layout. `pixels_per_mm`: of the screen's own pixels, `pixel_ratio` of which are one of the
// view's.
struct FlatMap {
  QImage image;
  QRectF area_mm;  // what it covers; y down, so the layout's y is -y
};
FlatMap flat_map(const Estimate& estimate, const StateContact& contact, double top_pa, double pixels_per_mm,
                 double pixel_ratio);

}  // namespace wrapgauge
