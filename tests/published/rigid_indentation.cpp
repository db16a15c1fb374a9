#include "tests/published/rigid_indentation.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <vector>

#include "model/core/number_text.hpp"
#include "model/inflation/anderson_iteration.hpp"

namespace wrapgauge {
namespace {

constexpr int kMixed = 20;  // guesses that are combined

// Depth at which springs of stiffness s under surfaces at height h carry the load: sum s <depth - h> = load.
double depth_carrying(const Eigen::VectorXd& stiffness, const Eigen::VectorXd& height, double load_n) {
  std::vector<Eigen::Index> order(static_cast<std::size_t>(height.size()));
  std::iota(order.begin(), order.end(), 0);
  std::sort(order.begin(), order.end(),
            [&](Eigen::Index a, Eigen::Index b) { return height(a) < height(b); });
  double stiffness_sum = 0.0, moment = 0.0;
  for (std::size_t k = 0; k < order.size(); ++k) {
    stiffness_sum += stiffness(order[k]);
    moment += stiffness(order[k]) * height(order[k]);
    const double depth = (load_n + moment) / stiffness_sum;
    if (k + 1 == order.size() || depth <= height(order[k + 1])) return depth;
  }
  return 0.0;
}

std::optional<Problem> indentation_problem(const TissueLayer& layer, const SkinPlaces& places,
                                           const Eigen::VectorXd& rise_m, double load_n) {
  const Eigen::Index count = places.points_m.rows();
  if (count == 0 || places.area_m2.size() != count || places.normals.rows() != count ||
      rise_m.size() != count || layer.depth_m.size() != count)
    return bad_input("An indentation needs a normal, an area, a depth and a height at each of its " +
                     std::to_string(count) + " places: give one for each, and at least one place.");
  if (!(load_n > 0.0))
    return bad_input("An indenter is pressed by " + number_text(load_n) + " N: give more than 0.");
  return tissue_layer_problem(layer);
}

// Springs as soft as the layer's softest wave, or as a half-space under the whole patch if that is stiffer.
Eigen::VectorXd spring_stiffness(const CoupledLayer& layer, const SkinPlaces& places) {
  const double patch = std::sqrt(places.area_m2.sum());
  const double contact_modulus = layer.layer().young_pa / (1.0 - std::pow(layer.layer().poisson, 2));
  Eigen::VectorXd stiffness(places.area_m2.size());
  for (Eigen::Index i = 0; i < stiffness.size(); ++i)
    stiffness(i) = places.area_m2(i) * std::max(layer.spring_pa_per_m(i), contact_modulus / patch);
  return stiffness;
}

}  // namespace

Result<RigidIndentation> press_rigid(const TissueLayer& tissue, const SkinPlaces& places,
                                     const Eigen::VectorXd& rise_m, double load_n,
                                     const IndentationOptions& options) {
  if (auto problem = indentation_problem(tissue, places, rise_m, load_n)) return *problem;
  const CoupledLayer layer(tissue);
  const Eigen::VectorXd stiffness = spring_stiffness(layer, places);
  AndersonIteration mixing(kMixed);
  Eigen::VectorXd held = Eigen::VectorXd::Zero(rise_m.size());
  RigidIndentation found;
  for (found.passes = 1; found.passes <= options.max_passes; ++found.passes) {
    const Eigen::VectorXd height = rise_m + held;
    found.depth_m = depth_carrying(stiffness, height, load_n);
    const Eigen::VectorXd compression = (found.depth_m - height.array()).max(0.0);
    found.force_n = stiffness.cwiseProduct(compression);
    found.lowering_m = layer.lowering_m(places, found.force_n);
    const Eigen::VectorXd image = found.lowering_m - compression;
    if ((image - held).lpNorm<Eigen::Infinity>() <= options.fit * found.depth_m) return found;
    held = mixing.next(held, image);
  }
  return Problem{ProblemKind::kNotConverged,
                 "Indenter and tissue did not fit together within " + number_text(100.0 * options.fit) +
                     " % of the depth in " + std::to_string(options.max_passes) +
                     " passes: take fewer places or a wider fit.",
                 {}};
}

}  // namespace wrapgauge
