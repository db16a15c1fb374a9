#include "model/limits/relief.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/rounded_down.hpp"
#include "model/layout/flat_places.hpp"

namespace wrapgauge {
namespace {

constexpr double kNear = 1.25;  // of the plan's inflation: so far what was solved is carried on (judgement)

// Shares of the limit at the recorded states of a path, each with how far the inlets stand there.
class PathShares {
 public:
  PathShares(const LimitSet& limits, const InflationSetup& setup, const LoadPath& path, const ContactMap& map,
             Eigen::VectorXd limit_pa)
      : limits_(limits), setup_(setup), path_(path), map_(map), limit_pa_(std::move(limit_pa)) {}

  std::size_t last() const { return path_.states.size() - 1; }

  Eigen::VectorXd at(std::size_t state) const {
    if (state == last()) return share(map_.mean_1cm2_pa);
    const TriangleMesh side = skin_side(setup_, path_.sheet, path_.states[state].positions_m);
    return share(disc_average_pa(side, path_.states[state].contact_pressure_pa));
  }

  // Mean of the inlets' gauge pressures over those of the last state; 1 there.
  double level(std::size_t state) const {
    const Eigen::VectorXd& now = path_.states[state].group_pressure_pa;
    const Eigen::VectorXd& full = path_.states.back().group_pressure_pa;
    double sum = 0.0;
    int inflated = 0;
    for (Eigen::Index g = 0; g < full.size(); ++g)
      if (full[g] > 0.0) sum += std::clamp(now[g] / full[g], 0.0, 1.0), ++inflated;
    return inflated > 0 ? sum / inflated : 1.0;
  }

 private:
  Eigen::VectorXd share(const Eigen::VectorXd& mean_pa) const {
    return (mean_pa.array() * limits_.model_factor / limit_pa_.array()).matrix();
  }

  const LimitSet& limits_;
  const InflationSetup& setup_;
  const LoadPath& path_;
  const ContactMap& map_;
  Eigen::VectorXd limit_pa_;
};

double level_beyond(const PathShares& shares, const Eigen::VectorXd& last, double allowed) {
  Eigen::VectorXd slope = last;
  if (shares.last() > 0) {
    const double step = 1.0 - shares.level(shares.last() - 1);
    if (step > 1e-6) slope = slope.cwiseMax((last - shares.at(shares.last() - 1)) / step);
  }
  double level = std::numeric_limits<double>::infinity();
  for (Eigen::Index v = 0; v < last.size(); ++v)
    if (slope[v] > 0.0) level = std::min(level, 1.0 + (allowed - last[v]) / slope[v]);
  return level;
}

// Straight between recorded states.
double level_between(const PathShares& shares, Eigen::VectorXd high, double allowed) {
  for (std::size_t s = shares.last(); s > 0; --s) {
    const Eigen::VectorXd low = shares.at(s - 1);
    if (low.maxCoeff() <= allowed) {
      double share = 1.0;
      for (Eigen::Index v = 0; v < low.size(); ++v)
        if (high[v] > allowed) share = std::min(share, (allowed - low[v]) / (high[v] - low[v]));
      return shares.level(s - 1) + share * (shares.level(s) - shares.level(s - 1));
    }
    high = low;
  }
  return 0.0;
}

// Of the plan's inflation: where some place takes the allowed share of its limit.
double allowed_level(const PathShares& shares, double allowed) {
  const Eigen::VectorXd last = shares.at(shares.last());
  return last.maxCoeff() <= allowed ? level_beyond(shares, last, allowed)
                                    : level_between(shares, last, allowed);
}

// Under the chambers and channels that a group feeds.
Pressure strictest_limit(const InflationSetup& setup, std::size_t group, const Eigen::VectorXd& limit_pa) {
  const FlatMesh& flat = setup.flat;
  double strictest = std::numeric_limits<double>::infinity();
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    const auto feeds = group_of(flat, flat.regions[t]);
    if (!feeds || index_of(*feeds) != group) continue;
    for (int corner = 0; corner < 3; ++corner)
      strictest = std::min(strictest, limit_pa[flat.triangles(static_cast<Eigen::Index>(t), corner)]);
  }
  return Pressure(strictest);
}

}  // namespace

std::vector<InletRelief> relief_settings(const LimitSet& limits, const LimitInputs& inputs,
                                         const InflationSetup& setup, const LoadPath& path,
                                         const ContactMap& map, const ContactFigures& figures) {
  std::vector<InletRelief> out;
  if (path.states.empty() || map.mean_1cm2_pa.size() == 0) return out;
  const EquilibriumState& last = path.states.back();
  const Eigen::VectorXd limit_pa = limit_on_layout_pa(limits, inputs, setup, last, path.sheet, figures);
  if (!std::isfinite(limit_pa.minCoeff())) return out;
  const double level =
      allowed_level(PathShares(limits, setup, path, map, limit_pa), limits.relief.times_limit);
  if (level <= 0.0) return out;
  const bool cuff = figures.share_of_girth >= limits.circumferential_share;
  const Pressure cap = cuff ? limits.relief.cuff : limits.relief.pad;
  for (std::size_t g = 0; g < setup.flat.group_inlet.size(); ++g) {
    const Pressure gauge(last.group_pressure_pa[static_cast<Eigen::Index>(g)]);
    const std::size_t inlet = index_of(setup.flat.group_inlet[g]);
    if (!(gauge > Pressure()) || inlet >= setup.layout.inlets.size()) continue;
    const Pressure own = limits.relief.times_limit * strictest_limit(setup, g, limit_pa);
    const Pressure far = std::max(own, kNear * gauge);
    out.push_back({setup.layout.inlets[inlet].name, setting_of(std::min({gauge * level, far, cap}))});
  }
  return out;
}

std::string relief_text(const std::vector<InletRelief>& relief) {
  return english(relief_words(relief));
}

Phrase relief_words(const std::vector<InletRelief>& relief) {
  std::vector<Phrase> words;
  for (const InletRelief& inlet : relief)
    words.push_back(
        Phrase::worded("%1 for inlet '%2'", {figures_of(setting_text(inlet.highest)), name_of(inlet.inlet)}));
  return in_a_row(std::move(words), ", ");
}

std::optional<Pressure> lowest_relief(const std::vector<InletRelief>& relief) {
  if (relief.empty()) return std::nullopt;
  return std::min_element(relief.begin(), relief.end(),
                          [](const InletRelief& a, const InletRelief& b) { return a.highest < b.highest; })
      ->highest;
}

}  // namespace wrapgauge
