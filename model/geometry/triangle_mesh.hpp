#pragma once
#include "model/core/array.hpp"

namespace wrapgauge {

// A triangle surface in 3D. Counter-clockwise seen from outside: normals point outward.
struct TriangleMesh {
  Points3 vertices_m;
  Triangles faces;
};

}  // namespace wrapgauge
