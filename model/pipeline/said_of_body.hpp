#pragma once
// What a plan says of the person's body, against what the body says of itself and where it lies.

#include "model/geometry/nearest_point.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// Part, side and front of the plan taken over into `body`. Problems: one of them contradicts the body's own;
// a part that nothing may press on; a front along the axis.
std::optional<Problem> take_what_is_said(const Plan& plan, Body& body);

// The first of `sites` and the plan's landmarks that lies more than 20 mm (judgement) off the skin: it was
// measured in another frame.
std::optional<Problem> place_off_skin(const Plan& plan, const std::vector<BonySite>& sites,
                                      const NearestPoint& skin);

}  // namespace wrapgauge
