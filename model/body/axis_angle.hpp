#pragma once
// Angles about a limb's long axis.

#include "model/core/array.hpp"

namespace wrapgauge {

// Where angle 0 lies: the body's +x made perpendicular to the axis, or its +y where x runs along the axis.
// `axis`: unit, distal -> proximal.
Vec3 zero_angle_direction(const Vec3& axis);

// Of an offset from the axis, right-handed about distal -> proximal, 0 <= angle < 360 degrees. What of the
// offset runs along the axis does not count; an offset without anything else has angle 0.
double angle_about_deg(const Vec3& axis, const Vec3& offset);

}  // namespace wrapgauge
