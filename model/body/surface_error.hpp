#pragma once
#include "model/core/quantity.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct SurfaceError {
  Length mean, percentile_95, largest;
};

// Distance from one surface to another, sampled at its vertices, edge middles and face centres. One way only:
// what the other one has more is not seen.
SurfaceError surface_error(const TriangleMesh& from, const TriangleMesh& to);

}  // namespace wrapgauge
