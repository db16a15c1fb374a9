#include "model/limits/skin_exposure.hpp"

#include <algorithm>
#include <numeric>
#include <set>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/both_at_once.hpp"
#include "model/core/number_text.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

using Levels = std::vector<LevelPoint>;

// Means over 1 cm2 and how far each group is filled, for every recorded state.
struct Recorded {
  std::vector<Eigen::VectorXd> mean_1cm2_pa;
  std::vector<Eigen::VectorXd> filled;  // share of the last state's pressure or volume, a group each
};

Eigen::VectorXd filled_share(const EquilibriumState& state, const EquilibriumState& last,
                             const std::vector<InflationTarget>& targets) {
  Eigen::VectorXd share = Eigen::VectorXd::Ones(static_cast<Eigen::Index>(targets.size()));
  for (std::size_t g = 0; g < targets.size(); ++g) {
    const auto i = static_cast<Eigen::Index>(g);
    const bool by_volume = std::holds_alternative<Volume>(targets[g]);
    const double now = by_volume ? state.group_volume_m3[i] : state.group_pressure_pa[i];
    const double full = by_volume ? last.group_volume_m3[i] : last.group_pressure_pa[i];
    if (full > 0.0) share[i] = now / full;
  }
  return share;
}

Recorded recorded(const InflationSetup& setup, const LoadPath& path,
                  const std::vector<InflationTarget>& targets, const Eigen::VectorXd& last_mean_1cm2_pa) {
  Recorded out;
  out.mean_1cm2_pa.resize(path.states.size());
  out.mean_1cm2_pa.back() = last_mean_1cm2_pa;
  const auto average = [&](std::size_t first) {
    for (std::size_t s = first; s + 1 < path.states.size(); s += 2) {
      const TriangleMesh side = skin_side(setup, path.sheet, path.states[s].positions_m);
      out.mean_1cm2_pa[s] = disc_average_pa(side, path.states[s].contact_pressure_pa);
    }
  };
  both_at_once([&] { average(0); }, [&] { average(1); });
  for (const EquilibriumState& state : path.states)
    out.filled.push_back(filled_share(state, path.states.back(), targets));
  return out;
}

// The group whose inlet presses a flat vertex; none on welds and straps.
std::vector<std::optional<std::size_t>> group_of_vertices(const FlatMesh& flat) {
  std::vector<std::optional<std::size_t>> group(static_cast<std::size_t>(flat.vertices_m.rows()));
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    const FlatRegion& region = flat.regions[t];
    const auto& groups = region.kind == RegionKind::kChamber ? flat.chamber_group : flat.channel_group;
    const bool open = region.kind == RegionKind::kChamber || region.kind == RegionKind::kChannel;
    if (!open || static_cast<std::size_t>(region.part) >= groups.size()) continue;
    for (int corner = 0; corner < 3; ++corner)
      group[static_cast<std::size_t>(flat.triangles(static_cast<Eigen::Index>(t), corner))] =
          index_of(groups[static_cast<std::size_t>(region.part)]);
  }
  return group;
}

// The highest of all at every time one of them bends.
Levels highest_level(const std::vector<Levels>& all) {
  if (all.size() == 1) return all.front();
  std::set<double> times;
  for (const Levels& levels : all)
    for (const LevelPoint& point : levels) times.insert(point.at.si());
  Levels out;
  for (const double at : times) {
    double before = 0.0, after = 0.0;  // a jump gives two points
    for (const Levels& levels : all) {
      before = std::max(before, level_at(levels, Time(at - 1e-9)));
      after = std::max(after, level_at(levels, Time(at)));
    }
    if (at > 0.0) out.push_back({Time(at), before});
    out.push_back({Time(at), after});
  }
  return out;
}

// Pressure over 1 cm2 at a vertex when `group` stands at a level, between the recorded states.
double pressure_pa(const Recorded& recorded, Eigen::Index vertex, Eigen::Index group, double level) {
  const std::size_t last = recorded.filled.size() - 1;
  if (level <= recorded.filled[0][group]) return recorded.mean_1cm2_pa[0][vertex];
  for (std::size_t s = 1; s <= last; ++s) {
    const double low = recorded.filled[s - 1][group], high = recorded.filled[s][group];
    if (level > high || high <= low) continue;
    const double share = (level - low) / (high - low);
    return (1.0 - share) * recorded.mean_1cm2_pa[s - 1][vertex] + share * recorded.mean_1cm2_pa[s][vertex];
  }
  return recorded.mean_1cm2_pa[last][vertex];
}

// Group 0 stands for places that no inlet presses: they follow the highest level.
std::vector<PressurePoint> pressures_over_time(const Recorded& recorded, Eigen::Index vertex,
                                               Eigen::Index group, const Levels& levels, double factor) {
  std::vector<PressurePoint> points;
  points.reserve(levels.size());
  for (const LevelPoint& level : levels)
    points.push_back({level.at, Pressure(factor * pressure_pa(recorded, vertex, group, level.level))});
  return points;
}

Phrase part_of(const InflationSetup& setup, int vertex) {
  const FlatMesh& flat = setup.flat;
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    if ((flat.triangles.row(static_cast<Eigen::Index>(t)).array() != vertex).all()) continue;
    const FlatRegion& region = flat.regions[t];
    const auto part = static_cast<std::size_t>(region.part);
    if (region.kind == RegionKind::kChamber && part < setup.layout.chambers.size())
      return Phrase::worded("chamber '%1'", {name_of(setup.layout.chambers[part].name)});
    if (region.kind == RegionKind::kChannel && part < setup.layout.channels.size())
      return Phrase::worded("channel '%1'", {name_of(setup.layout.channels[part].name)});
  }
  return Phrase::worded("a weld or strap");
}

