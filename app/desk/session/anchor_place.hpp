#pragma once
#include "model/body/body.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// The station and angle that find a skin point again, to about the width of a body's triangle.
AnchorAtStation station_and_angle(const Body& body, const Vec3& point_m);

}  // namespace wrapgauge
