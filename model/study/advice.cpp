#include "model/study/advice.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "model/body/part_rules.hpp"
#include "model/core/said_problem.hpp"
#include "model/core/version.hpp"
#include "model/geometry/polygon.hpp"
#include "model/plan/as_written.hpp"
#include "model/study/run_lines.hpp"
#include "model/study/staged_progress.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kAdvisedAtMost = 3;
constexpr std::size_t kSolvedAtMost = 8;  // on the plan's own mesh
constexpr double kMostFactor = 1.5;       // what a coarse mesh may be taken to miss of a share

struct OrderedChange {
  PlanChange change;
  ChangeSolve solve;
};

PlanChange unchanged(const Plan& plan) {
  return {"plan as it is",
          "",
          ChangeKind::kInflation,
          1,
          [plan](int) { return plan; },
          [](int) { return Phrase::worded("Leave it as it is"); }};
}

RunOrder order_of(const OrderedChange& ordered, const std::string& hash) {
  nlohmann::ordered_json json;
  json["study"] = "advise";
  json["program"] = std::string(program_version());
  json["inputs_hash"] = hash;
  json["change"] = ordered.change.name;
  json["edge_mm"] = ordered.solve.mesh.edge / mm;
  json["seam_edge_mm"] = ordered.solve.mesh.seam_edge / mm;
  json["share_factor"] = ordered.solve.share_factor;
  json["search"] = ordered.solve.search;
  json["first"] = ordered.solve.first;
  json["fit_valves"] = ordered.solve.fit_valves;
  return {ordered.change.name, one_line(json), ordered.solve.search && ordered.change.rungs > 1 ? 6.0 : 1.0};
}

class Adviser {
 public:
  Adviser(const AdviceJob& job, const Body& body, const RunFolders& folders, Progress& progress)
      : job_(job), body_(body), folders_(folders), progress_(progress) {
    const Length edge = std::max(job.plan.mesh_edge, kScreeningEdge);
    coarse_ = {.edge = edge, .seam_edge = edge};
    if (edge == job.plan.mesh_edge) coarse_ = mesh_of_plan(job.plan);
  }

  Result<Advice> find() {
    advice_.edge = job_.plan.mesh_edge;
    advice_.screening_edge = coarse_.edge;
    advice_.model_factor = job_.resources.limits.model_factor;
    for (const Chamber& chamber : job_.plan.layout.chambers) advice_.chambers.push_back(chamber.name);
    if (const auto& words = job_.resources.limits.override_words) advice_.cautions.push_back(english(*words));
    for (const Phrase& words : job_.resources.differ) advice_.cautions.push_back(english(words));
    if (auto problem = solve_plan()) return *problem;
    if (advice_.plan.within) return advice_;
    if (auto problem = screen()) return *problem;
    if (auto problem = verify()) return *problem;
    rank();
    return advice_;
  }

 private:
  Result<std::vector<ChangeOutcome>> solve(const std::vector<OrderedChange>& wanted,
                                           const std::string& stage) {
    std::vector<RunOrder> orders;
    for (const OrderedChange& ordered : wanted) orders.push_back(order_of(ordered, job_.inputs_hash));
    const auto answer = [&](std::size_t run, Progress& inner) -> Result<std::string> {
      const auto outcome = solve_change(wanted[run].change, wanted[run].solve, body_, job_.resources, inner);
      if (!outcome) return outcome.problem();
      return change_outcome_json(*outcome);
    };
    StagedProgress staged(progress_, stage);
    const auto answers = solve_runs(orders, folders_, {}, answer, staged);
    if (!answers) return answers.problem();
    std::vector<ChangeOutcome> outcomes;
    for (std::size_t run = 0; run < answers->size(); ++run) {
      const auto& text = (*answers)[run];
      auto outcome = text ? change_outcome_from(*text) : std::nullopt;
      if (!outcome)
        return bad_input(Phrase::worded(
            "The answer kept for '%1' in %2 cannot be read: name another folder, or empty this one.",
            {name_of(orders[run].name), name_of(folders_.runs.string())}));
      outcomes.push_back(std::move(*outcome));
    }
    return outcomes;
  }

