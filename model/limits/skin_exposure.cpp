#include "model/limits/skin_exposure.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/beside_limit.hpp"
#include "model/core/both_at_once.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/flat_places.hpp"
#include "model/limits/limit_place.hpp"
#include "model/limits/pressed_part.hpp"

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

// The group whose inlet presses a flat vertex; none on seams and straps.
std::vector<std::optional<std::size_t>> group_of_vertices(const FlatMesh& flat) {
  std::vector<std::optional<std::size_t>> group(static_cast<std::size_t>(flat.vertices_m.rows()));
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    const auto presses = group_of(flat, flat.regions[t]);
    if (!presses) continue;
    for (int corner = 0; corner < 3; ++corner)
      group[static_cast<std::size_t>(flat.triangles(static_cast<Eigen::Index>(t), corner))] =
          index_of(*presses);
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

// Rows with the times that hold in this use, each made once.
class RowsInUse {
 public:
  RowsInUse(const LimitSet& limits, UsePattern use) : limits_(limits), use_(use) {}
  const LimitRow& of(const LimitRow& row) {
    const auto [known, is_new] = rows_.try_emplace(&row, row);
    if (is_new) known->second.times = times_that_hold(limits_, row, use_);
    return known->second;
  }

 private:
  const LimitSet& limits_;
  UsePattern use_;
  std::map<const LimitRow*, LimitRow> rows_;
};

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
    add_broken(broken, amid(part_under(setup, static_cast<int>(vertex))), out);
  if (out.share[vertex] <= out.worst_share) return;
  out.worst_share = out.share[vertex];
  out.worst = here;
  out.worst_row = row;
  out.worst_part = amid(part_under(setup, static_cast<int>(vertex)));
}

// "19.0 kPa·min (143 mmHg·min)", beside what is allowed.
Phrase product_figures(PressureTime product, PressureTime allowed) {
  const double kpa_min = product / kPa_min, allowed_kpa_min = allowed / kPa_min;
  return figures_of(number_beside(kpa_min, allowed_kpa_min, 1) + " kPa·min (" +
                    fixed_text(product / minute / mmHg, 0) + " mmHg·min)");
}

// Never later than it is: down to a second, from 2 min on to a tenth of a minute.
Phrase no_later_than(Time time) {
  const double unit_s = time >= 2.0 * minute ? 6.0 : 1.0;
  return figures_of(std::floor(time / second / unit_s + 1e-9) * unit_s * second);
}

Phrase session_action(const SkinExposure& exposure) {
  return Phrase::worded("Check the skin within %1; rest it at least %2 afterwards.",
                        {no_later_than(exposure.first_check), figures_of(exposure.rest_after)});
}

Finding product_finding(const LimitSet& limits, const SkinExposure& exposure) {
  const PressureTime product = exposure.worst.product, allowed = allowed_product(exposure.worst_row);
  Finding finding{exposure.worst_share > 1.0 ? Severity::kAboveLimit : Severity::kNote,
                  "exposure",
                  {},
                  exposure.worst_share,
                  limits.model_factor};
  finding.place = Phrase::worded("Session, under %1", {exposure.worst_part});
  finding.measured = Measured{Amount::kExposure, product.si() / limits.model_factor, product.si(),
                              allowed.si(), Phrase::worded("pressure times time in a session")};
  finding.cause = Cause::kTime;
  finding.source_key = "exposure";
  finding.at_m = exposure.worst_at_m;
  const Phrase check = session_action(exposure);
  finding.action = exposure.worst_share > 1.0
                       ? in_a_row({Phrase::worded("Shorten the session or lower the pressure."), check})
                       : check;
  finding.sentence = Phrase::worded(
      "Over the %1 session the most pressed place, under %2, takes %3 with the %4 factor: %5 of the %6 "
      "allowed "
      "(%7). %8",
      {figures_of(exposure.worst.session), exposure.worst_part, product_figures(product, allowed),
       figures_of(number_text(limits.model_factor, 3)), percent_beside(exposure.worst_share),
       figures_of(fixed_text(allowed / kPa_min, 1) + " kPa·min"), table_words(exposure.worst_row.status),
       finding.action});
  return finding;
}

Finding times_finding(const SkinExposure& exposure) {
  std::vector<Phrase> words;
  for (const BrokenTime& broken : exposure.broken) words.push_back(broken.words);
  Finding finding{Severity::kAboveLimit, "exposure", {}};
  finding.place = Phrase::worded("Session times");
  finding.cause = Cause::kTime;
  finding.source_key = "times";
  finding.action = Phrase::worded("Hold for a shorter time, rest longer or open the closure in between.");
  finding.sentence = Phrase::worded("The session breaks the time rules: %1. %2",
                                    {in_a_row(std::move(words), "; "), finding.action});
  return finding;
}

Finding no_rest_finding(const LimitSet& limits, const SkinExposure& exposure) {
  Finding finding{Severity::kWarn, "exposure", {}, 0.0, limits.model_factor};
  finding.place = Phrase::worded("Whole device, vented and fastened");
  finding.cause = Cause::kFastening;
  finding.source_key = "rest";
  finding.measured =
      Measured{Amount::kPressure, exposure.still_pressed.si() / limits.model_factor,
               exposure.still_pressed.si(), limits.rest.below.si(), Phrase::worded("of a rested place")};
  finding.action = Phrase::worded("Fasten it more loosely, or open the closure to rest.");
  finding.sentence = Phrase::worded(
      "Vented but fastened, the device still presses up to %1 with the %2 factor, more than the %3 of a "
      "rested "
      "place (%4): venting gives no rest there. %5",
      {figures_beside(exposure.still_pressed, limits.rest.below),
       figures_of(number_text(limits.model_factor, 3)), limit_figures(limits.rest.below),
       table_words(limits.rest.source), finding.action});
  return finding;
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
  RowsInUse in_use(limits, inputs.use);
  for (Eigen::Index v = 0; v < out.share.size(); ++v) {
    const auto i = static_cast<std::size_t>(v);
    if (!rows[i]) continue;
    const std::size_t group = groups[i].value_or(0);
    const Levels& own = groups[i] ? levels[group] : highest;
    const auto over_time =
        pressures_over_time(states, v, static_cast<Eigen::Index>(group), own, limits.model_factor);
    const double share_before = out.worst_share;
    take_place(setup, v, in_use.of(*rows[i]), limits.rest.below, over_time, out);
    if (out.worst_share > share_before)
      out.worst_at_m = path.states.back().positions_m.row(path.sheet.skin_node[i]);
  }
  return out;
}

std::vector<Finding> exposure_findings(const LimitSet& limits, const SkinExposure& exposure) {
  std::vector<Finding> out;
  if (exposure.worst_share > 0.0) out.push_back(product_finding(limits, exposure));
  if (!exposure.broken.empty()) out.push_back(times_finding(exposure));
  if (exposure.still_pressed > limits.rest.below) out.push_back(no_rest_finding(limits, exposure));
  return out;
}

}  // namespace wrapgauge
