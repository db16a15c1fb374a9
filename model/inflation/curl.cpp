#include "model/inflation/curl.hpp"

#include <cmath>

namespace wrapgauge {
double natural_curvature_per_m(const SheetElement& element) {
  if (element.layer_count < 2) return 0.0;
  double young[2], height[2], sum = 0.0, moment = 0.0, stiffness = 0.0;
  double below = 0.0;
  for (int k = 0; k < 2; ++k) {
    const SheetLayerRest& layer = element.layers[k];
    young[k] = 3.0 * initial_shear_modulus(*layer.law).si();
    height[k] = below + 0.5 * layer.thickness_m;
    below += layer.thickness_m;
    sum += young[k] * layer.thickness_m * height[k];
    stiffness += young[k] * layer.thickness_m;
  }
  const double neutral = sum / stiffness;
  stiffness = 0.0;
  for (int k = 0; k < 2; ++k) {
    const SheetLayerRest& layer = element.layers[k];
    const double z = height[k] - neutral, t = layer.thickness_m;
    const double free_strain = -std::log(element.flat_area_m2 / layer.rest_area_m2);
    moment += young[k] * t * z * free_strain;
    stiffness += young[k] * (t * t * t / 12.0 + t * z * z);
  }
  // Positive bending stretches the far side, so the height bends down.
  return -moment / stiffness;
}

double shared_curvature_per_m(const SheetElement& one, const SheetElement& two) {
  return (one.flat_area_m2 * natural_curvature_per_m(one) + two.flat_area_m2 * natural_curvature_per_m(two)) /
         (one.flat_area_m2 + two.flat_area_m2);
}

}  // namespace wrapgauge