  // As it is, on both meshes.
  std::optional<Problem> solve_plan() {
    auto own = StudyCase::make(job_.plan, body_, job_.resources, mesh_of_plan(job_.plan));
    if (!own) return own.problem();
    own_case_ = std::move(own).value();
    if (coarse_.edge != job_.plan.mesh_edge) {
      auto coarse = StudyCase::make(job_.plan, body_, job_.resources, coarse_);
      if (!coarse) return coarse.problem();
      coarse_case_ = std::move(coarse).value();
    }
    std::vector<OrderedChange> wanted{
        {unchanged(job_.plan), {mesh_of_plan(job_.plan), 1.0, false, 0, false, &*own_case_}}};
    if (coarse_.edge != job_.plan.mesh_edge)
      wanted.push_back({unchanged(job_.plan), {coarse_, 1.0, false, 0, false, &coarse_case()}});
    auto solved = solve(wanted, "the plan as it is: ");
    if (!solved) return solved.problem();
    advice_.plan = solved->front();
    advice_.screened_plan = solved->back();
    for (const ChangeOutcome* outcome : {&advice_.plan, &advice_.screened_plan})
      if (outcome->failed) return not_converged(name_of(*outcome->failed));
    // Amounts are looked for on the coarse mesh below the limit by what it misses of the nearest share.
    if (advice_.plan.share > 0.0 && advice_.screened_plan.share > 0.0)
      share_factor_ = std::clamp(advice_.plan.share / advice_.screened_plan.share, 1.0, kMostFactor);
    return std::nullopt;
  }

  const StudyCase& coarse_case() const { return coarse_case_ ? *coarse_case_ : *own_case_; }

  std::map<std::string, Volume> closed_volume() const {
    std::map<std::string, Volume> closed;
    const std::vector<Volume>& volume = advice_.screened_plan.closed_volume;
    for (std::size_t g = 0; g < std::min(volume.size(), coarse_case().groups()); ++g)
      closed[coarse_case().inlet_of(g)] = volume[g];
    return closed;
  }

  bool above_for(const std::function<bool(const LimitMark&)>& of) const {
    return std::any_of(advice_.plan.marks.begin(), advice_.plan.marks.end(), [&](const LimitMark& mark) {
      return mark.severity >= Severity::kAboveLimit && of(mark);
    });
  }

  std::optional<Problem> screen() {
    ChangeBasis basis{job_.plan, body_, job_.resources.silicones, closed_volume()};
    basis.time_breaks =
        above_for([](const LimitMark& mark) { return mark.what == "time" || mark.what == "exposure"; });
    basis.valves_break = !valves_above(job_.plan.supply, advice_.plan.relief).empty();
    PlanChanges all = single_changes(basis);
    std::vector<OrderedChange> wanted;
    for (PlanChange& change : all.changes)
      wanted.push_back({std::move(change), {coarse_, share_factor_, true, 0, true, &coarse_case()}});
    auto solved = solve(wanted, "changes on the coarse mesh: ");
    if (!solved) return solved.problem();
    for (std::size_t c = 0; c < wanted.size(); ++c) {
      advice_.changes.push_back(
          judged_change(wanted[c].change, (*solved)[c], advice_.screened_plan, coarse_.edge));
      sources_.push_back(std::move(wanted[c].change));
    }
    for (const NoChange& none : all.left_out) {
      TriedChange tried;
      tried.words = none.words, tried.reason = none.reason;
      left_out_.push_back(std::move(tried));
    }
    return std::nullopt;
  }

