#include "model/study/change_outcome.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "model/plan/as_written.hpp"
#include "model/study/ceiling_report.hpp"
#include "model/study/run_lines.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

std::string amount_name(Amount amount) {
  switch (amount) {
    case Amount::kPressure:
      return "pressure";
    case Amount::kStrain:
      return "tissue strain";
    case Amount::kStretch:
      return "stretch";
    case Amount::kExposure:
      break;
  }
  return "exposure";
}

std::string what_of(const Finding& finding) {
  if (finding.measured) return amount_name(finding.measured->amount);
  if (finding.cause == Cause::kTime) return "time";
  return finding.source_key;
}

void keep_worse(std::vector<LimitMark>& marks, LimitMark mark) {
  for (LimitMark& known : marks) {
    if (known.where != mark.where || known.what != mark.what) continue;
    if (std::tie(mark.severity, mark.share) > std::tie(known.severity, known.share))
      known.sentence = mark.sentence;
    known.share = std::max(known.share, mark.share);
    known.severity = std::max(known.severity, mark.severity);
    return;
  }
  marks.push_back(std::move(mark));
}

const LimitMark* same_mark(const std::vector<LimitMark>& marks, const LimitMark& as) {
  for (const LimitMark& mark : marks)
    if (mark.where == as.where && mark.what == as.what) return &mark;
  return nullptr;
}

// A plan that was solved at one amount.
struct SolvedRung {
  Plan plan;
  StudyCase study;
  LoadPath path;
  StateReading reading;  // relief valves not solved yet
};

// Either it was solved, or why not.
struct RungResult {
  std::optional<SolvedRung> solved;
  std::string failed;
};

class ChangeSolver {
 public:
  ChangeSolver(const PlanChange& change, const ChangeSolve& how, const Body& body, const Resources& resources,
               Progress& progress)
      : change_(change), how_(how), body_(body), resources_(resources), progress_(progress) {}

  Result<ChangeOutcome> least_within() {
    int above = -1, within = change_.rungs - 1;  // the plan itself is above
    auto last = solve(within);
    if (!last) return last.problem();
    RungResult best = std::move(last).value();
    if (!clear(best)) return outcome_of(within, std::move(best));
    while (within - above > 1) {
      const int middle = above + (within - above) / 2;
      auto tried = solve(middle);
      if (!tried) return tried.problem();
      if (clear(*tried))
        within = middle, best = std::move(tried).value();
      else
        above = middle;
    }
    return outcome_of(within, std::move(best));
  }

  // From the amount that was found elsewhere; further where that is not enough on this mesh.
  Result<ChangeOutcome> from_first() {
    std::optional<ChangeOutcome> outcome;
    for (const int beyond : {0, 1, 3, 7}) {
      const int rung = how_.first + beyond;
      if (rung >= change_.rungs) break;
      auto tried = solve(rung);
      if (!tried) return tried.problem();
      auto judged_there = outcome_of(rung, std::move(tried).value());
      if (!judged_there) return judged_there.problem();
      outcome = std::move(judged_there).value();
      if (outcome->within) break;
    }
    return *outcome;
  }

 private:
  Result<StudyCase> case_of(const Plan& plan) const {
    const bool same_wear = change_.kind == ChangeKind::kInflation || change_.kind == ChangeKind::kTime ||
                           change_.kind == ChangeKind::kValves;
    if (how_.as_planned && same_wear) return how_.as_planned->with_inflation_of(plan);
    // It is judged as its maker will have it in hand.
    const auto written = as_written(plan);
    if (!written) return written.problem();
    return StudyCase::make(*written, body_, resources_, how_.mesh);
  }

  Result<RungResult> solve(int rung) {
    Plan plan = change_.plan_at(rung);
    auto study = case_of(plan);
    if (!study && is_no_answer(study.problem().kind)) return study.problem();
    if (!study) return RungResult{std::nullopt, study.problem().message};
    auto path = study->inflate_to(study->targets(), progress_);
    if (!path && is_no_answer(path.problem().kind)) return path.problem();
    if (!path) return RungResult{std::nullopt, path.problem().message};
    StateReading reading = study->read(*path);
    return RungResult{
        SolvedRung{std::move(plan), std::move(study).value(), std::move(path).value(), std::move(reading)},
        {}};
  }

