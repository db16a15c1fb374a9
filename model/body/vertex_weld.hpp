#pragma once
#include "model/core/array.hpp"

namespace wrapgauge {

// Makes faces use one vertex where several lie on each other: within a millionth of the size of the surface,
// and never more than a thousandth of its median edge. The lowest index of a group stands for it; `vertices`
// keeps all. Returns how many vertices that faces used are now replaced. O(n log n).
int weld_vertices(const Points3& vertices, Triangles& faces);

}  // namespace wrapgauge
