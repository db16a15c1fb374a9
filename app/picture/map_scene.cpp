#include "app/picture/map_scene.hpp"

#include <algorithm>
#include <cmath>

#include "model/limits/limit_share.hpp"

namespace wrapgauge {
namespace {

Eigen::VectorXd limits_pa(const Estimate& estimate, const EquilibriumState& state,
                          const ContactFigures& figures) {
  return limit_on_layout_pa(estimate.limits, estimate.limit_inputs, estimate.setup, state,
                            estimate.path.sheet, figures);
}

}  // namespace

double round_top(double pressure_pa) {
  for (double step = 100.0; step < 1e8; step *= 10.0)
    for (const double factor : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0})
      if (factor * step >= pressure_pa) return factor * step;
  return pressure_pa;
}

MapScene map_scene(const Estimate& estimate) {
  MapScene scene;
  scene.model_factor = estimate.limits.model_factor;
  const Eigen::VectorXd limit_pa = limits_pa(estimate, estimate.path.states.back(), estimate.figures);
  scene.layout_threshold_pa = limit_pa / scene.model_factor;
  scene.share_of_limit =
      share_of_limit(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path.states.back(),
                     estimate.path.sheet, estimate.figures, estimate.map.mean_1cm2_pa);
  std::vector<double> distinct(limit_pa.begin(), limit_pa.end());
  std::sort(distinct.begin(), distinct.end());
  distinct.erase(std::unique(distinct.begin(), distinct.end()), distinct.end());
  double highest = 0.0;
  for (const double limit : distinct)
    if (limit > 0.0 && std::isfinite(limit)) scene.limits.push_back({limit / scene.model_factor, limit});
  if (!scene.limits.empty()) highest = 1.15 * scene.limits.front().pressure_pa;
  if (estimate.map.on_layout_pa.size() > 0) highest = std::max(highest, estimate.map.on_layout_pa.maxCoeff());
  scene.top_pa = round_top(std::max(highest, 100.0));
  return scene;
}

Eigen::VectorXd layout_threshold_pa(const Estimate& estimate, const EquilibriumState& state,
                                    const ContactFigures& figures) {
  return limits_pa(estimate, state, figures) / estimate.limits.model_factor;
}

std::optional<Pressure> threshold_at_peak(const Estimate& estimate, const Eigen::VectorXd& threshold_pa) {
  if (estimate.map.mean_1cm2_pa.size() == 0) return std::nullopt;
  Eigen::Index at = 0;
  estimate.map.mean_1cm2_pa.maxCoeff(&at);
  if (!std::isfinite(threshold_pa[at]) || threshold_pa[at] <= 0.0) return std::nullopt;
  return Pressure(threshold_pa[at]);
}

std::vector<LayoutEdge> layout_edges(const FlatMesh& flat) {
  struct Side {
    int low, high, region;
    auto operator<=>(const Side&) const = default;
  };
  std::vector<Side> sides;
  for (int t = 0; t < flat.triangles.rows(); ++t) {
    const FlatRegion& region = flat.regions[static_cast<std::size_t>(t)];
    const int code = static_cast<int>(region.kind) * 100000 + region.part;
    for (int k = 0; k < 3; ++k) {
      const auto [low, high] = std::minmax(flat.triangles(t, k), flat.triangles(t, (k + 1) % 3));
      sides.push_back({low, high, code});
    }
  }
  std::sort(sides.begin(), sides.end());
  std::vector<LayoutEdge> edges;
  for (std::size_t s = 0; s < sides.size(); ++s) {
    const bool paired =
        s + 1 < sides.size() && sides[s].low == sides[s + 1].low && sides[s].high == sides[s + 1].high;
    if (!paired)
      edges.push_back({sides[s].low, sides[s].high, true});
    else if (sides[s].region != sides[s + 1].region)
      edges.push_back({sides[s].low, sides[s].high, false});
    if (paired) ++s;
  }
  return edges;
}

}  // namespace wrapgauge
