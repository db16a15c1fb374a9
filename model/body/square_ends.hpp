#pragma once
#include <optional>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// Whoever cuts a limb out of a scan cuts across it: when a surface's two longest open edges lie in planes
// that are nearly parallel, the mean of the planes' normals (unit, any sense). None where an edge is ragged
// (more than 0.2 % of its length off its plane), has fewer than 12 sides or is less than a third as long as
// the other, where the planes stand more than 3 degrees apart, or where the edges do not lie one above the
// other along the normal. All of that is judgement.
std::optional<Vec3> direction_across_ends(const TriangleMesh& surface);

}  // namespace wrapgauge