  TriedChange judged_change(const PlanChange& change, const ChangeOutcome& outcome,
                            const ChangeOutcome& before, Length edge) const {
    TriedChange tried;
    tried.kind = change.kind, tried.name = change.name, tried.family = change.family;
    tried.words = words_of(change, outcome);
    tried.fate = ChangeFate::kNoAnswer;
    tried.outcome = outcome, tried.edge = edge;
    if (outcome.failed) {
      tried.reason = *outcome.failed;
      return tried;
    }
    tried.moved = drift(before, outcome, drawn_areas());
    if (auto worse = worsened(before, outcome)) {
      tried.fate = ChangeFate::kWorse, tried.reason = *worse;
    } else if (outcome.within) {
      tried.fate = ChangeFate::kNotSolved;
    } else {
      const bool better = excess(outcome) < excess(before) - kAlikeShare;
      tried.fate = better ? ChangeFate::kNotEnough : ChangeFate::kNoHelp;
      tried.reason = still_above(outcome);
      if (better) tried.plan = changed_plan(change, outcome);
      if (change.rungs > 1) tried.words = Phrase::worded("%1 (the most that was tried)", {tried.words});
    }
    return tried;
  }

  static Phrase words_of(const PlanChange& change, const ChangeOutcome& outcome) {
    Phrase words = change.words_at(outcome.rung);
    if (outcome.lowered.empty()) return words;
    std::vector<Phrase> values{std::move(words), relief_words(outcome.lowered)};
    if (change.kind == ChangeKind::kValves) return Phrase::worded("%1: no higher than %2", std::move(values));
    return Phrase::worded("%1; with it set the relief valve no higher than %2", std::move(values));
  }

  // How far above its limits a state is: what has no share of a limit counts as a whole one more.
  static double excess(const ChangeOutcome& outcome) {
    double sum = 0.0;
    for (const LimitMark& mark : outcome.marks)
      if (mark.severity >= Severity::kAboveLimit) sum += mark.share > 1.0 ? mark.share - 1.0 : 1.0;
    return sum;
  }

  static std::string still_above(const ChangeOutcome& outcome) {
    const LimitMark* worst = nullptr;
    for (const LimitMark& mark : outcome.marks)
      if (mark.severity >= Severity::kAboveLimit && (!worst || mark.share > worst->share)) worst = &mark;
    return worst ? worst->sentence : std::string();
  }

  std::vector<Area> drawn_areas() const {
    std::vector<Area> areas;
    for (const Chamber& chamber : job_.plan.layout.chambers)
      areas.emplace_back(std::abs(signed_area_m2(chamber.boundary_m)));
    return areas;
  }

  // Those within on the coarse mesh, the least change first; of one family only one is advised.
  std::optional<Problem> verify() {
    std::vector<std::size_t> queue;
    for (std::size_t c = 0; c < advice_.changes.size(); ++c)
      if (advice_.changes[c].fate == ChangeFate::kNotSolved) queue.push_back(c);
    std::stable_sort(queue.begin(), queue.end(), [&](std::size_t a, std::size_t b) {
      return advice_.changes[a].moved < advice_.changes[b].moved;
    });
    std::set<std::string> families;
    std::size_t advised = 0, tried = 0;
    while (advised < kAdvisedAtMost && tried < kSolvedAtMost) {
      const auto batch = next_of(queue, families, std::min(kAdvisedAtMost - advised, kSolvedAtMost - tried));
      if (batch.empty()) break;
      if (auto problem = solve_there(batch)) return problem;
      tried += batch.size();
      for (const std::size_t c : batch)
        if (advice_.changes[c].fate == ChangeFate::kAdvised)
          ++advised, families.insert(advice_.changes[c].family);
    }
    return std::nullopt;
  }

  // The next of the queue, no two of one family and none of a family that has its advice.
  std::vector<std::size_t> next_of(const std::vector<std::size_t>& queue,
                                   const std::set<std::string>& families, std::size_t most) const {
    std::set<std::string> taken = families;
    std::vector<std::size_t> batch;
    for (const std::size_t c : queue)
      if (advice_.changes[c].fate == ChangeFate::kNotSolved && batch.size() < most &&
          taken.insert(advice_.changes[c].family).second)
        batch.push_back(c);
    return batch;
  }

