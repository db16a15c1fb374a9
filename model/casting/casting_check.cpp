#include "model/casting/casting_check.hpp"

#include <algorithm>
#include <cmath>

#include "model/casting/casting_check_parts.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

// Where two curves meet with hardly a straight side between them, that side's length says nothing about how
// sharply the loop bends: a side under a quarter of both its neighbours, which bends the same way at both
// ends, counts as one corner in its middle.
Polygon without_slivers(const Polygon& loop) {
  const std::size_t n = loop.size();
  if (n < 5) return loop;
  const auto side = [&](std::size_t i) { return Vec2(loop[(i + 1) % n] - loop[i % n]); };
  const auto is_sliver = [&](std::size_t i) {
    const Vec2 before = side(i + n - 1), here = side(i), after = side(i + 1);
    return 4.0 * here.norm() < std::min(before.norm(), after.norm()) &&
           cross(before, here) * cross(here, after) > 0.0;
  };
  Polygon out;
  for (std::size_t i = 0; i < n; ++i)
    if (is_sliver(i))
      out.push_back(loop[i] + 0.5 * side(i));
    else if (!is_sliver(i + n - 1))
      out.push_back(loop[i]);
  return out;
}

}  // namespace

Result<SheetGrades> sheet_grades(const Layout& layout, const std::vector<SiliconeGrade>& silicones) {
  const auto skin = find_grade(silicones, layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(silicones, layout.outer_sheet.material);
  if (!outer) return outer.problem();
  return SheetGrades{*skin, *outer};
}

std::vector<CastingFinding> check_casting(const Layout& layout, const SheetGrades& grades,
                                          const CastingRules& rules) {
  const LayoutShapes shapes = layout_shapes(layout, 1e-3);  // spots within 1 % of the circle, as check_layout
  std::vector<CastingFinding> findings;
  const CastingCheck check{layout, shapes, grades, rules, findings};
  check_sheets(check);
  check_seam_widths(check);
  check_inset_gaps(check);
  check_channel_widths(check);
  check_chamber_widths(check);
  check_corners(check);
  check_outline_notches(check);
  check_curl(check);
  check_prestretch(check);
  check_twist(check);
  check_inlets(check);
  check_drawn_closing_lines(check);
  return findings;
}

std::vector<Corner> corners(const Polygon& drawn) {
  const Polygon loop = without_slivers(drawn);
  std::vector<Corner> found;
  const std::size_t n = loop.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vec2 in = loop[i] - loop[(i + n - 1) % n], out = loop[(i + 1) % n] - loop[i];
    const double turn = std::atan2(in.x() * out.y() - in.y() * out.x(), in.dot(out));
    const double half = 0.5 * std::abs(turn);
    if (half < 1e-6) continue;  // straight on
    const double by_chord = 0.5 * std::min(in.norm(), out.norm()) / std::sin(half);
    const double by_flattening = kFlattening / (1.0 - std::cos(half));
    found.push_back({loop[i], std::min(by_chord, by_flattening), turn});
  }
  return found;
}

}  // namespace wrapgauge
