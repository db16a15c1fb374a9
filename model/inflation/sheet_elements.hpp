#pragma once
// What each sheet triangle is made of: its rest shape and its layers.

#include <memory>
#include <vector>

#include "model/inflation/load_path.hpp"
#include "model/inflation/membrane.hpp"
#include "model/inflation/stretched_stiffness.hpp"

namespace wrapgauge {

// One hyperelastic layer of a triangle. Rows of `shape` are the gradients of the three corner functions in
// the layer's own rest frame, so that F = [x1 x2 x3] * shape.
struct SheetLayerRest {
  const HyperelasticLaw* law = nullptr;
  double thickness_m = 0.0;
  double rest_area_m2 = 0.0;
  Eigen::Matrix<double, 3, 2> shape;
  double bending_stiffness_nm = 0.0;  // its share of the stack's D, as the sheet is unstretched
  std::shared_ptr<const StretchedStiffness> stretched;  // of `law`; none: the law is asked each time
};

struct SheetElement {
  int layer_count = 0;
  SheetLayerRest layers[2];
  double cloth_along_n_per_m = 0.0, cloth_across_n_per_m = 0.0;  // on the drawn (flat) rest shape
  double flat_area_m2 = 0.0;
  Eigen::Matrix<double, 3, 2> flat_shape;
  double bending_stiffness_nm = 0.0;  // D of the whole stack, unstretched
};

// Laws are referred to, not copied: `setup` and `strap_laws` outlive the elements.
std::vector<SheetElement> sheet_elements(const InflationSetup& setup, const SheetMesh& sheet,
                                         const std::vector<HyperelasticLaw>& strap_laws);

// For a solve, which asks for their stiffness over and over.
void tabulate_stiffness(std::vector<SheetElement>& elements);

// Straps are cloth: threads along x, and a weak isotropic ground, a share of the threads, that keeps them in
// shape.
std::vector<HyperelasticLaw> strap_ground_laws(const Layout& layout, const SheetSettings& settings = {});

inline Mat32 deformation_gradient(const Points3& positions_m, const Triangles& triangles, Eigen::Index t,
                                  const Eigen::Matrix<double, 3, 2>& shape) {
  Mat3 corners;
  for (int corner = 0; corner < 3; ++corner)
    corners.col(corner) = positions_m.row(triangles(t, corner)).transpose();
  return corners * shape;
}

}  // namespace wrapgauge
