#include "model/study/people.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"
#include "model/core/version.hpp"
#include "model/plan/plan_to_json.hpp"
#include "model/study/even_mesh.hpp"
#include "model/study/person_answer.hpp"
#include "model/study/person_json.hpp"
#include "model/study/run_lines.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

Problem says_nothing(const std::string& what, const std::string& advice) {
  return bad_input("The plan gives " + what +
                   " by a point on its own body, which says nothing about another person's: " + advice);
}

// The closing length that is nearest to the plan's fit without being tighter; the longest row where none is.
std::size_t best_row(const std::vector<Length>& rows, Length wanted) {
  const auto fits = std::find_if(rows.begin(), rows.end(), [&](Length row) { return row >= wanted; });
  return static_cast<std::size_t>((fits == rows.end() ? rows.end() - 1 : fits) - rows.begin());
}

// How much longer than the layout's closing length the girth is, on the plan's own body.
Result<double> stretch_of_plan(const PeopleJob& job) {
  if (job.plan.layout.closure->stretch) return *job.plan.layout.closure->stretch;
  const auto closing = resolve_closing_length(job.body, job.plan.layout, job.plan.placement);
  if (!closing) return closing.problem();
  const auto& anchor = std::get<AnchorAtStation>(job.plan.placement.anchor);
  return girth_at(job.body, anchor.station).girth / **closing - 1.0;
}

std::optional<Problem> take_row(const PeopleJob& job, const Body& theirs, Plan& plan) {
  if (job.options.rows.empty() || !plan.layout.closure) return std::nullopt;
  const auto stretch = stretch_of_plan(job);
  if (!stretch) return stretch.problem();
  const Length girth = girth_at(theirs, std::get<AnchorAtStation>(plan.placement.anchor).station).girth;
  plan.layout.closure->closing_length =
      job.options.rows[best_row(job.options.rows, girth / (1.0 + *stretch))];
  plan.layout.closure->stretch.reset();
  return std::nullopt;
}

Json identity_start(const PeopleJob& job, const char* study, Length edge) {
  return {{"study", study},
          {"program", std::string(program_version())},
          {"inputs_hash", job.inputs_hash},
          {"edge_mm", edge / mm}};
}

std::vector<RunOrder> nominal_orders(const PeopleJob& job) {
  std::vector<RunOrder> orders;
  for (const Length edge : {job.options.edge, job.plan.mesh_edge}) {
    if (!orders.empty() && edge >= job.options.edge) break;
    orders.push_back({"as planned, mesh " + number_text(edge / mm) + " mm",
                      one_line(identity_start(job, "people, as planned", edge)),
                      cost_of_edge(edge, job.options.edge), true});
  }
  return orders;
}

// How much higher the share of the limit is on the plan's own mesh than on that of the runs.
Result<double> mesh_factor_of(const RunAnswers& nominal) {
  std::vector<double> shares;
  for (const auto& answer : nominal) {
    const auto read = answer ? person_from(*answer) : std::nullopt;
    if (!read) return 1.0;
    if (read->failed)
      return Problem{ProblemKind::kNotConverged,
                     "The plan as it stands has no figures, so nobody is tried: " + *read->failed,
                     {}};
    shares.push_back(read->share);
  }
  return shares.front() > 0.0 ? std::max(1.0, shares.back() / shares.front()) : 1.0;
}

Json body_identity(const PeopleJob& job, const PersonTried& person) {
  Plan plan = job.plan;
  plan.body = person.body;
  Json body = plan_to_json(plan).at("body");
  if (person.file_hash.empty()) return body;
  body.erase("file");
  body["bytes"] = person.file_hash;
  return body;
}

std::vector<RunOrder> person_orders(const PeopleJob& job, double mesh_factor) {
  Json rows = Json::array();
  for (const Length row : job.options.rows) rows.push_back(row / mm);
  std::vector<RunOrder> orders;
  for (const PersonTried& person : job.people) {
    Json identity = identity_start(job, "people", job.options.edge);
    identity["mesh_factor"] = mesh_factor;
    identity["ceiling"] = job.options.ceiling;
    identity["rows_mm"] = rows;
    identity["body"] = body_identity(job, person);
    orders.push_back({person.id, one_line(identity)});
  }
  return orders;
}

