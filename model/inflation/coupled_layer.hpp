#pragma once
// Tissue as a layer on bone whose surface sinks round a pressed place too: each contact node's lowering is a
// sum over the forces on all of them.
//
// u_i = sum_j G_ij f_j, with G the layer's response to a point force (layer_compliance) at the distance
// between the two places measured along the skin, and for the node itself the response to a uniform pressure
// over its own area, spread over a disc, as each other node's force is over its own. On a curved limb the
// flat layer's response is used along the surface: exact for a uniform squeeze only. Where depth or stiffness
// varies, the geometric mean of the two is taken (judgement). Sums run over the forces within reach only
// (LayerCompliance::kReach depths), in the order of the places.
//
// The solver keeps one spring a node, f = spring x area x compression, and is handed the rest of the
// lowering, w = G f - f / (spring x area), from outside (coupled_equilibrium). The spring is that of the
// softest pressure wave, so that w settles.

#include <memory>
#include <optional>

#include "model/core/array.hpp"
#include "model/core/result.hpp"
#include "model/inflation/layer_compliance.hpp"

namespace wrapgauge {

struct TissueLayer {
  double young_pa = 0.0;
  double poisson = 0.0;     // 0 .. 0.5
  Eigen::VectorXd depth_m;  // skin to bone, one a place
  // On the modulus, one a place; empty: 1 everywhere. Between two places the geometric mean is taken
  // (judgement).
  Eigen::VectorXd stiffness_factor = {};
};

// None when the layer can be pressed: E > 0, nu in [0, 0.5], every depth above 0.
std::optional<Problem> tissue_layer_problem(const TissueLayer& layer);

// Where forces act: a row each.
struct SkinPlaces {
  Points3 points_m;
  Points3 normals;  // unit, outward
  Eigen::VectorXd area_m2;
};

class CoupledLayer {
 public:
  explicit CoupledLayer(TissueLayer layer);

  const TissueLayer& layer() const { return layer_; }
  // Pressure a unit of compression of node i's own spring, Pa/m.
  double spring_pa_per_m(Eigen::Index i) const;
  // G f, m; positive towards bone. The same for any number of threads.
  Eigen::VectorXd lowering_m(const SkinPlaces& places, const Eigen::VectorXd& force_n) const;

 private:
  double stiffness_factor(Eigen::Index i) const;
  double own_m_per_n(double area_m2, double depth_m) const;
  double at_distance_m_per_n(double distance_m, double area_m2, double depth_m) const;

  double between_m_per_n(const SkinPlaces& places, Eigen::Index i, Eigen::Index j) const;

  TissueLayer layer_;
  double contact_modulus_pa_;  // E*
  std::shared_ptr<const LayerCompliance> compliance_;
};

// Along the surface between two points with their normals; exact on a plane, a cylinder and a sphere.
double surface_distance_m(const Vec3& a_m, const Vec3& normal_a, const Vec3& b_m, const Vec3& normal_b);

}  // namespace wrapgauge
