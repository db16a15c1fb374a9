#include "model/study/ceiling.hpp"

#include <algorithm>

#include "model/body/part_rules.hpp"
#include "model/study/ceiling_finder.hpp"
#include "model/study/relief_valve.hpp"
#include "model/study/staged_progress.hpp"

namespace wrapgauge {
namespace {

InflationTarget target_of(const InflationTarget& asked, const CeilingInlet& setting) {
  const auto* air = std::get_if<TrappedAir>(&asked);
  if (air && setting.pushed) return TrappedAir{*setting.pushed, air->dead};
  if (setting.by_volume) return setting.volume;
  return setting.gauge;
}

// Of a plan whose own valve opens above its setting.
std::optional<std::string> valve_too_high(const Judgement& judgement) {
  for (const Hazard& hazard : judgement.hazards)
    if (hazard.kind == HazardKind::kStuck && hazard.severity >= Severity::kAboveLimit)
      return english(hazard.sentence);
  return std::nullopt;
}

std::optional<ReliefCheck> relief_of(const StudyCase& study, const StateReading& plan) {
  if (!plan.relief_share) return std::nullopt;
  const bool goes_round = plan.figures.share_of_girth >= study.limits().circumferential_share;
  return ReliefCheck{plan.judgement.relief, *plan.relief_share, relief_rule_text(study.limits(), goes_round),
                     valve_too_high(plan.judgement)};
}

// `to_plan`: the path to what the plan asks for, where it is known.
Result<Ceiling> ceiling_of_case(const Plan& plan, const Resources& resources, const StudyCase& study,
                                const LoadPath* to_plan, const CeilingOptions& options, Progress& progress) {
  Ceiling ceiling;
  ceiling.edge = plan.mesh_edge;
  ceiling.model_factor = resources.limits.model_factor;
  ceiling.spread_factor = options.spread_factor;
  ceiling.model = model_words(resources.limits.calibration);
  ceiling.limits_override = english(resources.limits.override_words);

  StagedProgress all_progress(progress, "all inlets together: ");
  CeilingFinder finder(study, std::nullopt, options, all_progress, to_plan);
  auto together = finder.find();
  if (!together) return together.problem();
  ceiling.together = std::move(together).value();
  if (const auto& reading = finder.plan_reading())
    ceiling.plan_within = reading->judgement.worst() < Severity::kAboveLimit &&
                          reading->nearest.share * options.spread_factor <= 1.0;
  if (ceiling.together.stop != CeilingStop::kAlreadyAbove && finder.plan_reading())
    ceiling.relief = relief_of(study, *finder.plan_reading());
  if (!options.alone || study.groups() < 2) return ceiling;
  for (std::size_t g = 0; g < study.groups(); ++g) {
    if (!InletScale(study, g).scales(g)) continue;
    StagedProgress one_progress(progress, "inlet '" + study.inlet_of(g) + "' alone: ");
    auto alone = CeilingFinder(study, g, options, one_progress).find();
    if (!alone) return alone.problem();
    ceiling.alone.push_back(std::move(alone).value());
  }
  return ceiling;
}

}  // namespace

bool InletCeiling::confirmed() const {
  return at.equilibrium && !at.nearest.above() && above && (!above->equilibrium || above->nearest.above());
}

Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const CeilingOptions& options, Progress& progress) {
  const auto ready = body_of_plan(plan, body);
  if (!ready) return ready.problem();
  if (auto problem = not_of_a_test_object(ready->part, Phrase::worded("ceiling"))) return *problem;
  const auto study = StudyCase::make(plan, *ready, resources, mesh_of_plan(plan));
  if (!study) return study.problem();
  return ceiling_of_case(plan, resources, *study, nullptr, options, progress);
}

Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const InflatedPlan& inflated, const CeilingOptions& options,
                             Progress& progress) {
  if (auto problem = not_of_a_test_object(body.part, Phrase::worded("ceiling"))) return *problem;
  return ceiling_of_case(plan, resources, inflated.study, &inflated.path, options, progress);
}

std::optional<Plan> plan_at_ceiling(const Plan& plan, const InletCeiling& together) {
  if (together.inlets.empty()) return std::nullopt;
  Plan set = plan;
  for (const CeilingInlet& setting : together.inlets)
    for (InletProgram& program : set.inflation)
      if (program.inlet == setting.inlet) program.target = target_of(program.target, setting);
  for (const InletRelief& allowed : together.relief_there)
    if (const auto opens = plan.supply.relief_of(allowed.inlet); opens && *opens > allowed.highest)
      set.supply.inlet_relief[allowed.inlet] = allowed.highest;
  return set;
}

}  // namespace wrapgauge
