#include "model/casting/closing_range.hpp"

#include <algorithm>

#include "model/casting/casting_check_parts.hpp"
#include "model/layout/closing_window.hpp"

namespace wrapgauge {
namespace {

// How far a loop reaches beyond the first closing line, were the second to pass through it.
double reach_m(const ClosingWindow& window, const Polygon& loop) {
  double farthest = 0.0;
  for (const Vec2& p : loop) farthest = std::max(farthest, window.beyond_m(p));
  return farthest;
}

}  // namespace

std::optional<ClosingRange> closing_range(const Layout& layout, const CastingRules& rules) {
  if (!layout.closure) return std::nullopt;
  const LayoutShapes shapes = layout_shapes(layout, 1e-3);
  const ClosingWindow window = window_of(layout, Length());
  double open = 0.0, all = reach_m(window, layout.outline_m);
  for (const OpenLoop& part : open_loops(shapes)) open = std::max(open, reach_m(window, *part.loop));
  for (const Strap& strap : layout.straps) all = std::max(all, reach_m(window, strap.boundary_m));
  const double overlap = 1e-3 * rules.value(CastingRule::kClosureOverlap);
  return ClosingRange{Length(open), Length(all), Length(all - overlap),
                      layout.closure->stretch.value_or(0.0)};
}

std::optional<CastingFinding> check_overlap(const Layout& layout, Length closing_length,
                                            const CastingRules& rules) {
  const auto range = closing_range(layout, rules);
  if (!range) return std::nullopt;
  const double left = (range->longest - closing_length).si();
  const double least = 1e-3 * rules.value(CastingRule::kClosureOverlap);
  if (left >= least) return std::nullopt;
  const Bounds2 box = bounds(layout.outline_m);
  const Vec2 place(layout.closure->from_x_m + closing_length.si(), 0.5 * (box.low.y() + box.high.y()));
  return CastingFinding{
      CastingRule::kClosureOverlap,
      "closed at " + in_millimetres(closing_length.si()) + ", " + in_millimetres(std::max(left, 0.0)) +
          " of the layout is left beyond the closing line at " + at_mm(place) + " to hold it by, less than " +
          in_millimetres(least) + ": make the layout or its strap longer.",
      1e3 * left,
      1e3 * least,
      place,
      {}};
}

}  // namespace wrapgauge
