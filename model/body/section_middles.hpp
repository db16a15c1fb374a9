#pragma once
// The line that the middles of a limb's sections follow: it says whether the limb is bent.

#include <optional>
#include <vector>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct SectionMiddles {
  // Middles of the sections that go all round, in order along the direction; same unit as the surface. The
  // middle is the mean over the section's line, each part counting by its length.
  std::vector<Vec3> middles;
  int planes = 0;  // that were laid
};

// Cuts by fifteen planes across `direction` (unit), evenly from 15 % to 85 % of the extent along it.
SectionMiddles section_middles(const TriangleMesh& surface, const Vec3& direction);

// The angle, degrees, between the lines fitted to the lower and the upper half of the middles. None with
// fewer than eight middles.
std::optional<double> bend_deg(const SectionMiddles& sections);

}  // namespace wrapgauge
