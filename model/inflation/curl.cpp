#include "model/inflation/curl.hpp"

#include <Eigen/Geometry>
#include <cmath>

#include "model/inflation/cross_matrix.hpp"

namespace wrapgauge {
namespace {

// Area-weighted: two plates in series, each at its own rest curvature.
double hinge_curvature(const SheetElement& one, const SheetElement& two) {
  return (one.flat_area_m2 * natural_curvature_per_m(one) + two.flat_area_m2 * natural_curvature_per_m(two)) /
         (one.flat_area_m2 + two.flat_area_m2);
}

double moment_of(const FlatMesh& flat, const SheetMesh& sheet, const Hinge& hinge, double curvature_per_m) {
  std::array<Vec2, 4> p;
  double rest_value = 0.0;  // v.n on the curled rest shape, whose height is 1/2 kappa x^2
  for (int a = 0; a < 4; ++a) {
    p[a] = flat.vertices_m.row(sheet.flat_vertex[hinge.nodes[a]]).transpose();
    rest_value += hinge.weights(a) * 0.5 * curvature_per_m * p[a].x() * p[a].x();
  }
  const Vec2 edge = p[1] - p[0], to_2 = p[2] - p[0], to_3 = p[3] - p[0];
  const double twice_1 = edge.x() * to_2.y() - edge.y() * to_2.x();
  const double twice_2 = edge.x() * to_3.y() - edge.y() * to_3.x();
  // Flat to first order, v.n = -six volumes |e|^2 / (twice_1 |twice_2|).
  const double slope = edge.squaredNorm() / (twice_1 * std::abs(twice_2));
  return -hinge.stiffness * rest_value * slope;
}

}  // namespace

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

std::vector<Curl> curls(const FlatMesh& flat, const SheetMesh& sheet,
                        const std::vector<SheetElement>& elements, const std::vector<Hinge>& hinges) {
  std::vector<Curl> found;
  for (const Hinge& hinge : hinges) {
    const double curvature = hinge_curvature(elements[hinge.triangles[0]], elements[hinge.triangles[1]]);
    if (curvature != 0.0) found.push_back({hinge.nodes, moment_of(flat, sheet, hinge, curvature)});
  }
  return found;
}

double six_volumes(const std::array<Vec3, 4>& x) {
  return (x[1] - x[0]).dot((x[2] - x[0]).cross(x[3] - x[0]));
}

Vec3 six_volumes_gradient(const std::array<Vec3, 4>& x, int node) {
  const Vec3 a = x[1] - x[0], b = x[2] - x[0], c = x[3] - x[0];
  if (node == 1) return b.cross(c);
  if (node == 2) return c.cross(a);
  if (node == 3) return a.cross(b);
  return -(b.cross(c) + c.cross(a) + a.cross(b));
}

Mat3 six_volumes_hessian(const std::array<Vec3, 4>& x, int row_node, int column_node) {
  if (row_node == column_node) return Mat3::Zero();
  // The edge between the two other nodes, signed by the order of all four.
  int other[2], count = 0;
  for (int k = 0; k < 4; ++k)
    if (k != row_node && k != column_node) other[count++] = k;
  int inversions = 0;
  const int order[4] = {row_node, column_node, other[0], other[1]};
  for (int i = 0; i < 4; ++i)
    for (int j = i + 1; j < 4; ++j) inversions += order[i] > order[j];
  const double sign = inversions % 2 == 0 ? -1.0 : 1.0;
  return sign * cross_matrix(x[other[1]] - x[other[0]]);
}

}  // namespace wrapgauge
