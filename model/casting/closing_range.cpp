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

// A strap holds by its own width, however narrow.
bool on_a_strap(const Layout& layout, Length closing_length) {
  const ClosingWindow window = window_of(layout, closing_length);
  return std::any_of(layout.straps.begin(), layout.straps.end(), [&](const Strap& strap) {
    const auto beyond = [&](const Vec2& p) { return window.beyond_m(p) >= -kDrawingTolerance; };
    return std::any_of(strap.boundary_m.begin(), strap.boundary_m.end(), beyond) &&
           !std::all_of(strap.boundary_m.begin(), strap.boundary_m.end(), beyond);
  });
}

std::optional<CastingFinding> off_sheet(const Layout& layout, Length closing_length, WhichLine which,
                                        const CastingRules& rules) {
  const double percent = 100.0 * share_on_sheet(layout, closing_length, which);
  const double least = rules.value(CastingRule::kClosingLine);
  if (percent >= least) return std::nullopt;
  const ClosingWindow window = window_of(layout, closing_length);
  const Vec2 place(which == WhichLine::kSecond ? window.to_x_m : window.from_x_m, window.middle_y_m);
  const auto [share, threshold] = told_apart(percent, least, " %");
  return CastingFinding{
      CastingRule::kClosingLine,
      Phrase::worded(
          "%1 through %2 lies on the sheet along %3 of the layout's height, less than %4, so little "
          "is there to be fastened: move the line inwards, or straighten the edge.",
          {which == WhichLine::kSecond ? Phrase::worded("the second closing line")
                                       : Phrase::worded("the first closing line"),
           place_phrase(place), share, threshold}),
      percent,
      least,
      place,
      {}};
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
  if (!falls_short(left, least)) return std::nullopt;
  const Bounds2 box = bounds(layout.outline_m);
  const Vec2 place(layout.closure->from_x_m + closing_length.si(), 0.5 * (box.low.y() + box.high.y()));
  const auto [length, threshold] = lengths_told_apart(std::max(left, 0.0), least);
  return CastingFinding{
      CastingRule::kClosureOverlap,
      Phrase::worded(
          "closed at %1, %2 of the layout is left beyond the closing line at %3 to hold it by, less "
          "than %4: make the layout or its strap longer.",
          {length_phrase(closing_length.si()), length, place_phrase(place), threshold}),
      1e3 * left,
      1e3 * least,
      place,
      {}};
}

double share_on_sheet(const Layout& layout, Length closing_length, WhichLine which) {
  constexpr int kPlaces = 400;
  constexpr double kInwards_m = 1e-4;  // a line along an edge lies on the sheet; a curve is drawn to 0.05 mm
  const ClosingWindow window = window_of(layout, closing_length);
  const Bounds2 box = bounds(layout.outline_m);
  const auto holds = [](const Polygon& loop, const Vec2& p) { return contains(loop, p); };
  int on = 0;
  for (int k = 0; k < kPlaces; ++k) {
    const double y = box.low.y() + (k + 0.5) / kPlaces * (box.high.y() - box.low.y());
    const Vec2 p(
        which == WhichLine::kSecond ? window.to_at_m(y) - kInwards_m : window.from_at_m(y) + kInwards_m, y);
    const bool strap = std::any_of(layout.straps.begin(), layout.straps.end(),
                                   [&](const Strap& one) { return holds(one.boundary_m, p); });
    if (strap || holds(layout.outline_m, p)) ++on;
  }
  return static_cast<double>(on) / kPlaces;
}

std::optional<CastingFinding> check_second_line(const Layout& layout, Length closing_length,
                                                const CastingRules& rules) {
  if (!layout.closure || on_a_strap(layout, closing_length)) return std::nullopt;
  return off_sheet(layout, closing_length, WhichLine::kSecond, rules);
}

void check_drawn_closing_lines(const CastingCheck& check) {
  if (!check.layout.closure) return;
  const auto add = [&](std::optional<CastingFinding> finding) {
    if (finding) check.findings.push_back(std::move(*finding));
  };
  add(off_sheet(check.layout, Length(), WhichLine::kFirst, check.rules));
  if (const auto& length = check.layout.closure->closing_length)
    add(check_second_line(check.layout, *length, check.rules));
}

}  // namespace wrapgauge
