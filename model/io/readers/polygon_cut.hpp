#pragma once
#include <span>

#include "model/io/readers/growing_rows.hpp"

namespace wrapgauge {

// Adds the triangles of a polygon with at least three corners to `faces`: always two fewer than it has
// corners. Quadrilaterals are cut along the shorter diagonal.
void cut_polygon(const Points3& vertices, std::span<const int> corners, GrowingRows<Triangles>& faces);

}  // namespace wrapgauge