// Each rule once, where it is broken worst.
void add_broken(const std::vector<BrokenTime>& here, const Phrase& part, SkinExposure& out) {
  for (BrokenTime broken : here) {
    broken.words = Phrase::worded("%1 (under %2)", {broken.words, part});
    const auto known = std::find_if(out.broken.begin(), out.broken.end(),
                                    [&](const BrokenTime& other) { return other.rule == broken.rule; });
    if (known == out.broken.end())
      out.broken.push_back(broken);
    else if (broken.times_over > known->times_over)
      *known = broken;
  }
}

// One pressed place into the whole.
void take_place(const InflationSetup& setup, Eigen::Index vertex, const LimitRow& row, Pressure rest_below,
                const std::vector<PressurePoint>& over_time, SkinExposure& out) {
  const Exposure here = exposure(over_time, rest_below);
  if (here.highest <= Pressure()) return;
  const PressureTime allowed = allowed_product(row);
  out.product_pa_s[vertex] = here.product.si();
  out.share[vertex] = here.product / allowed;
  out.first_check = std::min(out.first_check, row.times.first_check);
  if (const auto half = time_of_product(over_time, 0.5 * allowed))
    out.first_check = std::min(out.first_check, *half);
  if (const auto broken = broken_times(here, row.times); !broken.empty())
    add_broken(broken, part_of(setup, static_cast<int>(vertex)), out);
  if (out.share[vertex] <= out.worst_share) return;
  out.worst_share = out.share[vertex];
  out.worst = here;
  out.worst_row = row;
  out.worst_part = part_of(setup, static_cast<int>(vertex));
}

// A minute at this pressure comes to as much.
Phrase held_for_a_minute(PressureTime product) {
  return figures_of(product / minute);
}

Finding product_finding(const LimitSet& limits, const SkinExposure& exposure) {
  return {exposure.worst_share > 1.0 ? Severity::kAboveLimit : Severity::kNote, "exposure",
          Phrase::worded(
              "Over the session of %1 the most pressed place, under %2, takes as much pressure times time "
              "as %3 held for one minute, after the model factor: %4 of what limit and longest time on "
              "come to (%5 held for one minute; %6); pressure times time is bookkeeping and no proof. "
              "Look at the skin after %7 and rest it for %8 or more after the session.",
              {figures_of(exposure.worst.session), exposure.worst_part,
               held_for_a_minute(exposure.worst.product), percent_of(exposure.worst_share),
               held_for_a_minute(allowed_product(exposure.worst_row)), table_words(exposure.worst_row.status),
               figures_of(exposure.first_check), figures_of(exposure.rest_after)}),
          exposure.worst_share, limits.model_factor};
}

}  // namespace

std::optional<SkinExposure> skin_exposure(const LimitSet& limits, const LimitInputs& inputs,
                                          const InflationSetup& setup, const LoadPath& path,
                                          const ContactMap& map, const ContactFigures& figures) {
  if (!inputs.session || path.states.empty() || inputs.programme.empty() || is_test_object(inputs))
    return std::nullopt;
  std::vector<Levels> levels;
  for (const auto& steps : inputs.programme)
    levels.push_back(level_over_session(steps, inputs.session->length));
  const Levels highest = highest_level(levels);
  const Recorded states = recorded(setup, path, inputs.targets, map.mean_1cm2_pa);
  const auto rows = rows_on_layout(limits, inputs, setup, path.states.back(), path.sheet, figures);
  const auto groups = group_of_vertices(setup.flat);

  SkinExposure out;
  out.product_pa_s = out.share = Eigen::VectorXd::Zero(setup.flat.vertices_m.rows());
  out.still_pressed = Pressure(limits.model_factor * states.mean_1cm2_pa.front().maxCoeff());
  out.rest_after = limits.rest.after_session;
  out.first_check = inputs.session->length;
  for (Eigen::Index v = 0; v < out.share.size(); ++v) {
    const auto i = static_cast<std::size_t>(v);
    if (!rows[i]) continue;
    const std::size_t group = groups[i].value_or(0);
    const Levels& own = groups[i] ? levels[group] : highest;
    const auto over_time =
        pressures_over_time(states, v, static_cast<Eigen::Index>(group), own, limits.model_factor);
    take_place(setup, v, *rows[i], limits.rest.below, over_time, out);
  }
  return out;
}

std::vector<Finding> exposure_findings(const LimitSet& limits, const SkinExposure& exposure) {
  std::vector<Finding> out;
  if (exposure.worst_share > 0.0) out.push_back(product_finding(limits, exposure));
  if (!exposure.broken.empty()) {
    std::vector<Phrase> words;
    for (const BrokenTime& broken : exposure.broken) words.push_back(broken.words);
    out.push_back({Severity::kAboveLimit, "exposure",
                   Phrase::worded("The session does not keep the times of the limits: %1. Hold for a shorter "
                                  "time, rest longer or open the closure in between.",
                                  {in_a_row(std::move(words), "; ")}),
                   0.0});
  }
  if (exposure.still_pressed > limits.rest.below)
    out.push_back(
        {Severity::kWarn, "exposure",
         Phrase::worded("With every inlet vented the closed device still presses up to %1 after the model "
                        "factor, more than the %2 of a rested place (%3): venting alone is no rest there. "
                        "Close it more loosely or open it in between.",
                        {figures_of(exposure.still_pressed), figures_of(limits.rest.below),
                         table_words(limits.rest.source)}),
         0.0, limits.model_factor});
  return out;
}

}  // namespace wrapgauge
