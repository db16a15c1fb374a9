#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// A smooth curve through knots (x rising, y) that never overshoots them: piecewise cubic, level at turning
// points (F. N. Fritsch and J. Butland, "A method for constructing local monotone piecewise cubic
// interpolants", SIAM J. Sci. Stat. Comput. 5, 1984; from memory). Two knots give a straight line; beyond the
// ends the end value holds. At least one knot.
double monotone_cubic(const std::vector<Vec2>& knots, double x);

}  // namespace wrapgauge
