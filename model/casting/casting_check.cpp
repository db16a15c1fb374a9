#include "model/casting/casting_check.hpp"

#include <algorithm>
#include <cmath>

#include "model/casting/casting_check_parts.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {

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
  check_seam_widths(check);
  check_inset_gaps(check);
  check_channel_widths(check);
  check_corners(check);
  check_curl(check);
  check_twist(check);
  check_inlets(check);
  return findings;
}

std::vector<Corner> corners(const Polygon& loop) {
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
