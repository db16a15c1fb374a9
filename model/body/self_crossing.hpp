#pragma once
#include <optional>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct SelfCrossing {
  int pairs = 0;             // pairs of faces without a common vertex that meet, counted up to `most`
  int first_face = 0;        // lowest face of these pairs; meaningful when pairs > 0
  Vec3 at_m = Vec3::Zero();  // its centre
};

// Faces that pass through each other. Faces that share a vertex are not compared. Stops counting at `most`.
SelfCrossing find_self_crossing(const TriangleMesh& surface, int most = 1000);

}  // namespace wrapgauge
