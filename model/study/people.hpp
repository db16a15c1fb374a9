#pragma once
// Who can wear it: the plan's device put on one person after another, at the same place of the limb. What is
// found for each is predicted, like everything it rests on; a girth that is accepted proves nothing harmless.

#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"
#include "model/study/ceiling.hpp"
#include "model/study/many_runs.hpp"
#include "model/study/survey_share.hpp"

namespace wrapgauge {

struct PersonTried {
  std::string id;
  std::variant<BodyFile, BodyForm> body;
  std::string file_hash;                // of a body file's bytes and its label's; empty: a form
  std::optional<SurveyPlace> survey{};  // none: not a row of a survey
};

// Reads or makes the body that a plan names.
using MakeBody = std::function<Result<Body>(const Plan& plan)>;

struct PeopleOptions {
  Length edge = 8.0 * mm;    // mesh of the runs; the plan's own where that is coarser
  bool ceiling = true;       // look for each person's too
  std::vector<Length> rows;  // closing lengths that the device can be fastened at, rising; empty: any
};

struct PeopleJob {
  const Plan& plan;
  const Body& body;  // as the plan's file or form gives it
  const Resources& resources;
  MakeBody make_body;
  std::string inputs_hash;  // of all files these came from
  std::vector<PersonTried> people;
  PeopleOptions options;
};

struct PersonCeiling {
  CeilingStop stop = CeilingStop::kLimit;
  double inflation = 0.0;  // of the plan's; 0: nothing may be inflated
  std::vector<CeilingInlet> settings;
  std::string where;  // what stops it
};

// Lengths are measured on the person.
struct PersonAnswer {
  std::optional<std::string> failed;  // why there are no figures: it does not close, no equilibrium, ...
  Length station, limb;               // of the anchor from the distal end; of the body along its axis
  Length girth;                       // across the axis where the anchor lies
  std::optional<Length> closing;      // closing length
  std::optional<Length> tail;         // how far the layout goes on beyond the second closing line
  std::optional<int> row;             // of PeopleOptions::rows, from 1
  double share = 0.0;                 // of the limit that comes nearest, after the model factor
  bool above = false;                 // a finding or hazard is above a limit on the mesh of the runs
  std::string where, sentence;        // of what comes nearest
  Pressure peak;                      // over 1 cm2, anywhere
  std::optional<PersonCeiling> ceiling;
  std::optional<std::string> no_ceiling;  // why none was found, where one was looked for
};

enum class PersonVerdict { kWithin, kAbove, kNoAnswer };

struct PersonRow {
  std::string id;
  PersonAnswer answer;
  PersonVerdict verdict = PersonVerdict::kNoAnswer;
};

// Girths at the anchor that may be accepted: those between two people who are within, with nobody in between
// who is not, less the tape's error at both ends.
struct AcceptedGirths {
  Length from, to;           // as printed: whole mm, rounded inwards
  Length smallest, largest;  // of the people they rest on
  int people = 0;
};
inline constexpr double kTapeError_mm = 5.0;  // judgement: two people with a tape on soft skin

struct People {
  std::string plan, inputs_hash;
  Length edge, plan_edge;
  double mesh_factor = 1.0;    // the plan's share of the limit on its own mesh over that on `edge`; >= 1
  double share_of_limb = 0.0;  // where the anchor lies, from the distal end
  bool closes = false;         // the layout has a closure
  std::vector<Length> rows;
  std::vector<PersonRow> people;  // as listed
  std::optional<AcceptedGirths> accepted;
  std::vector<SurveyShare> survey;             // of its groups, how many have a girth that is accepted
  std::optional<std::string> limits_override;  // why the limits may be laxer than the program's
  int within() const;
};

// What of the plan says nothing about another body and has to go first: an anchor, site, landmark or region
// given by a point, a depth for each vertex.
std::optional<Problem> not_for_other_bodies(const Plan& plan);

// The plan as this person wears it: their body, the anchor and regions between stations at the same share of
// the limb, the closing row that fits best. `theirs`: as make_body gives it.
Result<Plan> plan_on(const PeopleJob& job, const PersonTried& person, const Body& theirs);

// Solves what the part lacks. None: runs of other parts are still missing, `missing` of them. Problems: those
// of not_for_other_bodies and solve_runs; the plan itself has no answer.
Result<std::optional<People>> try_people(const PeopleJob& job, const RunFolders& folders, const RunPart& part,
                                         int& missing, Progress& progress = silent_progress());

// From rows with a verdict, in any order. None: fewer than two people within lie side by side, or less than
// the tape's errors apart.
std::optional<AcceptedGirths> accepted_girths(const std::vector<PersonRow>& people);

}  // namespace wrapgauge
