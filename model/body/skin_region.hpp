#pragma once
// Parts of the skin that differ from the rest: softer or harder, deeper or shallower, or where nothing may
// lie.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/body/body.hpp"

namespace wrapgauge {

// A named point on or near the skin that regions are placed by.
struct Landmark {
  std::string name;
  Vec3 point_m = Vec3::Zero();
  bool operator==(const Landmark&) const = default;
};

// Everything nearer than `radius` (straight).
struct NearPoint {
  std::string landmark;  // empty: the point was given itself
  Vec3 point_m = Vec3::Zero();
  Length radius;
  bool operator==(const NearPoint&) const = default;
};
// Between two stations and, going right-handed about the axis, from one angle to the other (as of an anchor:
// 0 is the body's +x).
struct BetweenStations {
  Length from, to;
  double from_deg = 0.0, to_deg = 360.0;
  bool operator==(const BetweenStations&) const = default;
};

// What the tissue is at a straight distance from a region's point; in between linear.
struct TissueAtDistance {
  Length distance;
  std::optional<Length> tissue_depth;
  std::optional<double> stiffness_factor;
  bool operator==(const TissueAtDistance&) const = default;
};

struct SkinRegion {
  std::string name;
  std::variant<NearPoint, BetweenStations> place;
  bool no_go = false;                      // a layout that lies on it is refused
  std::optional<Length> tissue_depth;      // skin to bone
  std::optional<double> stiffness_factor;  // on the tissue's modulus
  Length fade;  // outside the region the surroundings take over smoothly within this distance; 0: at once
  // Instead of tissue_depth and stiffness_factor, for a region near a point: distances rising, the last one
  // the radius; before the first and after the last their values hold. All name the same of the two.
  std::vector<TissueAtDistance> by_distance = {};
  bool operator==(const SkinRegion&) const = default;
};

// Straight distance of a skin point outside the region, 0 within it. A body's axis says where stations and
// angles lie.
Length distance_outside(const SkinRegion& region, const Axis& axis, const Vec3& point_m);

// What the region sets the tissue to at a skin point; none: it says nothing of it.
std::optional<Length> tissue_depth_at(const SkinRegion& region, const Vec3& point_m);
std::optional<double> stiffness_factor_at(const SkinRegion& region, const Vec3& point_m);

// 1 within the region, 0 beyond its fade, smooth between.
double share_of_region(const SkinRegion& region, const Axis& axis, const Vec3& point_m);

}  // namespace wrapgauge
