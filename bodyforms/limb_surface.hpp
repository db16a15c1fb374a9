#pragma once
// The surface all forms are made of: rings of elliptic sections with a girth law along the axis.

#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct GirthAtStation {
  Length station;
  Length girth;
};

struct LimbShape {
  std::vector<GirthAtStation> girths;  // first at station 0, rising; the last one is the proximal end
  double aspect_distal = 1.0, aspect_proximal = 1.0;  // width over depth, linear along the axis in between
  Length edge = 3.0 * mm;
};

// The girth at a station: monotone cubic interpolation, which never overshoots what is given (F. N. Fritsch
// and J. Butland, "A method for constructing local monotone piecewise cubic interpolants", SIAM J. Sci. Stat.
// Comput. 5, 1984; from memory).
Length girth_between(const std::vector<GirthAtStation>& girths, Length station);

// Nearly equilateral triangles; the section at every ring has exactly the girth of the law. Problem: the
// girth changes so fast that the surface is steeper than 45 degrees.
Result<TriangleMesh> limb_surface(const LimbShape& shape);

}  // namespace wrapgauge
