#pragma once
// Where a place of the skin faces, in the words of someone who looks at the person: front, back, inner and
// outer side of a limb, right and left of the trunk and head.

#include <optional>

#include "model/body/body.hpp"
#include "model/core/phrase.hpp"

namespace wrapgauge {

enum class Facing { kFront, kBack, kInner, kOuter, kRight, kLeft };

// Of a direction away from the body's axis, in quarters of 90 degrees about `body.front`. Right and left are
// the person's, who stands with the axis upwards. None: the front is not known, or, beside front and back,
// the side of a limb; or the direction runs along the axis.
std::optional<Facing> facing_of(const Body& body, const Vec3& outward);
// The same of an angle about the axis (axis_angle.hpp), degrees.
std::optional<Facing> facing_at(const Body& body, double angle_deg);

Phrase facing_words(Facing facing);  // "front", "back", "inner side", ...

}  // namespace wrapgauge
