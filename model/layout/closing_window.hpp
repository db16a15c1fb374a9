#pragma once
// The two lines across a layout that meet when it is closed.

#include <cmath>
#include <optional>
#include <vector>

#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

// The part of the plane that is meshed: between two lines across the layout when it closes. They slant apart
// by `slope` each, below y = middle_y by `bend` more and above it by `bend` less; from_x and to_x hold there.
struct ClosingWindow {
  double from_x_m, to_x_m;
  double slope = 0.0, middle_y_m = 0.0, bend = 0.0;

  double wider_at_m(double y_m) const {
    const double up = y_m - middle_y_m;
    return slope * up - bend * std::abs(up);
  }
  double from_at_m(double y_m) const { return from_x_m - wider_at_m(y_m); }
  double to_at_m(double y_m) const { return to_x_m + wider_at_m(y_m); }
  // Between which the lines are straight.
  std::vector<double> heights_m(double low_m, double high_m) const {
    if (bend == 0.0 || low_m >= middle_y_m || high_m <= middle_y_m) return {low_m, high_m};
    return {low_m, middle_y_m, high_m};
  }
  // How far a point lies before the first line or beyond the second; negative: it does not.
  double before_m(const Vec2& p) const { return from_at_m(p.y()) - p.x(); }
  double beyond_m(const Vec2& p) const { return p.x() - to_at_m(p.y()); }
  bool on_from(const Vec2& p) const { return std::abs(before_m(p)) <= kOnLine_m; }
  bool on_to(const Vec2& p) const { return std::abs(beyond_m(p)) <= kOnLine_m; }

 private:
  static constexpr double kOnLine_m = 1e-9;  // rounding; drawn points are kept 0.01 mm apart
};

// As the layout's closure asks for it, whether or not the layout reaches so far. The layout has a closure.
ClosingWindow window_of(const Layout& layout, Length closing_length);

// The lines that meet when closed; none when the layout does not close or no closing length is asked for.
// A second line within 0.1 mm of an edge drawn across the layout lies on that edge.
// Problems: a closing line before the layout begins or beyond its end (mm missing).
Result<std::optional<ClosingWindow>> closing_window(const Layout& layout,
                                                    const std::optional<Length>& closing_length);

// A chamber or channel that reaches across a closing line, named, with how far.
std::optional<Problem> cut_open_region(const Layout& layout, const LayoutShapes& shapes,
                                       const ClosingWindow& window);

}  // namespace wrapgauge