  bool clear(const RungResult& result) const {
    if (!result.solved || result.solved->path.limit_point) return false;
    const LimitShare& nearest = result.solved->reading.nearest;
    return !nearest.above() && nearest.share * how_.share_factor <= 1.0;
  }

  Result<ChangeOutcome> outcome_of(int rung, RungResult result) {
    ChangeOutcome outcome;
    outcome.rung = rung;
    if (!result.solved) {
      outcome.failed = result.failed;
      return outcome;
    }
    const SolvedRung& solved = *result.solved;
    // What is above a limit anyway is only tried: its valves are read off the path.
    if (how_.search && (solved.reading.nearest.above() || solved.path.limit_point)) {
      take(solved, solved.reading, outcome);
      return outcome;
    }
    const auto reading = solved.study.read_with_relief(solved.path, progress_);
    if (!reading) return reading.problem();
    Supply supply = solved.plan.supply;
    if (how_.fit_valves) outcome.lowered = valves_above(supply, reading->judgement.relief);
    lower_valves(supply, outcome.lowered);
    take(solved,
         outcome.lowered.empty()
             ? *reading
             : solved.study.read_with_supply(solved.path, reading->judgement.relief, supply),
         outcome);
    return outcome;
  }

  static void take(const SolvedRung& solved, const StateReading& reading, ChangeOutcome& outcome) {
    outcome.marks = limit_marks(reading.judgement);
    if (solved.path.limit_point)
      keep_worse(outcome.marks, {"whole device", "inflation reached", 0.0, Severity::kAboveLimit,
                                 "The inflation asked for is not reached."});
    outcome.share = reading.nearest.share;
    outcome.where = reading.nearest.where;
    outcome.relief = reading.judgement.relief;
    for (const ChamberFigures& chamber : reading.figures.chambers) outcome.mean.push_back(chamber.mean);
    const Eigen::VectorXd& closed_m3 = solved.path.states.front().group_volume_m3;
    for (Eigen::Index g = 0; g < closed_m3.size(); ++g) outcome.closed_volume.emplace_back(closed_m3[g]);
    outcome.within = reading.judgement.worst() < Severity::kAboveLimit && !solved.path.limit_point;
    if (!std::isfinite(outcome.share)) outcome.failed = "A figure is not a finite number.";
    for (const Pressure mean : outcome.mean)
      if (!std::isfinite(mean.si())) outcome.failed = "A figure is not a finite number.";
    if (outcome.failed) outcome.within = false;
  }

  const PlanChange& change_;
  const ChangeSolve& how_;
  const Body& body_;
  const Resources& resources_;
  Progress& progress_;
};

Json valves_json(const std::vector<InletRelief>& valves) {
  Json list = Json::array();
  for (const InletRelief& valve : valves) list.push_back({valve.inlet, valve.highest.si()});
  return list;
}

std::vector<InletRelief> valves_from(const nlohmann::json& list) {
  std::vector<InletRelief> valves;
  for (const auto& valve : list)
    valves.push_back({valve.at(0).get<std::string>(), Pressure(valve.at(1).get<double>())});
  return valves;
}

Json marks_json(const std::vector<LimitMark>& marks) {
  Json list = Json::array();
  for (const LimitMark& mark : marks)
    list.push_back({mark.where, mark.what, mark.share, static_cast<int>(mark.severity), mark.sentence});
  return list;
}

LimitMark mark_from(const nlohmann::json& mark) {
  return {mark.at(0).get<std::string>(), mark.at(1).get<std::string>(), mark.at(2).get<double>(),
          static_cast<Severity>(mark.at(3).get<int>()), mark.at(4).get<std::string>()};
}

