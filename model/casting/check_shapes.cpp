#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/casting/casting_check_parts.hpp"
#include "model/geometry/polygon_checks.hpp"

namespace wrapgauge {
namespace {

// Sharp corners that follow one another closely are one bend: told once, at its sharpest. The corners at its
// two ends, where a curve meets a straight side, turn by half as much and are no sharp ones; their turn
// counts.
std::vector<Corner> sharp_bends(const Polygon& loop, double least_m) {
  std::vector<Corner> all = corners(loop);
  const auto gentle = [&](const Corner& corner) { return !falls_short(corner.radius_m, least_m); };
  // From a gentle corner round to it again, so that no bend runs over the loop's start.
  std::rotate(all.begin(), std::find_if(all.begin(), all.end(), gentle), all.end());
  if (!all.empty() && gentle(all.front())) all.push_back(all.front());
  const auto near = [&](std::size_t i, std::size_t j) {
    return (all[i].place_m - all[j].place_m).norm() < least_m;
  };
  std::vector<Corner> bends;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (gentle(all[i])) continue;
    Corner bend = all[i];
    if (i > 0 && near(i - 1, i)) bend.turn_rad += all[i - 1].turn_rad;
    for (; i + 1 < all.size() && near(i, i + 1); ++i) {
      bend.turn_rad += all[i + 1].turn_rad;
      if (gentle(all[i + 1])) break;
      if (all[i + 1].radius_m < bend.radius_m) bend.radius_m = all[i + 1].radius_m;
    }
    bends.push_back(bend);
  }
  return bends;
}

Phrase degrees_of(double angle_rad) {
  return figures_of(fixed_text(std::abs(angle_rad) * 180.0 / std::numbers::pi, 0));
}

void add_sharp(const CastingCheck& check, int chamber, const Corner& corner, double least_m) {
  const auto [radius, least] = lengths_told_apart(corner.radius_m, least_m);
  check.add_length(
      CastingRule::kCornerRadius,
      Phrase::worded("%1 has a corner of %2 degrees at %3 with a radius of %4: round it by %5 or "
                     "more, or the seam starts to peel there.",
                     {part_phrase(check.layout, {RegionKind::kChamber, chamber}), degrees_of(corner.turn_rad),
                      place_phrase(corner.place_m), radius, least}),
      corner.radius_m, least_m, corner.place_m, {{ProblemPlace::Kind::kChamber, chamber}});
}

void add_notch(const CastingCheck& check, const Corner& corner, double least_m) {
  const auto [radius, least] = lengths_told_apart(corner.radius_m, least_m);
  check.add_length(
      CastingRule::kOutlineNotch,
      Phrase::worded("the outline has a notch of %1 degrees at %2 with a radius of %3: round it by "
                     "%4 or more, or the sheets tear from there.",
                     {degrees_of(corner.turn_rad), place_phrase(corner.place_m), radius, least}),
      corner.radius_m, least_m, corner.place_m, {});
}

// An inset line is drawn with square ends: sharp unless a spot sits on the end.
bool has_spot_on(const Chamber& chamber, const Vec2& end_m, double half_width_m) {
  return std::any_of(chamber.inset_spots.begin(), chamber.inset_spots.end(), [&](const InsetSpot& spot) {
    return (spot.centre_m - end_m).norm() + half_width_m <= spot.radius.si() * (1.0 + 1e-9);
  });
}

void add_square_end(const CastingCheck& check, int chamber, std::size_t line, const Vec2& end,
                    double half_width_m) {
  const double radius_m =
      std::max(half_width_m, check.rules.value(CastingRule::kCornerRadius) * check.thicker_m());
  const std::size_t spots = check.layout.chambers[chamber].inset_spots.size();
  check.add_length(
      CastingRule::kCornerRadius,
      Phrase::worded(
          "%1 has a square end at %2: put an inset spot of radius %3 or more on it, or the inset "
          "seam starts to let go at its corners.",
          {inset_phrase(check.layout, chamber, spots + line), place_phrase(end), length_phrase(radius_m)}),
      0.0, half_width_m, end, {{ProblemPlace::Kind::kChamber, chamber}});
}

void check_line_ends(const CastingCheck& check, int chamber_index) {
  const Chamber& chamber = check.layout.chambers[chamber_index];
  for (std::size_t k = 0; k < chamber.inset_lines.size(); ++k) {
    const InsetLine& line = chamber.inset_lines[k];
    const double half = 0.5 * line.width.si();
    for (const Vec2& end : {line.path_m.front(), line.path_m.back()})
      if (!has_spot_on(chamber, end, half)) add_square_end(check, chamber_index, k, end, half);
  }
}

// The smallest rectangle, turned at will, round a loop: its longer and shorter side.
std::pair<double, double> sides_of(const Polygon& loop) {
  std::pair<double, double> best{0.0, 0.0};
  double least_area = -1.0;
  for (int k = 0; k < 180; ++k) {  // by half degrees: a long side is then right within 0.01 %
    const double angle = 0.5 * std::numbers::pi * k / 180.0;
    const Vec2 u(std::cos(angle), std::sin(angle)), v(-u.y(), u.x());
    double low_u = 1e9, high_u = -1e9, low_v = 1e9, high_v = -1e9;
    for (const Vec2& p : loop) {
      low_u = std::min(low_u, p.dot(u)), high_u = std::max(high_u, p.dot(u));
      low_v = std::min(low_v, p.dot(v)), high_v = std::max(high_v, p.dot(v));
    }
    const double a = high_u - low_u, b = high_v - low_v;
    if (least_area >= 0.0 && a * b >= least_area) continue;
    least_area = a * b;
    best = {std::max(a, b), std::min(a, b)};
  }
  return best;
}

// Length of a chamber's wall that another chamber lies along.
double shared_wall_m(const CastingCheck& check, int chamber, double reach_m) {
  constexpr double kStep_m = 1e-3;
  const Polygon& wall = check.shapes.chambers[chamber].boundary_m;
  double shared = 0.0;
  for (std::size_t i = 0; i < wall.size(); ++i) {
    const Vec2 &a = wall[i], &b = wall[(i + 1) % wall.size()];
    const int steps = std::max(1, static_cast<int>(std::ceil((b - a).norm() / kStep_m)));
    for (int k = 0; k < steps; ++k) {
      const Vec2 p = a + (k + 0.5) / steps * (b - a);
      for (std::size_t other = 0; other < check.shapes.chambers.size(); ++other) {
        if (static_cast<int>(other) == chamber) continue;
        if (distance_to_loop_m(check.shapes.chambers[other].boundary_m, p) > reach_m) continue;
        shared += (b - a).norm() / steps;
        break;
      }
    }
  }
  return shared;
}

}  // namespace

