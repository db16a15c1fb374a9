#pragma once
// The line that the middles of a limb's sections follow: it says whether the limb is bent.

#include <optional>
#include <vector>

#include "model/body/body.hpp"
#include "model/geometry/plane_section.hpp"

namespace wrapgauge {

struct SectionMiddles {
  // Middles of the sections that go all round, from distal on, metres. The middle is the mean over the
  // section's lines, each part counting by its length.
  std::vector<Vec3> middles_m;
  int planes = 0;  // that were laid
};

// Cuts by fifteen planes across the axis, evenly from 15 % to 85 % of the body's length. `sections` are of
// the body's surface.
SectionMiddles section_middles(const Body& body, const PlaneSections& sections);

// The angle, degrees, between the lines fitted to the lower and the upper half of the middles. None with
// fewer than eight middles.
std::optional<double> bend_deg(const SectionMiddles& sections);

}  // namespace wrapgauge
