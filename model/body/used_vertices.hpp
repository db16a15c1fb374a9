#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// The vertices that faces use, of `vertex_count`, in order: a scan may hold others. Faces name vertices that
// are there.
std::vector<int> used_vertices(const Triangles& faces, Eigen::Index vertex_count);

}  // namespace wrapgauge
