#include "model/study/person_answer.hpp"

#include "model/body/girth.hpp"
#include "model/study/ceiling.hpp"
#include "model/study/estimate_reading.hpp"
#include "model/study/limit_point_words.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {
namespace {

constexpr double kCeilingWidth = 0.03;  // of a person's ceiling: its lower end is taken

void measure(const Plan& plan, const Body& body, PersonAnswer& answer) {
  answer.limb = body_length(body);
  if (const auto* anchor = std::get_if<AnchorAtStation>(&plan.placement.anchor))
    answer.station = anchor->station;
  answer.girth = girth_at(body, answer.station).girth;
}

void measure_closure(const Plan& plan, const Body& body, PersonAnswer& answer) {
  const auto closing = resolve_closing_length(body, plan.layout, plan.placement);
  if (!closing || !*closing) return;
  answer.closing = **closing;
  double end_m = 0.0;
  for (const Vec2& point : plan.layout.outline_m) end_m = std::max(end_m, point.x());
  answer.tail = Length(end_m - plan.layout.closure->from_x_m) - **closing;
}

// The relief valves are part of it: one that opens too late on this person is above a limit.
void take_reading(const StateReading& reading, PersonAnswer& answer) {
  answer.share = reading.nearest.share;
  answer.where = reading.nearest.where;
  answer.sentence = reading.nearest.sentence;
  answer.peak = reading.figures.peak_anywhere;
  answer.above = reading.nearest.above();
  if (const Hazard* valve = valve_above_limit(reading)) {
    answer.above = true;
    answer.where = english(valve->name);
    answer.sentence = english(valve->sentence);
  }
}

PersonCeiling ceiling_of(const InletCeiling& together) {
  PersonCeiling ceiling{together.stop, 0.0, {}, together.at.nearest.where};
  if (together.stop == CeilingStop::kLimitPoint) ceiling.where = together.limit_chambers;
  if (together.stop == CeilingStop::kLimit && together.above && together.above->equilibrium)
    ceiling.where = together.above->nearest.where;
  if (together.inlets.empty()) return ceiling;
  ceiling.inflation = together.at.inflation;
  ceiling.settings = together.inlets;
  return ceiling;
}

std::optional<Problem> look_for_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                                        const InflatedPlan& inflated, double mesh_factor,
                                        PersonAnswer& answer, Progress& progress) {
  CeilingOptions options;
  options.spread_factor = mesh_factor;
  options.alone = false;
  options.relief = false;
  options.search.tolerance = kCeilingWidth;
  const auto found = find_ceiling(plan, body, resources, inflated, options, progress);
  if (!found && is_no_answer(found.problem().kind)) return found.problem();
  if (!found)
    answer.no_ceiling = found.problem().message;
  else
    answer.ceiling = ceiling_of(found->together);
  return std::nullopt;
}

}  // namespace

Result<PersonAnswer> person_answer(const Plan& plan, const Body& body, const Resources& resources,
                                   const PersonSolve& how, Progress& progress) {
  PersonAnswer answer;
  measure(plan, body, answer);
  // Why there are no figures; what tells nothing of the person ends the study instead.
  const auto unanswered = [&answer](const Problem& problem) -> Result<PersonAnswer> {
    if (is_no_answer(problem.kind)) return problem;
    answer.failed = problem.message;
    return answer;
  };
  const auto ready = body_of_plan(plan, body);
  if (!ready) return unanswered(ready.problem());
  const auto study = StudyCase::make(plan, *ready, resources, how.mesh);
  if (!study) return unanswered(study.problem());
  measure_closure(plan, *ready, answer);
  const auto path = study->inflate_to(study->targets(), progress);
  if (!path) return unanswered(path.problem());
  if (path->limit_point) {
    answer.failed = limit_point_words(*path->limit_point);
  } else {
    const auto reading = read_as_estimate(*study, *path, progress);
    if (!reading) return reading.problem();
    take_reading(*reading, answer);
  }
  if (how.ceiling)
    if (auto problem =
            look_for_ceiling(plan, *ready, resources, {*study, *path}, how.mesh_factor, answer, progress))
      return *problem;
  return answer;
}

}  // namespace wrapgauge
