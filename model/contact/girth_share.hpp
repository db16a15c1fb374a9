#pragma once
// How much of a girth is pressed: decides whether a device counts as one that goes round a limb.

#include <vector>

#include "model/body/body.hpp"
#include "model/contact/area_average.hpp"

namespace wrapgauge {

// Over cross-sections 4 mm apart along the axis: the largest share (0..1) of the angle about the section's
// centre in which contact pressure is above 5 % of the mean of what touches. The section's centre is the
// centroid of the body's outline there (weighted by length), so a bent limb is seen from its own middle.
double pressed_share_of_girth(const Body& body, const std::vector<PressureSample>& samples);

}  // namespace wrapgauge
