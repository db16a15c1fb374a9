#include "model/body/place_words.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"
#include "model/body/part_rules.hpp"

namespace wrapgauge {
std::optional<Facing> facing_of(const Body& body, const Vec3& outward) {
  if (!body.front) return std::nullopt;
  const Vec3 right = body.front->cross(body.axis.direction);  // of the person
  const double forwards = outward.dot(*body.front), to_right = outward.dot(right);
  if (std::hypot(forwards, to_right) < 1e-9 * std::max(1.0, outward.norm())) return std::nullopt;
  if (std::abs(forwards) >= std::abs(to_right)) return forwards > 0.0 ? Facing::kFront : Facing::kBack;
  if (!body.part) return std::nullopt;
  if (!is_paired(*body.part)) return to_right > 0.0 ? Facing::kRight : Facing::kLeft;
  if (!body.side) return std::nullopt;
  return (to_right > 0.0) == (*body.side == BodySide::kRight) ? Facing::kOuter : Facing::kInner;
}

std::optional<Facing> facing_at(const Body& body, double angle_deg) {
  const Eigen::AngleAxisd turn(angle_deg * std::numbers::pi / 180.0, body.axis.direction);
  return facing_of(body, turn * zero_angle_direction(body.axis.direction));
}

Phrase facing_words(Facing facing) {
  switch (facing) {
    case Facing::kFront:
      return Phrase::worded("front");
    case Facing::kBack:
      return Phrase::worded("back");
    case Facing::kInner:
      return Phrase::worded("inner side");
    case Facing::kOuter:
      return Phrase::worded("outer side");
    case Facing::kRight:
      return Phrase::worded("right side");
    case Facing::kLeft:
      break;
  }
  return Phrase::worded("left side");
}

}  // namespace wrapgauge
