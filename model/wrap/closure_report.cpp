#include "model/wrap/closure_report.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>
#include <utility>

#include "model/core/number_text.hpp"
#include "model/layout/closing_lines.hpp"

namespace wrapgauge {
namespace {

constexpr double kFullTurn = 2.0 * std::numbers::pi;

// Pointing so that the wrap direction goes right-handed about it, which turned by half a turn is distal.
Vec3 axis_gone_round(const BodySurface& body, const AnchorFrame& anchor) {
  const Vec3& axis = body.axis().direction;
  return anchor.across_is_proximal(axis) ? axis : Vec3(-axis);
}

// Angle about an axis line from one point to the next, -pi .. pi.
double turn_between(const Vec3& from_m, const Vec3& to_m, const Vec3& centre_m, const Vec3& axis) {
  const Vec3 a = from_m - centre_m, b = to_m - centre_m;
  const Vec3 across_a = a - a.dot(axis) * axis, across_b = b - b.dot(axis) * axis;
  return std::atan2(across_a.cross(across_b).dot(axis), across_a.dot(across_b));
}

// The centre line from the closing edge on, as points with arc lengths from that edge.
struct CentreLine {
  std::vector<Vec3> points_m;
  std::vector<double> arc_m;
};

// `start_m`: arc length of the closing edge from the anchor, negative before it.
CentreLine centre_line(const BodySurface& body, const AnchorFrame& anchor, double start_m, double length_m) {
  const double ahead_m = std::max(0.0, start_m + length_m), back_m = std::max(0.0, -start_m);
  const TwoWayPath path = two_way_path(body, anchor.place, anchor.wrap, back_m, ahead_m);
  CentreLine line;
  constexpr double kRounding_m = 1e-9;  // a path that ends on the edge must not lose that end
  const auto add = [&](double arc_m, const Vec3& point_m) {
    if (arc_m < start_m - kRounding_m) return;
    line.points_m.push_back(point_m);
    line.arc_m.push_back(arc_m - start_m);
  };
  for (std::size_t i = path.backward.points_m.size(); i-- > 1;)
    add(-path.backward.arc_m[i], path.backward.points_m[i]);
  if (start_m > 0.0) add(start_m, path.at(start_m));
  for (std::size_t i = 0; i < path.forward.points_m.size(); ++i)
    add(path.forward.arc_m[i], path.forward.points_m[i]);
  return line;
}

// Signed length round the section from the far edge on to the near edge: > 0 open, < 0 overlapping. Of the
// lengths that differ by whole turns the one nearest to `expected_m` is meant.
double gap_m(const BodySurface& body, const AnchorFrame& anchor, const Vec3& near_edge_m,
             const Vec3& far_edge_m, double expected_m) {
  const auto loop = loop_near(body, near_edge_m, anchor.section_normal);
  if (!loop)
    return std::copysign((near_edge_m - far_edge_m).norm(), expected_m);  // at an open end: the chord
  const double girth_m = loop->girth().si();
  const double once_m = loop->arc_near(near_edge_m) - loop->arc_near(far_edge_m);
  return once_m + girth_m * std::round((expected_m - once_m) / girth_m);
}

}  // namespace

Result<double> length_once_round_m(const BodySurface& body, const AnchorFrame& anchor,
                                   const SectionLoop& section, double start_m) {
  const Vec3 centre_m = section.centre_m(), axis = axis_gone_round(body, anchor);
  const CentreLine line = centre_line(body, anchor, start_m, 2.0 * section.girth().si());
  double turned = 0.0;
  for (std::size_t i = 1; i < line.points_m.size(); ++i) {
    const double more = turn_between(line.points_m[i - 1], line.points_m[i], centre_m, axis);
    if (turned + more >= kFullTurn)
      return line.arc_m[i - 1] + (kFullTurn - turned) / more * (line.arc_m[i] - line.arc_m[i - 1]);
    turned += more;
  }
  if (turned < 0.25 * kFullTurn)
    return bad_input(
        Phrase::worded("The layout's centre line turns only %1 degrees round the body, so its closing edges "
                       "cannot meet; turn the layout so that x goes round the limb.",
                       {figures_of(fixed_text(turned * 360.0 / kFullTurn, 0))}));
  return line.arc_m.back() * kFullTurn / turned;
}

Result<ClosureReport> closure_report(const BodySurface& body, const AnchorFrame& anchor,
                                     const SectionLoop& section, const FlatMesh& mesh, const Points3& laid_m,
                                     const Vec2& layout_point_m) {
  const ClosingLines lines = closing_lines(mesh);
  const double from_x_m = lines.from.x_m(layout_point_m.y());
  const double used_m = lines.length_at(layout_point_m.y()).si();
  const auto needed = length_once_round_m(body, anchor, section, from_x_m - layout_point_m.x());
  if (!needed) return needed.problem();
  const auto gap = [&](int from, int to) {
    return gap_m(body, anchor, laid_m.row(from), laid_m.row(to), *needed - used_m) * metre;
  };
  ClosureReport report{.girth_at_anchor = section.girth(),
                       .closing_length_used = used_m * metre,
                       .closing_length_needed = *needed * metre,
                       .gap_distal = gap(mesh.closing_from.front(), mesh.closing_to.front()),
                       .gap_proximal = gap(mesh.closing_from.back(), mesh.closing_to.back())};
  if (!anchor.across_is_proximal(body.axis().direction)) std::swap(report.gap_distal, report.gap_proximal);
  return report;
}

}  // namespace wrapgauge
