#pragma once
// Where a body surface stops: the two ends of a tube, and holes.

#include <vector>

#include "model/body/body.hpp"

namespace wrapgauge {

enum class OpenEndKind { kDistal, kProximal, kHole };

struct OpenEnd {
  OpenEndKind kind = OpenEndKind::kHole;
  Length length;                 // along the boundary loop
  Vec3 centre_m = Vec3::Zero();  // mean of the loop's edges, weighted by length
  Length station_low, station_high;
  std::vector<int> vertices;  // in order round the loop
};

// Boundary loops of a manifold surface: the distal and the proximal end first if there are such (a loop at
// least half as long as the longest one that reaches furthest that way), then holes, longest first.
std::vector<OpenEnd> find_open_ends(const TriangleMesh& surface, const Axis& axis);

}  // namespace wrapgauge
