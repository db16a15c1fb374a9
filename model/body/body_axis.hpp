#pragma once
// The long axis of a limb, from its surface alone.

#include "model/body/body.hpp"

namespace wrapgauge {

// Across both ends where they are cut square (square_ends.hpp): whoever cut them meant the axis, and a limb's
// own shape leads off it by up to 7 degrees. Else the direction that the surface's normals avoid most: the
// eigenvector of the area-weighted sum of n n^T with the smallest eigenvalue. Unlike the direction of largest
// extent it also holds for open tubes wider than long (derived: a cylinder's normals have no part along its
// axis). Its largest component is positive, so that it keeps the file's positive sense; which end is proximal
// cannot be told from a surface.
Vec3 find_axis_direction(const TriangleMesh& surface);

// The axis along `direction` (unit) through the area-weighted centroid of the surface, station 0 at the
// vertex that lies furthest against `direction`.
Axis place_axis(const TriangleMesh& surface, const Vec3& direction);

// Extents of the surface along three perpendicular directions: the axis, then widest and narrowest across it.
Vec3 extents_about(const TriangleMesh& surface, const Vec3& axis_direction);

}  // namespace wrapgauge
