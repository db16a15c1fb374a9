#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// Loops of edges that only one face uses, in the direction of that face's sides; vertices in order. The
// surface is manifold and consistently oriented. Ordered by their lowest vertex, which comes first.
std::vector<std::vector<int>> boundary_loops(const Triangles& faces);

}  // namespace wrapgauge