PersonVerdict verdict_of(const PersonAnswer& answer, double mesh_factor) {
  if (answer.failed) return PersonVerdict::kNoAnswer;
  return answer.above || answer.share * mesh_factor > 1.0 ? PersonVerdict::kAbove : PersonVerdict::kWithin;
}

void take_row_number(const PeopleJob& job, PersonAnswer& answer) {
  if (job.options.rows.empty() || !answer.closing) return;
  for (std::size_t row = 0; row < job.options.rows.size(); ++row)
    if (std::abs((job.options.rows[row] - *answer.closing) / mm) < 0.005)
      answer.row = static_cast<int>(row) + 1;
}

// One person, or why there is no answer; only what ends the study is a Problem.
Result<std::string> answer_of_person(const PeopleJob& job, const PersonTried& person, double mesh_factor,
                                     Progress& progress) {
  const auto unanswered = [](const Problem& problem) -> Result<std::string> {
    if (is_no_answer(problem.kind)) return problem;
    PersonAnswer answer;
    answer.failed = problem.message;
    return person_json(answer);
  };
  const auto body = job.make_body([&] {
    Plan plan = job.plan;
    plan.body = person.body;
    return plan;
  }());
  if (!body) return unanswered(body.problem());
  auto plan = plan_on(job, person, *body);
  if (!plan) return unanswered(plan.problem());
  auto answer = person_answer(*plan, *body, job.resources,
                              {job.options.ceiling, mesh_factor, mesh_of_plan(*plan)}, progress);
  if (!answer) return answer.problem();
  PersonAnswer found = std::move(answer).value();
  take_row_number(job, found);
  return person_json(found);
}

Result<std::string> answer_as_planned(const PeopleJob& job, Length edge, Progress& progress) {
  const Plan plan = no_finer_than(job.plan, edge);
  const auto answer =
      person_answer(plan, job.body, job.resources, {false, 1.0, mesh_of_plan(plan)}, progress);
  if (!answer) return answer.problem();
  return person_json(*answer);
}

std::vector<SurveyShare> shares_of_survey(const PeopleJob& job, const People& people) {
  if (!people.accepted) return {};
  std::vector<SurveyGirth> measured;
  for (std::size_t p = 0; p < job.people.size(); ++p)
    if (const auto& place = job.people[p].survey; place && people.people[p].answer.girth.si() > 0.0)
      measured.push_back({*place, people.people[p].answer.girth});
  return survey_shares(measured, people.accepted->from, people.accepted->to);
}

People people_of(const PeopleJob& job, const RunAnswers& answers, double mesh_factor) {
  People people;
  people.plan = job.plan.name;
  people.inputs_hash = job.inputs_hash;
  people.edge = job.options.edge;
  people.plan_edge = job.plan.mesh_edge;
  people.mesh_factor = mesh_factor;
  people.closes = job.plan.layout.closure.has_value();
  people.rows = job.options.rows;
  people.share_of_limb = std::get<AnchorAtStation>(job.plan.placement.anchor).station / body_length(job.body);
  people.limits_override = english(job.resources.limits.override_words);
  for (std::size_t p = 0; p < job.people.size(); ++p) {
    const auto answer = person_from(*answers[p]);
    PersonRow row{job.people[p].id, answer.value_or(PersonAnswer{}), PersonVerdict::kNoAnswer};
    row.verdict = verdict_of(row.answer, mesh_factor);
    people.people.push_back(std::move(row));
  }
  people.accepted = accepted_girths(people.people);
  people.survey = shares_of_survey(job, people);
  return people;
}

}  // namespace

int People::within() const {
  return static_cast<int>(std::count_if(people.begin(), people.end(), [](const PersonRow& row) {
    return row.verdict == PersonVerdict::kWithin;
  }));
}

