#pragma once
// A closed test solid.

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct EllipsoidShape {
  Length length;        // along z
  Length girth;         // across the middle
  double aspect = 1.0;  // width along x over depth along y
  Length edge = 3.0 * mm;
};

// A divided icosahedron with a corner at either pole, the lower one at z = 0; triangles are not longer than
// `edge` on a sphere of the same girth. The plane section across the middle has exactly the girth asked for.
TriangleMesh ellipsoid_surface(const EllipsoidShape& shape);

}  // namespace wrapgauge
