#include "model/inflation/balance.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wrapgauge {
namespace {

auto force_at(const Evaluation& now, Eigen::Index node) {
  return now.gradient_n.segment<3>(3 * node);
}

double highest_pressure_pa(const Evaluation& now, const std::vector<CavityLoad>& loads) {
  double highest = 0.0;
  for (std::size_t g = 0; g < loads.size(); ++g)
    highest =
        std::max(highest, std::abs(loads[g].pressure_at(now.group_volume_m3(static_cast<Eigen::Index>(g)))));
  return highest;
}

}  // namespace

double largest_residual_n(const Evaluation& now) {
  double residual = 0.0;
  for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node)
    residual = std::max(residual, force_at(now, node).norm());
  return residual;
}

double out_of_balance(const EquilibriumSystem& system, const Evaluation& now,
                      const std::vector<CavityLoad>& loads) {
  if (!std::isfinite(now.energy_j)) return std::numeric_limits<double>::infinity();
  const double scale = std::max(system.settings().balance.pressure_floor_pa, highest_pressure_pa(now, loads));
  double worst = 0.0;
  for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node)
    worst = std::max(worst, force_at(now, node).norm() / (scale * system.node_area_m2()(node)));
  return worst;
}

double sum_out_of_balance(const EquilibriumSystem& system, const Evaluation& now,
                          const Points3& positions_m) {
  const TissueContact& tissue = system.tissue();
  if (tissue.nodes().empty()) return 0.0;
  double touch = 0.0;
  for (const ContactNode& contact : tissue.nodes())
    touch += tissue.force_on_sheet(contact, positions_m.row(contact.node).transpose()).norm();
  Vec3 sum = Vec3::Zero();
  for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node) sum += force_at(now, node);
  const BalanceSettings& balance = system.settings().balance;
  return sum.norm() /
         std::max(touch, balance.hardly_touches * balance.pressure_floor_pa * system.node_area_m2().sum());
}

}  // namespace wrapgauge
