#include "model/layout/closing_window.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kClosingSnap = 1e-4;  // m: less than a closure can be set to (judgement)
constexpr double kFarAway = 1e9;       // m

// A closing line a hair from an edge drawn along it would leave a strip of thousands of tiny triangles: how
// far to move the line so that it lies on that edge. `distance_m` tells how far a point lies from the line.
template <class Distance>
double shift_to_drawn_edge_m(const Layout& layout, const Distance& distance_m) {
  constexpr double kParallel_m = 2e-9;  // layout files round coordinates to 1e-9 m
  double shift = 0.0, best = kClosingSnap;
  const auto consider = [&](const Polygon& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const double a = distance_m(loop[i]), b = distance_m(loop[(i + 1) % loop.size()]);
      if (std::abs(a - b) > kParallel_m || std::abs(a) > best) continue;
      best = std::abs(a);
      shift = a;
    }
  };
  consider(layout.outline_m);
  for (const Strap& strap : layout.straps) consider(strap.boundary_m);
  return shift;
}

// Lines that would meet within the layout's height cannot close.
std::optional<Problem> crossing_lines(const ClosingWindow& window, const Bounds2& box) {
  for (const double y : {box.low.y(), box.high.y()}) {
    const double length = window.to_at_m(y) - window.from_at_m(y);
    if (length > 0.0) continue;
    return bad_input(Phrase::worded(
        "With its taper of %1 the closing length shrinks to %2 at y = %3; use a smaller taper.",
        {figures_of(number_text(2.0 * window.slope)), millimetres_of(Length(length)),
         millimetres_of(Length(y))}));
  }
  return std::nullopt;
}

// The largest distance of any point before the first line, and beyond the second.
struct Reach {
  double before_m = -kFarAway, beyond_m = -kFarAway;
};

Reach reach_of(const std::vector<Vec2>& points, const ClosingWindow& window) {
  Reach reach;
  for (const Vec2& p : points) {
    reach.before_m = std::max(reach.before_m, window.before_m(p));
    reach.beyond_m = std::max(reach.beyond_m, window.beyond_m(p));
  }
  return reach;
}

}  // namespace

ClosingWindow window_of(const Layout& layout, Length closing_length) {
  const Bounds2 box = bounds(layout.outline_m);
  const Closure& closure = *layout.closure;
  return {closure.from_x_m, closure.from_x_m + closing_length.si(), 0.5 * closure.taper,
          0.5 * (box.low.y() + box.high.y()), 0.5 * closure.bend};
}

Result<std::optional<ClosingWindow>> closing_window(const Layout& layout,
                                                    const std::optional<Length>& closing_length) {
  using Window = std::optional<ClosingWindow>;
  if (!layout.closure || !closing_length) return Window{};
  ClosingWindow window = window_of(layout, *closing_length);
  if (!std::isfinite(window.to_x_m) || !std::isfinite(window.slope + window.bend) ||
      !(closing_length->si() > 0.0))
    return bad_input(Phrase::worded("The closing length is %1; it has to be above zero.",
                                    {millimetres_of(*closing_length)}));
  std::vector<Vec2> all = layout.outline_m;
  for (const Strap& strap : layout.straps)
    all.insert(all.end(), strap.boundary_m.begin(), strap.boundary_m.end());
  if (auto problem = crossing_lines(window, bounds(all))) return *problem;
  const auto [before, beyond] = reach_of(all, window);
  if (before < -kDrawingTolerance)
    return bad_input(Phrase::worded(
        "The closing line at x = %1 lies %2 before the layout begins; move it to the layout's left edge.",
        {millimetres_of(Length(window.from_x_m)), millimetres_of(Length(-before))}));
  const double missing = -beyond;
  if (missing > kDrawingTolerance)
    return bad_input(Phrase::worded(
        "The layout is %1 too short to close at x = %2; make it or its strap longer, or the closing length "
        "shorter.",
        {millimetres_of(Length(missing)), millimetres_of(Length(window.to_x_m))}));
  window.to_x_m += shift_to_drawn_edge_m(layout, [&](const Vec2& p) { return window.beyond_m(p); });
  if (std::abs(before) <= kDrawingTolerance) window.from_x_m -= before;
  return Window(window);
}

std::optional<Problem> cut_open_region(const Layout& layout, const LayoutShapes& shapes,
                                       const ClosingWindow& window) {
  for (const auto& [loop, region, place] : open_loops(shapes)) {
    const auto [before, beyond] = reach_of(*loop, window);
    if (std::max(beyond, before) <= kDrawingTolerance) continue;
    const bool right = beyond > before;
    const std::vector<Phrase> values{part_name_first(layout, region),
                                     millimetres_of(Length(right ? beyond : before)),
                                     millimetres_of(Length(right ? window.to_x_m : window.from_x_m))};
    return bad_input(right ? Phrase::worded("%1 reaches %2 beyond the closing line at x = %3; let the "
                                            "closing begin further along the sheet (from x), move that "
                                            "part, or change the closing length.",
                                            values)
                           : Phrase::worded("%1 reaches %2 before the closing line at x = %3; let the "
                                            "closing begin earlier (from x), move that part, or change "
                                            "the closing length.",
                                            values),
                     {place});
  }
  return std::nullopt;
}

}  // namespace wrapgauge