  std::optional<Problem> solve_there(const std::vector<std::size_t>& batch) {
    std::vector<OrderedChange> wanted;
    for (const std::size_t c : batch)
      wanted.push_back(
          {sources_[c],
           {mesh_of_plan(job_.plan), 1.0, false, advice_.changes[c].outcome.rung, true, &*own_case_}});
    const auto solved = solve(wanted, "changes on the plan's own mesh: ");
    if (!solved) return solved.problem();
    for (std::size_t b = 0; b < batch.size(); ++b) {
      TriedChange tried = judged_change(sources_[batch[b]], (*solved)[b], advice_.plan, job_.plan.mesh_edge);
      tried.fate = tried.fate == ChangeFate::kNotSolved ? ChangeFate::kAdvised : ChangeFate::kNotThere;
      tried.plan.reset();
      if (tried.fate == ChangeFate::kAdvised) tried.plan = changed_plan(sources_[batch[b]], tried.outcome);
      advice_.changes[batch[b]] = std::move(tried);
    }
    return std::nullopt;
  }

  void rank() {
    std::vector<std::size_t> order(advice_.changes.size());
    for (std::size_t c = 0; c < order.size(); ++c) order[c] = c;
    const auto key = [&](std::size_t c) {
      const TriedChange& tried = advice_.changes[c];
      const double within = tried.fate == ChangeFate::kAdvised || tried.fate == ChangeFate::kNotSolved
                                ? tried.moved.si()
                            : tried.fate == ChangeFate::kNotEnough ? excess(tried.outcome)
                                                                   : 0.0;
      return std::pair(tried.fate, within);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    std::vector<TriedChange> ranked;
    for (const std::size_t c : order) ranked.push_back(std::move(advice_.changes[c]));
    ranked.insert(ranked.end(), left_out_.begin(), left_out_.end());
    advice_.changes = std::move(ranked);
  }

  static Plan changed_plan(const PlanChange& change, const ChangeOutcome& outcome) {
    Plan plan = change.plan_at(outcome.rung);
    lower_valves(plan.supply, outcome.lowered);
    return plan;
  }

  const AdviceJob& job_;
  const Body& body_;
  const RunFolders& folders_;
  Progress& progress_;
  FlatMeshOptions coarse_;
  std::optional<StudyCase> own_case_, coarse_case_;  // as planned; no coarse one: its own mesh is coarse
  double share_factor_ = 1.0;
  Advice advice_;
  std::vector<PlanChange> sources_;  // of the changes, as they were tried
  std::vector<TriedChange> left_out_;
};

}  // namespace

const Plan* Advice::advised() const {
  if (changes.empty() || changes.front().fate != ChangeFate::kAdvised) return nullptr;
  return &*changes.front().plan;
}

std::optional<Problem> advice_refused(const AdviceJob& job) {
  const auto body = body_of_plan(job.plan, job.body);
  if (!body) return body.problem();
  if (auto problem = not_of_a_test_object(body->part, Phrase::worded("advice"))) return problem;
  if (const auto ready = prepare(job.plan, *body, job.resources, mesh_of_plan(job.plan)); !ready)
    return ready.problem();
  return std::nullopt;
}

Result<Advice> find_advice(const AdviceJob& job, const RunFolders& folders, Progress& progress) {
  const auto body = body_of_plan(job.plan, job.body);
  if (!body) return body.problem();
  if (auto problem = not_of_a_test_object(body->part, Phrase::worded("advice"))) return *problem;
  AdviceJob written = job;
  if (!job.plan.layout_file && !job.plan.layout_drawing) {
    auto plan = as_written(job.plan);
    if (!plan) return plan.problem();
    written.plan = std::move(plan).value();
  }
  return Adviser(written, *body, folders, progress).find();
}

}  // namespace wrapgauge
