#include "model/study/person_answer.hpp"

#include "model/body/girth.hpp"
#include "model/study/ceiling.hpp"
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
  if (answer.above || reading.judgement.worst() < Severity::kAboveLimit) return;
  answer.above = true;
  for (const Finding& finding : reading.judgement.findings) {
    if (finding.severity < Severity::kAboveLimit) continue;
    answer.where = finding.where;
    answer.sentence = english(finding.sentence);
    return;
  }
  for (const Hazard& hazard : reading.judgement.hazards) {
    if (hazard.severity < Severity::kAboveLimit) continue;
    answer.where = english(hazard.name);
    answer.sentence = english(hazard.sentence);
    return;
  }
}

PersonCeiling ceiling_of(const InletCeiling& together) {
  PersonCeiling ceiling{together.stop, 0.0, {}, together.at.nearest.where};
  if (together.stop == CeilingStop::kLimitPoint) ceiling.where = together.limit_chambers;
  if (together.stop == CeilingStop::kLimit && together.above && together.above->equilibrium)
    ceiling.where = together.above->nearest.where;
  if (together.inlets.empty()) return ceiling;
  ceiling.inflation = together.at.inflation;
  for (const CeilingInlet& inlet : together.inlets)
    ceiling.settings.push_back({inlet.inlet, inlet.gauge, inlet.volume});
  return ceiling;
}

std::optional<Problem> look_for_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                                        double mesh_factor, PersonAnswer& answer, Progress& progress) {
  CeilingOptions options;
  options.spread_factor = mesh_factor;
  options.alone = false;
  options.relief = false;
  options.search.tolerance = kCeilingWidth;
  const auto found = find_ceiling(plan, body, resources, options, progress);
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
  const auto failed = [&answer](std::string why) {
    answer.failed = std::move(why);
    return answer;
  };
  const auto ready = body_of_plan(plan, body);
  if (!ready) return failed(ready.problem().message);
  const auto study = StudyCase::make(plan, *ready, resources, how.mesh);
  if (!study && is_no_answer(study.problem().kind)) return study.problem();
  if (!study) return failed(study.problem().message);
  measure_closure(plan, *ready, answer);
  const auto path = study->inflate_to(study->targets(), progress);
  if (!path && is_no_answer(path.problem().kind)) return path.problem();
  if (!path) return failed(path.problem().message);
  if (path->limit_point) {
    failed(limit_point_words(*path->limit_point));
  } else {
    const auto reading = study->read_with_relief(*path, progress);
    if (!reading) return reading.problem();
    take_reading(*reading, answer);
  }
  if (how.ceiling)
    if (auto problem = look_for_ceiling(plan, body, resources, how.mesh_factor, answer, progress))
      return *problem;
  return answer;
}

}  // namespace wrapgauge
