#include "model/inflation/sheet_elements.hpp"

#include <Eigen/LU>
#include <map>

namespace wrapgauge {
namespace {

// Gradients of the corner functions on a flat triangle; x shrunk by `prestretch` to the sheet's own rest
// length.
Eigen::Matrix<double, 3, 2> corner_gradients(const FlatMesh& flat, int t, double prestretch, double& area) {
  Eigen::Matrix2d edges;
  const Vec2 origin = flat.vertices_m.row(flat.triangles(t, 0)).transpose();
  for (int k = 0; k < 2; ++k) {
    edges.col(k) = flat.vertices_m.row(flat.triangles(t, k + 1)).transpose() - origin;
    edges(0, k) /= prestretch;
  }
  area = 0.5 * edges.determinant();
  const Eigen::Matrix2d inverse = edges.inverse();
  Eigen::Matrix<double, 3, 2> shape;
  shape.row(1) = inverse.row(0);
  shape.row(2) = inverse.row(1);
  shape.row(0) = -inverse.row(0) - inverse.row(1);
  return shape;
}

// Of the stack about its neutral surface, incompressible plates, E = 3 mu: D = 4/3 sum E (t^3/12 + t z^2).
// One sheet: E t^3 / 9.
void set_bending_stiffness(SheetElement& element) {
  double below = 0.0, stiffness = 0.0, first = 0.0;
  double young[2], height[2];
  for (int k = 0; k < element.layer_count; ++k) {
    const double t = element.layers[k].thickness_m;
    young[k] = 3.0 * initial_shear_modulus(*element.layers[k].law).si();
    height[k] = below + 0.5 * t;
    stiffness += young[k] * t;
    first += young[k] * t * height[k];
    below += t;
  }
  for (int k = 0; k < element.layer_count; ++k) {
    const double t = element.layers[k].thickness_m, z = height[k] - first / stiffness;
    element.layers[k].bending_stiffness_nm = 4.0 / 3.0 * young[k] * t * (t * t / 12.0 + z * z);
    element.bending_stiffness_nm += element.layers[k].bending_stiffness_nm;
  }
}

void add_layer(SheetElement& element, const FlatMesh& flat, int t, const HyperelasticLaw& law,
               double thickness_m, double prestretch) {
  SheetLayerRest& layer = element.layers[element.layer_count++];
  layer.law = &law;
  layer.thickness_m = thickness_m;
  layer.shape = corner_gradients(flat, t, prestretch, layer.rest_area_m2);
}

}  // namespace

std::vector<HyperelasticLaw> strap_ground_laws(const Layout& layout, const SheetSettings& settings) {
  std::vector<HyperelasticLaw> laws;
  for (const Strap& strap : layout.straps)
    laws.emplace_back(NeoHookean{
        Pressure(settings.strap_ground_share * strap.stiffness.si() / (3.0 * strap.thickness.si()))});
  return laws;
}

std::vector<SheetElement> sheet_elements(const InflationSetup& setup, const SheetMesh& sheet,
                                         const std::vector<HyperelasticLaw>& strap_laws) {
  const Layout& layout = setup.layout;
  std::vector<SheetElement> elements(sheet.layer.size());
  for (std::size_t i = 0; i < elements.size(); ++i) {
    SheetElement& element = elements[i];
    const int t = sheet.flat_triangle[i];
    element.flat_shape = corner_gradients(setup.flat, t, 1.0, element.flat_area_m2);
    const SheetLayer kind = sheet.layer[i];
    if (kind == SheetLayer::kStrap) {
      const Strap& strap = layout.straps[setup.flat.regions[t].part];
      add_layer(element, setup.flat, t, strap_laws[setup.flat.regions[t].part], strap.thickness.si(), 1.0);
      element.cloth_along_n_per_m = strap.stiffness.si();
    }
    if (kind == SheetLayer::kFused || kind == SheetLayer::kSkin)
      add_layer(element, setup.flat, t, setup.skin_law, layout.skin_sheet.thickness.si(),
                layout.skin_sheet.prestretch);
    if (kind == SheetLayer::kFused || kind == SheetLayer::kOuter) {
      add_layer(element, setup.flat, t, setup.outer_law, layout.outer_sheet.thickness.si(),
                layout.outer_sheet.prestretch);
      element.cloth_along_n_per_m = layout.backing.along.si();
      element.cloth_across_n_per_m = layout.backing.across.si();
    }
    set_bending_stiffness(element);
  }
  return elements;
}

void tabulate_stiffness(std::vector<SheetElement>& elements) {
  std::map<const HyperelasticLaw*, std::shared_ptr<const StretchedStiffness>> tables;
  for (SheetElement& element : elements)
    for (int k = 0; k < element.layer_count; ++k) {
      auto& table = tables[element.layers[k].law];
      if (!table) table = std::make_shared<StretchedStiffness>(*element.layers[k].law);
      element.layers[k].stretched = table;
    }
}

}  // namespace wrapgauge