ChangeOutcome read_outcome(const nlohmann::json& json) {
  ChangeOutcome outcome;
  if (json.at("failed").is_string()) outcome.failed = json.at("failed").get<std::string>();
  outcome.rung = json.at("rung").get<int>();
  outcome.within = json.at("within").get<bool>();
  outcome.share = json.at("share").get<double>();
  outcome.where = json.at("where").get<std::string>();
  for (const auto& mark : json.at("marks")) outcome.marks.push_back(mark_from(mark));
  for (const auto& mean : json.at("mean_Pa")) outcome.mean.emplace_back(mean.get<double>());
  for (const auto& closed : json.at("closed_m3")) outcome.closed_volume.emplace_back(closed.get<double>());
  outcome.relief = valves_from(json.at("relief_Pa"));
  outcome.lowered = valves_from(json.at("lowered_Pa"));
  return outcome;
}

}  // namespace

std::vector<LimitMark> limit_marks(const Judgement& judgement) {
  std::vector<LimitMark> marks;
  for (const Finding& finding : judgement.findings)
    keep_worse(marks, {finding.where, what_of(finding), finding.share_of_limit, finding.severity,
                       english(finding.sentence)});
  for (const Hazard& hazard : judgement.hazards)
    keep_worse(marks, {english(hazard.name), "hazard", 0.0, hazard.severity,
                       english(hazard.name) + ": " + english(hazard.sentence)});
  return marks;
}

std::optional<std::string> worsened(const ChangeOutcome& before, const ChangeOutcome& after) {
  for (const LimitMark& mark : after.marks) {
    const LimitMark* known = same_mark(before.marks, mark);
    const std::string place = "'" + mark.where + "'" + (mark.what == "hazard" ? "" : " (" + mark.what + ")");
    if (!known && mark.severity >= Severity::kAboveLimit) return place + " would come above a limit";
    if (!known) continue;
    if (mark.share > known->share + kAlikeShare)
      return place + " would rise from " + percent_text(known->share) + " to " + percent_text(mark.share) +
             " of its limit";
    if (mark.severity > known->severity)
      return place + " would turn from " + std::string(severity_text(known->severity)) + " to " +
             std::string(severity_text(mark.severity));
  }
  if (!before.relief.empty() && after.relief.empty())
    return "no setting of the relief valves could be given any more";
  return std::nullopt;
}

Pressure drift(const ChangeOutcome& before, const ChangeOutcome& after, const std::vector<Area>& drawn_area) {
  double squares = 0.0, area = 0.0;
  for (std::size_t c = 0; c < drawn_area.size() && c < before.mean.size() && c < after.mean.size(); ++c) {
    squares += drawn_area[c].si() * std::pow((after.mean[c] - before.mean[c]).si(), 2);
    area += drawn_area[c].si();
  }
  return area > 0.0 ? Pressure(std::sqrt(squares / area)) : Pressure();
}

Result<ChangeOutcome> solve_change(const PlanChange& change, const ChangeSolve& how, const Body& body,
                                   const Resources& resources, Progress& progress) {
  ChangeSolver solver(change, how, body, resources, progress);
  return how.search ? solver.least_within() : solver.from_first();
}

std::string change_outcome_json(const ChangeOutcome& outcome) {
  Json json;
  json["failed"] = outcome.failed ? Json(*outcome.failed) : Json();
  json["rung"] = outcome.rung;
  json["within"] = outcome.within;
  json["share"] = std::isfinite(outcome.share) ? outcome.share : 0.0;
  json["where"] = outcome.where;
  json["marks"] = marks_json(outcome.marks);
  json["mean_Pa"] = Json::array();
  for (const Pressure mean : outcome.mean) json["mean_Pa"].push_back(mean.si());
  json["closed_m3"] = Json::array();
  for (const Volume closed : outcome.closed_volume) json["closed_m3"].push_back(closed.si());
  json["relief_Pa"] = valves_json(outcome.relief);
  json["lowered_Pa"] = valves_json(outcome.lowered);
  return one_line(json);
}

std::optional<ChangeOutcome> change_outcome_from(const std::string& text) {
  const auto json = nlohmann::json::parse(text, nullptr, false);
  if (!json.is_object()) return std::nullopt;
  try {
    return read_outcome(json);
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;  // another program's line
  }
}

}  // namespace wrapgauge
