#pragma once
// How much a flat layout is stretched and sheared by lying on a body.

#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// From the deformation gradient F (3x2) of every flat triangle: principal stretches are the singular values
// of F, shear is how far the angle between F e_x and F e_y is from 90 degrees. Percentiles are weighted by
// flat area; the 99th of the shear too, because single slivers say nothing. One entry a chamber by its name,
// then one named "whole layout".
std::vector<WrapQuality> wrap_quality(const Layout& layout, const FlatMesh& mesh, const Points3& laid_m);

// The triangles that the percentiles of the whole layout's principal stretches are found in.
struct StretchedTriangle {
  double stretch = 1.0;
  int triangle = 0;
};
struct StretchExtremes {
  StretchedTriangle least, most;
};
StretchExtremes stretch_extremes(const FlatMesh& mesh, const Points3& laid_m);

}  // namespace wrapgauge
