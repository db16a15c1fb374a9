#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/casting/casting_check_parts.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/air_groups.hpp"

namespace wrapgauge {
namespace {

// Sharp corners that follow one another closely are one bend: told once, at its sharpest. The corners at its
// two ends, where a curve meets a straight side, turn by half as much and are no sharp ones; their turn
// counts.
std::vector<Corner> sharp_bends(const Polygon& loop, double least_m) {
  std::vector<Corner> all = corners(loop);
  const auto gentle = [&](const Corner& corner) { return corner.radius_m >= least_m; };
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

void add_sharp(const CastingCheck& check, const std::string& what, const Corner& corner, double least_m,
               ProblemPlace part) {
  const double degrees = std::abs(corner.turn_rad) * 180.0 / std::numbers::pi;
  check.findings.push_back({CastingRule::kCornerRadius,
                            what + " has a corner of " + fixed_text(degrees, 0) + " degrees at " +
                                at_mm(corner.place_m) + " with a radius of " +
                                in_millimetres(corner.radius_m) + ": round it by " + in_millimetres(least_m) +
                                " or more, or the seam starts to peel there.",
                            1e3 * corner.radius_m,
                            1e3 * least_m,
                            corner.place_m,
                            {part}});
}

// An inset line is drawn with square ends: sharp unless a spot sits on the end.
bool has_spot_on(const Chamber& chamber, const Vec2& end_m, double half_width_m) {
  return std::any_of(chamber.inset_spots.begin(), chamber.inset_spots.end(), [&](const InsetSpot& spot) {
    return (spot.centre_m - end_m).norm() + half_width_m <= spot.radius.si() * (1.0 + 1e-9);
  });
}

void check_line_ends(const CastingCheck& check, int chamber_index) {
  const Chamber& chamber = check.layout.chambers[chamber_index];
  for (std::size_t k = 0; k < chamber.inset_lines.size(); ++k) {
    const InsetLine& line = chamber.inset_lines[k];
    const double half = 0.5 * line.width.si();
    for (const Vec2& end : {line.path_m.front(), line.path_m.back()})
      if (!has_spot_on(chamber, end, half))
        check.findings.push_back({CastingRule::kCornerRadius,
                                  "inset line " + std::to_string(k + 1) + " of chamber '" + chamber.name +
                                      "' has a square end at " + at_mm(end) +
                                      ": put an inset spot of radius " +
                                      in_millimetres(std::max(half, 1.5 * check.thicker_m())) +
                                      " or more on it, or the inset seam starts to let go at its corners.",
                                  0.0,
                                  1e3 * half,
                                  end,
                                  {{ProblemPlace::Kind::kChamber, chamber_index}}});
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
    const ProblemPlace part{ProblemPlace::Kind::kChamber, i};
    const std::string name = part_name(check.layout, {RegionKind::kChamber, i});
    for (const Corner& bend : sharp_bends(check.layout.chambers[i].boundary_m, least_m))
      add_sharp(check, name, bend, least_m, part);
    check_line_ends(check, i);
  }
}

void check_curl(const CastingCheck& check) {
  const double skin = check.layout.skin_sheet.thickness.si(), outer = check.layout.outer_sheet.thickness.si();
  const double skin_stiffness = initial_shear_modulus(check.grades.skin.law).si() * skin;
  const double outer_stiffness = initial_shear_modulus(check.grades.outer.law).si() * outer;
  const double by_thickness = check.thicker_m() / check.thinner_m();
  const double by_stiffness =
      std::max(skin_stiffness, outer_stiffness) / std::min(skin_stiffness, outer_stiffness);
  const bool held = check.layout.closure.has_value() || check.layout.rim_bonded;
  const std::string way = outer_stiffness >= skin_stiffness
                              ? "its edges lift away from the skin, as the skin sheet bulges more"
                              : "its edges press towards the skin, as the outer sheet bulges more";
  const auto add = [&](CastingRule rule, const std::string& what, double ratio) {
    check.findings.push_back({rule,
                              what + " is " + fixed_text(ratio, 1) + ", more than " +
                                  number_text(check.rules.value(rule)) + ": inflated, the layout curls (" +
                                  way + "); bring the sheets nearer to one another, or add backing or a " +
                                  "closure that holds it.",
                              ratio,
                              check.rules.value(rule),
                              std::nullopt,
                              {}});
  };
  if (by_thickness > check.rules.value(CastingRule::kCurlThickness) * (1.0 + 1e-9))
    add(CastingRule::kCurlThickness,
        "the ratio of the sheets' thickness (skin " + in_millimetres(skin) + ", outer " +
            in_millimetres(outer) + ")",
        by_thickness);
  if (!held && by_stiffness > check.rules.value(CastingRule::kCurlStiffness) * (1.0 + 1e-9))
    add(CastingRule::kCurlStiffness, "the ratio of the sheets' stiffness (shear modulus times thickness)",
        by_stiffness);
}

void check_twist(const CastingCheck& check) {
  const double most = check.rules.value(CastingRule::kTwistLength);
  const double reach_m = 1e-3 * check.rules.value(CastingRule::kSharedSeam);
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    const Polygon& wall = check.layout.chambers[i].boundary_m;
    const auto [longer, shorter] = sides_of(wall);
    if (longer <= most * shorter || shared_wall_m(check, i, reach_m) >= 0.5 * longer) continue;
    const Bounds2 box = bounds(wall);
    const Vec2 middle = 0.5 * (box.low + box.high);
    check.findings.push_back({CastingRule::kTwistLength,
                              "chamber '" + check.layout.chambers[i].name + "' round " + at_mm(middle) +
                                  " is " + fixed_text(longer / shorter, 1) + " times as long as wide (" +
                                  in_millimetres(longer) + " by " + in_millimetres(shorter) +
                                  "), more than " + number_text(most) + ", and no neighbour within " +
                                  in_millimetres(reach_m) +
                                  " shares a seam along half of it, so it may twist: make it shorter, or "
                                  "draw a chamber beside it.",
                              longer / shorter,
                              most,
                              middle,
                              {{ProblemPlace::Kind::kChamber, i}}});
  }
}

void check_inlets(const CastingCheck& check) {
  const double least_m = 1e-3 * check.rules.value(CastingRule::kInletToSeam);
  for (int i = 0; i < static_cast<int>(check.layout.inlets.size()); ++i) {
    const Inlet& inlet = check.layout.inlets[i];
    const auto fed = region_fed_by(check.shapes, inlet.point_m);
    if (!fed || fed->kind != RegionKind::kChamber) continue;
    const auto& [wall, insets] = check.shapes.chambers[fed->part];
    double nearest = distance_to_loop_m(wall, inlet.point_m);
    if (!contains(wall, inlet.point_m)) nearest = 0.0;
    std::string seam = "the chamber's wall";
    for (const Polygon& inset : insets)
      if (const double gap = distance_to_loop_m(inset, inlet.point_m); gap < nearest) {
        nearest = gap;
        seam = "an inset seam";
      }
    if (nearest >= least_m) continue;
    check.findings.push_back({CastingRule::kInletToSeam,
                              "inlet '" + inlet.name + "' at " + at_mm(inlet.point_m) + " is " +
                                  in_millimetres(nearest) + " from " + seam + ", less than " +
                                  in_millimetres(least_m) +
                                  ": move it inwards, or the flange of its tube peels the seam.",
                              1e3 * nearest,
                              1e3 * least_m,
                              inlet.point_m,
                              {{ProblemPlace::Kind::kInlet, i}}});
  }
}

}  // namespace wrapgauge