void check_corners(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kCornerRadius) * check.thicker_m();
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    for (const Corner& bend : sharp_bends(check.layout.chambers[i].boundary_m, least_m))
      add_sharp(check, i, bend, least_m);
    check_line_ends(check, i);
  }
}

void check_outline_notches(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kOutlineNotch) * check.thicker_m();
  for (const Corner& bend : sharp_bends(counter_clockwise(check.layout.outline_m), least_m))
    if (bend.turn_rad < 0.0) add_notch(check, bend, least_m);
}

void check_twist(const CastingCheck& check) {
  const double most = check.rules.value(CastingRule::kTwistLength);
  const double reach_m = 1e-3 * check.rules.value(CastingRule::kSharedSeam);
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    const Polygon& wall = check.layout.chambers[i].boundary_m;
    const auto [longer, shorter] = sides_of(wall);
    if (!exceeds(longer / shorter, most) || shared_wall_m(check, i, reach_m) >= 0.5 * longer) continue;
    const Bounds2 box = bounds(wall);
    const Vec2 middle = 0.5 * (box.low + box.high);
    const auto [ratio, threshold] = told_apart(longer / shorter, most, "");
    check.findings.push_back(
        {CastingRule::kTwistLength,
         Phrase::worded(
             "%1 round %2 is %3 times as long as wide (%4 by %5), more than %6, and no neighbour "
             "within %7 shares a seam along half of it, so it may twist: make it shorter, or draw a "
             "chamber beside it.",
             {part_phrase(check.layout, {RegionKind::kChamber, i}), place_phrase(middle), ratio,
              length_phrase(longer), length_phrase(shorter), threshold, length_phrase(reach_m)}),
         longer / shorter,
         most,
         middle,
         {{ProblemPlace::Kind::kChamber, i}}});
  }
}

}  // namespace wrapgauge
