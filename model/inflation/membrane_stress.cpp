#include "model/inflation/membrane_stress.hpp"

#include <Eigen/Dense>
#include <algorithm>

#include "model/inflation/sheet_elements.hpp"

namespace wrapgauge {
namespace {

// Largest principal Cauchy tension from a nominal tension P (N/m on the flat shape): P F^T / area stretch.
double largest_cauchy_tension(const Mat32& nominal, const Mat32& gradient) {
  const double area_stretch = std::max(gradient.col(0).cross(gradient.col(1)).norm(), 1e-12);
  const Mat3 cauchy = nominal * gradient.transpose() / area_stretch;
  const Eigen::SelfAdjointEigenSolver<Mat3> eigen(0.5 * (cauchy + cauchy.transpose()),
                                                  Eigen::EigenvaluesOnly);
  return std::max(0.0, eigen.eigenvalues()(2));
}

}  // namespace

SheetStress sheet_stress(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m) {
  const std::vector<HyperelasticLaw> strap_laws = strap_ground_laws(setup.layout);
  const std::vector<SheetElement> elements = sheet_elements(setup, sheet, strap_laws);
  const auto count = static_cast<Eigen::Index>(elements.size());
  SheetStress stress;
  stress.stretch_max.resize(count);
  stress.tension_max_n_per_m.resize(count);
  stress.nominal_tension_n_per_m.resize(3, 2 * count);
  for (Eigen::Index t = 0; t < count; ++t) {
    const SheetElement& element = elements[t];
    const Mat32 drawn = deformation_gradient(positions_m, sheet.triangles, t, element.flat_shape);
    Mat32 nominal =
        cloth_response(element.cloth_along_n_per_m, element.cloth_across_n_per_m, drawn, false).stress;
    double stretch = 0.0;
    for (int k = 0; k < element.layer_count; ++k) {
      const SheetLayerRest& layer = element.layers[k];
      const Mat32 own = deformation_gradient(positions_m, sheet.triangles, t, layer.shape);
      stretch = std::max(stretch, principal_stretches(own)(0));
      Mat32 part = layer.thickness_m * membrane_response(*layer.law, own, {TangentKind::kNone, false}).stress;
      // A prestretched sheet's own rest frame is shorter along x than the drawn one: refer its tension to the
      // drawing.
      const double prestretch = element.flat_area_m2 / layer.rest_area_m2;
      part.col(1) /= prestretch;
      nominal += part;
    }
    stress.stretch_max(t) = stretch;
    stress.nominal_tension_n_per_m.middleCols<2>(2 * t) = nominal;
    stress.tension_max_n_per_m(t) = largest_cauchy_tension(nominal, drawn);
  }
  return stress;
}

}  // namespace wrapgauge