std::optional<Problem> not_for_other_bodies(const Plan& plan) {
  if (std::holds_alternative<AnchorAtPoint>(plan.placement.anchor))
    return says_nothing("the anchor", "give wear.anchor as station_mm and angle_deg.");
  if (!plan.bony_sites.empty())
    return says_nothing("the bony site '" + plan.bony_sites.front().name + "'",
                        "leave bony_sites out; forms bring their sites, and a scan has them in its label.");
  if (!plan.landmarks.empty())
    return says_nothing("the landmark '" + plan.landmarks.front().name + "'", "leave landmarks out.");
  for (const SkinRegion& region : plan.regions)
    if (const auto* near = std::get_if<NearPoint>(&region.place); near && near->landmark.empty())
      return says_nothing("the region '" + region.name + "'",
                          "place it by stations_mm, or near a site that the form brings.");
  if (plan.tissue_depth_mm.size() > 1)
    return bad_input(
        "The plan gives a tissue depth for each vertex of its own body, which says nothing about another "
        "person's: give one depth, or none.");
  return std::nullopt;
}

Result<Plan> plan_on(const PeopleJob& job, const PersonTried& person, const Body& theirs) {
  Plan plan = job.plan;
  plan.body = person.body;
  const bool file = std::holds_alternative<BodyFile>(person.body);
  if (!plan.part && file && !theirs.part) plan.part = job.body.part;
  if (file) plan.sites_confirmed.reset();  // that was said of the plan's own body
  if (plan.tissue_site.empty() && theirs.tissue_site.empty()) plan.tissue_site = job.body.tissue_site;
  const double longer = body_length(theirs) / body_length(job.body);
  auto& anchor = std::get<AnchorAtStation>(plan.placement.anchor);
  anchor.station = anchor.station * longer;
  for (SkinRegion& region : plan.regions)
    if (auto* between = std::get_if<BetweenStations>(&region.place)) {
      between->from = between->from * longer;
      between->to = between->to * longer;
    }
  if (auto problem = take_row(job, theirs, plan)) return *problem;
  return no_finer_than(std::move(plan), job.options.edge);
}

Result<std::optional<People>> try_people(const PeopleJob& job, const RunFolders& folders, const RunPart& part,
                                         int& missing, Progress& progress) {
  if (auto problem = not_for_other_bodies(job.plan)) return *problem;
  PeopleJob wanted = job;
  wanted.options.edge = std::max(job.options.edge, job.plan.mesh_edge);
  const auto nominal = solve_runs(
      nominal_orders(wanted), folders, part,
      [&](std::size_t run, Progress& inner) {
        return answer_as_planned(wanted, run == 0 ? wanted.options.edge : wanted.plan.mesh_edge, inner);
      },
      progress);
  if (!nominal) return nominal.problem();
  const auto mesh_factor = mesh_factor_of(*nominal);
  if (!mesh_factor) return mesh_factor.problem();
  const auto answers = solve_runs(
      person_orders(wanted, *mesh_factor), folders, part,
      [&](std::size_t run, Progress& inner) {
        return answer_of_person(wanted, wanted.people[run], *mesh_factor, inner);
      },
      progress);
  if (!answers) return answers.problem();
  missing = missing_runs(*answers);
  if (missing > 0) return std::optional<People>();
  return std::optional(people_of(wanted, *answers, *mesh_factor));
}

std::optional<AcceptedGirths> accepted_girths(const std::vector<PersonRow>& people) {
  std::vector<const PersonRow*> by_girth;
  for (const PersonRow& row : people)
    if (row.answer.girth.si() > 0.0) by_girth.push_back(&row);
  std::stable_sort(by_girth.begin(), by_girth.end(), [](const PersonRow* a, const PersonRow* b) {
    // Of people of one girth, one who is not within comes first: the girth is then cut there.
    return std::pair(a->answer.girth, a->verdict == PersonVerdict::kWithin) <
           std::pair(b->answer.girth, b->verdict == PersonVerdict::kWithin);
  });
  std::optional<AcceptedGirths> widest;
  for (std::size_t first = 0; first < by_girth.size(); ++first) {
    std::size_t last = first;
    while (last < by_girth.size() && by_girth[last]->verdict == PersonVerdict::kWithin) ++last;
    if (last < first + 2) continue;
    AcceptedGirths run{Length(), Length(), by_girth[first]->answer.girth, by_girth[last - 1]->answer.girth,
                       static_cast<int>(last - first)};
    run.from = std::ceil(run.smallest / mm + kTapeError_mm) * mm;
    run.to = std::floor(run.largest / mm - kTapeError_mm) * mm;
    if (run.from < run.to && (!widest || run.largest - run.smallest > widest->largest - widest->smallest))
      widest = run;
    first = last;
  }
  return widest;
}

}  // namespace wrapgauge
