#include "model/layout/page_frame.hpp"

#include "model/layout/drawing_parts.hpp"

namespace wrapgauge {
namespace {

// The outline's lower left corner on the page; none: no shape is the outline.
std::optional<Vec2> corner_on_page(const Drawing& drawing, const DrawingMap& map) {
  const std::vector<DrawnAs> parts = drawn_parts(drawing, map);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (parts[i].part != DrawnPart::kOutline || drawing.shapes[i].paths.empty()) continue;
    const Bounds2 box = bounds(drawing.shapes[i]);
    return drawing.y_down ? Vec2(box.low.x(), box.high.y()) : box.low;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Vec2> in_layout_m(const Drawing& drawing, const DrawingMap& map, const Vec2& drawn_m) {
  const auto corner = corner_on_page(drawing, map);
  if (!corner) return std::nullopt;
  const Vec2 from = drawn_m - *corner, at = whole_map(drawing, map).details.corner_m;
  return Vec2(from.x() + at.x(), (drawing.y_down ? -from.y() : from.y()) + at.y());
}

std::optional<Vec2> in_drawing_m(const Drawing& drawing, const DrawingMap& map, const Vec2& point_m) {
  const auto corner = corner_on_page(drawing, map);
  if (!corner) return std::nullopt;
  const Vec2 from = point_m - whole_map(drawing, map).details.corner_m;
  return Vec2(*corner + Vec2(from.x(), drawing.y_down ? -from.y() : from.y()));
}

}  // namespace wrapgauge
