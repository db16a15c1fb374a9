#include "model/study/aim.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "model/study/aim_solver.hpp"
#include "model/study/separate_chambers.hpp"
#include "model/study/staged_progress.hpp"

namespace wrapgauge {
namespace {

using Wanted = std::vector<std::optional<Pressure>>;  // a chamber each

constexpr double kApart_m = 0.010;       // nearer than this along the limb, two chambers lie side by side
constexpr Pressure kAlike = 150.0 * Pa;  // pressures this near may come from one inlet

Result<Wanted> wanted_of(const Layout& layout, const std::vector<AimTarget>& targets) {
  Wanted wanted(layout.chambers.size());
  if (targets.empty())
    return bad_input(Phrase::worded("no target is given: name at least one chamber and its mean pressure."));
  for (const AimTarget& target : targets) {
    const auto found = std::find_if(layout.chambers.begin(), layout.chambers.end(),
                                    [&](const Chamber& chamber) { return chamber.name == target.chamber; });
    if (found == layout.chambers.end()) {
      std::string known;
      for (const Chamber& chamber : layout.chambers)
        known += (known.empty() ? "'" : ", '") + chamber.name + "'";
      return bad_input(
          Phrase::worded("the target names the chamber '%1', which the layout does not have; it has %2.",
                         {name_of(target.chamber), name_of(known)}));
    }
    auto& place = wanted[static_cast<std::size_t>(found - layout.chambers.begin())];
    if (place)
      return bad_input(
          Phrase::worded("the target names the chamber '%1' twice; keep one.", {name_of(target.chamber)}));
    if (!(target.mean > Pressure()) || target.mean > 100.0 * kPa)
      return bad_input(Phrase::worded(
          "the target of chamber '%1' is %2; give a mean contact pressure above 0 and up to 100 "
          "kPa.",
          {name_of(target.chamber), figures_of(target.mean)}));
    place = target.mean;
  }
  return wanted;
}

double centre_y_m(const Chamber& chamber) {
  const Bounds2 box = bounds(chamber.boundary_m);
  return 0.5 * (box.low.y() + box.high.y());
}

// Two chambers, the first nearer hand or foot, between which the pressure rises by more than `share`.
template <class PressureOf>
std::optional<Phrase> rise_in(const Layout& layout, double share, const PressureOf& pressure_of) {
  for (std::size_t d = 0; d < layout.chambers.size(); ++d)
    for (std::size_t p = 0; p < layout.chambers.size(); ++p) {
      const std::optional<Pressure> distal = pressure_of(d), proximal = pressure_of(p);
      if (!distal || !proximal || !(*proximal > *distal * share)) continue;
      if (centre_y_m(layout.chambers[p]) - centre_y_m(layout.chambers[d]) < kApart_m) continue;
      return Phrase::worded("from %1 under chamber '%2' to %3 under chamber '%4', nearer the trunk",
                            {figures_of(*distal), name_of(layout.chambers[d].name), figures_of(*proximal),
                             name_of(layout.chambers[p].name)});
    }
  return std::nullopt;
}

AimUnknowns unknowns_of(const StudyCase& study, const Wanted& wanted) {
  AimUnknowns unknowns;
  unknowns.variable_of_group.resize(study.groups());
  const auto& group = study.setup().flat.chamber_group;
  for (std::size_t c = 0; c < wanted.size(); ++c)
    if (auto& variable = unknowns.variable_of_group[index_of(group[c])]; wanted[c] && !variable)
      variable = unknowns.count++;
  return unknowns;
}

AimOutcome outcome_of(const StudyCase& study, const AimUnknowns& unknowns, const Wanted& wanted,
                      const AimSolution& solution) {
  AimOutcome outcome;
  outcome.reached = solution.reached;
  outcome.solves = solution.solves;
  outcome.judgement = solution.reading.judgement;
  outcome.nearest = solution.reading.nearest;
  std::vector<std::optional<std::size_t>> inlet_of_variable(static_cast<std::size_t>(unknowns.count));
  std::vector<std::size_t> inlet_of_group(study.groups());
  for (std::size_t g = 0; g < study.groups(); ++g) {
    const auto variable = unknowns.variable_of_group[g];
    auto* shared = variable ? &inlet_of_variable[static_cast<std::size_t>(*variable)] : nullptr;
    if (shared && *shared) {
      inlet_of_group[g] = **shared;
      outcome.inlets[**shared].volume = outcome.inlets[**shared].volume + solution.reading.volume[g];
      continue;
    }
    inlet_of_group[g] = outcome.inlets.size();
    if (shared) *shared = outcome.inlets.size();
    outcome.inlets.push_back({study.inlet_of(g), {}, solution.reading.gauge[g], solution.reading.volume[g]});
  }
  for (std::size_t c = 0; c < wanted.size(); ++c) {
    const ChamberFigures& figures = solution.reading.figures.chambers[c];
    outcome.chambers.push_back({figures.chamber, wanted[c], figures.mean, figures.peak});
    const std::size_t group = index_of(study.setup().flat.chamber_group[c]);
    outcome.inlets[inlet_of_group[group]].chambers.push_back(figures.chamber);
  }
  return outcome;
}

// Groups that feed more than one wanted chamber.
std::vector<GroupId> shared_groups(const StudyCase& study, const Wanted& wanted) {
  std::vector<GroupId> shared;
  for (std::size_t g = 0; g < study.groups(); ++g) {
    int fed = 0;
    for (std::size_t c = 0; c < wanted.size(); ++c)
      fed += wanted[c] && index_of(study.setup().flat.chamber_group[c]) == g;
    if (fed > 1) shared.push_back(static_cast<GroupId>(g));
  }
  return shared;
}

// Chambers nobody wants anything of go with the first wanted one they shared an inlet with.
void tie_unwanted(const StudyCase& apart, const std::vector<GroupId>& drawn_group, const Wanted& wanted,
                  AimUnknowns& unknowns) {
  const auto& group = apart.setup().flat.chamber_group;
  for (std::size_t c = 0; c < wanted.size(); ++c) {
    auto& variable = unknowns.variable_of_group[index_of(group[c])];
    for (std::size_t w = 0; w < wanted.size() && !variable; ++w)
      if (wanted[w] && drawn_group[w] == drawn_group[c])
        variable = unknowns.variable_of_group[index_of(group[w])];
  }
}

// Variables of one drawn group whose pressures lie near one another become one.
AimUnknowns merged(const StudyCase& apart, const std::vector<GroupId>& drawn_group,
                   const AimUnknowns& unknowns, const Eigen::VectorXd& pressure_pa) {
  const auto& group = apart.setup().flat.chamber_group;
  std::vector<std::pair<std::pair<std::size_t, double>, int>> order;  // drawn group, pressure, variable
  std::set<int> seen;
  for (std::size_t c = 0; c < group.size(); ++c)
    if (const auto variable = unknowns.variable_of_group[index_of(group[c])];
        variable && seen.insert(*variable).second)
      order.push_back({{index_of(drawn_group[c]), pressure_pa[*variable]}, *variable});
  std::sort(order.begin(), order.end());
  std::vector<int> renamed(static_cast<std::size_t>(unknowns.count));
  AimUnknowns fewer = unknowns;
  fewer.count = 0;
  for (std::size_t i = 0, first = 0; i < order.size(); ++i) {
    const bool joins = i > 0 && order[i].first.first == order[first].first.first &&
                       order[i].first.second - order[first].first.second <= kAlike.si();
    if (!joins) first = i, ++fewer.count;
    renamed[static_cast<std::size_t>(order[i].second)] = fewer.count - 1;
  }
  for (auto& variable : fewer.variable_of_group)
    if (variable) variable = renamed[static_cast<std::size_t>(*variable)];
  return fewer;
}

Result<AimOutcome> aim_apart(const StudyCase& drawn, const StudyCase& apart, const Wanted& wanted,
                             Progress& progress) {
  const std::vector<GroupId>& drawn_group = drawn.setup().flat.chamber_group;
  AimUnknowns unknowns = unknowns_of(apart, wanted);
  tie_unwanted(apart, drawn_group, wanted, unknowns);
  const auto each = solve_aim(apart, unknowns, wanted, progress);
  if (!each) return each.problem();
  const AimOutcome one_a_chamber = outcome_of(apart, unknowns, wanted, *each);
  const AimUnknowns fewer = merged(apart, drawn_group, unknowns, each->pressure_pa);
  if (!each->reached || fewer.count == unknowns.count) return one_a_chamber;
  const auto joined = solve_aim(apart, fewer, wanted, progress);
  if (!joined) return joined.problem();
  return joined->reached ? outcome_of(apart, fewer, wanted, *joined) : one_a_chamber;
}

std::optional<Problem> try_split(const Plan& plan, const Body& body, const Resources& resources,
                                 const StudyCase& drawn, const Wanted& wanted, Progress& progress, Aim& out) {
  const std::vector<GroupId> shared = shared_groups(drawn, wanted);
  if (shared.empty()) return std::nullopt;
  const auto separate = separate_chambers(plan, drawn.setup().flat, shared);
  if (!separate) return separate.problem();
  const auto apart = StudyCase::make(separate->plan, body, resources, mesh_of_plan(plan));
  if (!apart) return apart.problem();
  StagedProgress split_progress(progress, "chambers fed apart: ");
  auto split = aim_apart(drawn, *apart, wanted, split_progress);
  if (!split) return split.problem();
  out.split = std::move(split).value();
  out.closed_channels = separate->closed_channels;
  return std::nullopt;
}

}  // namespace

Pressure aim_tolerance(Pressure wanted) {
  return std::max(0.02 * wanted, 0.05 * kPa);
}

const AimChamber& AimOutcome::worst() const {
  const auto miss = [](const AimChamber& chamber) {
    return chamber.wanted ? std::abs((chamber.mean - *chamber.wanted).si()) : -1.0;
  };
  return *std::max_element(chambers.begin(), chambers.end(),
                           [&](const AimChamber& a, const AimChamber& b) { return miss(a) < miss(b); });
}

Result<Aim> aim(const Plan& plan, const Body& body, const Resources& resources,
                const std::vector<AimTarget>& targets, Progress& progress) {
  const auto wanted = wanted_of(plan.layout, targets);
  if (!wanted) return wanted.problem();
  if (plan.layout.closure)
    if (const auto rise = rise_in(plan.layout, 1.0, [&](std::size_t c) { return (*wanted)[c]; }))
      return bad_input(
          Phrase::worded("the target rises %1, which hinders the blood that flows back (common practice, no "
                         "source): ask for a "
                         "profile that stays level or falls towards the trunk.",
                         {*rise}));
  const auto ready = body_of_plan(plan, body);
  if (!ready) return ready.problem();
  const auto drawn = StudyCase::make(plan, *ready, resources, mesh_of_plan(plan));
  if (!drawn) return drawn.problem();
  const AimUnknowns unknowns = unknowns_of(*drawn, *wanted);
  StagedProgress drawn_progress(progress, "as drawn: ");
  const auto solution = solve_aim(*drawn, unknowns, *wanted, drawn_progress);
  if (!solution) return solution.problem();
  Aim out;
  out.model = model_words(resources.limits.calibration);
  out.limits_override = english(resources.limits.override_words);
  out.as_drawn = outcome_of(*drawn, unknowns, *wanted, *solution);
  if (!out.as_drawn.reached)
    if (auto problem = try_split(plan, *ready, resources, *drawn, *wanted, progress, out)) return *problem;
  const AimOutcome& best = out.split ? *out.split : out.as_drawn;
  if (plan.layout.closure)
    out.rises = english(rise_in(
        plan.layout, 1.05, [&](std::size_t c) { return std::optional<Pressure>(best.chambers[c].mean); }));
  return out;
}

}  // namespace wrapgauge
