#include "model/study/people_report.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/csv_text.hpp"
#include "model/core/markdown_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/core/version.hpp"
#include "model/study/ceiling_report.hpp"
#include "model/study/person_json.hpp"
#include "model/study/study_file.hpp"

namespace wrapgauge {
namespace {

using PeopleJson = nlohmann::ordered_json;

constexpr const char* kSurveyWords =
    "The survey measured soldiers in 2012, median age 27 to 28, fitter than the public, some girths on "
    "tensed "
    "muscles; nobody is at one percentile of every measure. Measure the people who will wear it.";

std::string whole_mm(Length length) {
  return fixed_text(length / mm, 0) + " mm";
}

std::string people_count(int count) {
  return count == 1 ? "1 person" : std::to_string(count) + " people";
}

const char* verdict_text(PersonVerdict verdict) {
  switch (verdict) {
    case PersonVerdict::kWithin:
      return "within the limits";
    case PersonVerdict::kAbove:
      return "above a limit";
    case PersonVerdict::kNoAnswer:
      break;
  }
  return "no answer";
}

std::string settings_text(const PersonCeiling& ceiling) {
  std::string text;
  for (const CeilingInlet& setting : ceiling.settings)
    text += (text.empty() ? "'" : ", '") + setting.inlet + "' " + setting_text(setting.gauge) + " holding " +
            fixed_text(rounded_down(setting.volume / mL, 0.1), 1) + " mL";
  return text;
}

std::string ceiling_text(const PersonAnswer& answer) {
  if (answer.no_ceiling) return " No ceiling was found: " + *answer.no_ceiling;
  if (!answer.ceiling) return "";
  if (answer.ceiling->settings.empty()) return " No inflation is within the limits.";
  if (answer.ceiling->inflation >= 1.0) return "";
  return " Within them up to " + settings_text(*answer.ceiling) + ".";
}

std::string girth_text(const PersonAnswer& answer) {
  return answer.girth.si() > 0.0 ? " (girth " + whole_mm(answer.girth) + ")" : "";
}

std::string person_text(const PersonRow& row, double mesh_factor) {
  const PersonAnswer& answer = row.answer;
  const std::string who = row.id + girth_text(answer) + ": ";
  if (row.verdict == PersonVerdict::kNoAnswer)
    return who + "no answer. " + answer.failed.value_or("Its line is damaged.") + ceiling_text(answer);
  const double share = answer.share * mesh_factor;
  const std::string reached =
      share > 1.0 ? "'" + answer.where + "' at " + percent_text(share) + " of its limit" : answer.sentence;
  return who + "above a limit, " + reached + (reached.ends_with('.') ? "" : ".") + ceiling_text(answer);
}

// The lowest ceiling of all who have figures, and whose; none where somebody has no inflation within the
// limits.
const PersonRow* lowest_ceiling(const People& people) {
  const PersonRow* lowest = nullptr;
  for (const PersonRow& row : people.people) {
    if (row.verdict == PersonVerdict::kNoAnswer) continue;
    if (!row.answer.ceiling || row.answer.ceiling->settings.empty()) return nullptr;
    if (!lowest || row.answer.ceiling->inflation < lowest->answer.ceiling->inflation) lowest = &row;
  }
  return lowest;
}

std::string lowest_words(const People& people) {
  const PersonRow* lowest = lowest_ceiling(people);
  if (!lowest) return "";
  const auto answered = std::count_if(people.people.begin(), people.people.end(), [](const PersonRow& row) {
    return row.verdict != PersonVerdict::kNoAnswer;
  });
  return "The lowest ceiling is that of " + lowest->id + ": " + settings_text(*lowest->answer.ceiling) +
         " (" + percent_text(std::min(1.0, lowest->answer.ceiling->inflation)) +
         " of what the plan asks for); up to it no limit is met on any of the " +
         people_count(static_cast<int>(answered)) + " with figures.";
}

std::string verdict_words(const People& people) {
  const int all = static_cast<int>(people.people.size()), within = people.within();
  const std::string mesh = ", predicted at mesh edge " + number_text(people.edge / mm, 3) + " mm.";
  if (within == 0) return "Within the limits on none of the " + people_count(all) + " tried" + mesh;
  return "Within the limits on " + std::to_string(within) + " of the " + people_count(all) + " tried" + mesh;
}

std::string place_words(const People& people) {
  Length least = people.people.front().answer.station, most = least;
  for (const PersonRow& row : people.people)
    if (row.answer.limb.si() > 0.0) {
      least = least.si() > 0.0 ? std::min(least, row.answer.station) : row.answer.station;
      most = std::max(most, row.answer.station);
    }
  return "Measure round the limb where the layout's anchor lies, at " +
         fixed_text(100.0 * people.share_of_limb, 0) + " % of the body's length from its distal end (" +
         (std::lround(least / mm) == std::lround(most / mm)
              ? whole_mm(least)
              : fixed_text(least / mm, 0) + " to " + whole_mm(most)) +
         " from it on these people).";
}

std::string basis_words(const AcceptedGirths& accepted) {
  return "The range rests on " + people_count(accepted.people) + " of girths " +
         fixed_text(accepted.smallest / mm, 0) + " to " + whole_mm(accepted.largest) +
         ", with nobody above a limit in between, less " + number_text(kTapeError_mm, 2) +
         " mm at both ends for the error of a tape (judgement).";
}

// "The range takes in 62 % of the survey's men and 9 % of its women, ..."
std::string survey_share_words(const People& people) {
  if (people.survey.empty()) return "";
  std::string text = "The range takes in ";
  for (std::size_t g = 0; g < people.survey.size(); ++g)
    text += (g ? " and " : "") + fixed_text(100.0 * people.survey[g].share, 0) + " % of " +
            (g ? "its " : "the survey's ") + people.survey[g].group;
  return text + "; whoever lies beyond the percentiles tried is not counted.";
}

std::string mesh_words(const People& people) {
  return people.mesh_factor > 1.0
             ? "Shares of limits count " + fixed_text(people.mesh_factor, 2) +
                   " times, because the plan's own mesh (" + number_text(people.plan_edge / mm, 3) +
                   " mm) finds that much more on the plan's body."
             : "";
}

std::string rows_words(const People& people) {
  if (people.rows.empty()) return "";
  std::string text = "Closing rows, as tight as the plan or looser where one is: ";
  for (std::size_t row = 0; row < people.rows.size(); ++row)
    text.append(row ? ", " : "")
        .append(std::to_string(row + 1))
        .append(" at ")
        .append(number_text(people.rows[row] / mm, 5));
  return text + " mm.";
}

std::string cell(double value, int decimals, bool known = true) {
  std::string text = ",";
  if (known) text += fixed_text(value, decimals);
  return text;
}

std::vector<std::string> inlets_of(const People& people) {
  std::vector<std::string> inlets;
  for (const PersonRow& row : people.people)
    if (row.answer.ceiling)
      for (const CeilingInlet& setting : row.answer.ceiling->settings)
        if (std::find(inlets.begin(), inlets.end(), setting.inlet) == inlets.end())
          inlets.push_back(setting.inlet);
  std::sort(inlets.begin(), inlets.end());
  return inlets;
}

std::string setting_cells(const PersonAnswer& answer, const std::vector<std::string>& inlets) {
  std::string cells;
  for (const std::string& inlet : inlets) {
    const CeilingInlet* found = nullptr;
    if (answer.ceiling)
      for (const CeilingInlet& setting : answer.ceiling->settings)
        if (setting.inlet == inlet) found = &setting;
    cells += cell(found ? rounded_down(found->gauge / kPa, 0.1) : 0.0, 1, found) +
             cell(found ? rounded_down(found->volume / mL, 0.1) : 0.0, 1, found);
  }
  return cells;
}

std::string csv_row(const PersonRow& row, const People& people, const std::vector<std::string>& inlets) {
  const PersonAnswer& a = row.answer;
  const bool solved = row.verdict != PersonVerdict::kNoAnswer, measured = a.girth.si() > 0.0;
  return csv_field(row.id) + "," + verdict_text(row.verdict) + cell(a.girth / mm, 1, measured) +
         cell(a.station / mm, 1, measured) + cell(a.limb / mm, 1, measured) +
         cell(a.closing.value_or(Length()) / mm, 1, a.closing.has_value()) +
         cell(a.tail.value_or(Length()) / mm, 1, a.tail.has_value()) +
         cell(a.row.value_or(0), 0, a.row.has_value()) + cell(a.share * people.mesh_factor, 3, solved) + "," +
         csv_field(a.where) + cell(a.peak / kPa, 2, solved) +
         cell(a.ceiling ? a.ceiling->inflation : 0.0, 3, a.ceiling.has_value()) + setting_cells(a, inlets) +
         "," + csv_field(a.failed.value_or(a.no_ceiling.value_or(""))) + "\n";
}

std::string table_row(const PersonRow& row, const People& people) {
  const PersonAnswer& a = row.answer;
  const bool solved = row.verdict != PersonVerdict::kNoAnswer;
  const std::string reason = markdown_text(a.failed.value_or(a.where));
  return "| " + markdown_text(row.id) + " | " + (a.girth.si() > 0.0 ? fixed_text(a.girth / mm, 0) : "") +
         " | " + (a.closing ? fixed_text(*a.closing / mm, 0) : "") + " | " +
         (a.tail ? fixed_text(*a.tail / mm, 0) : "") + " | " + verdict_text(row.verdict) + " | " +
         (solved ? percent_text(a.share * people.mesh_factor) : "") + " | " + reason + " | " +
         (a.ceiling ? (a.ceiling->settings.empty() ? "none" : markdown_text(settings_text(*a.ceiling)))
                    : "") +
         " |\n";
}

PeopleJson row_json(const PersonRow& row) {
  PeopleJson json{{"id", row.id}, {"verdict", verdict_text(row.verdict)}};
  json.update(PeopleJson::parse(person_json(row.answer)));
  return json;
}

}  // namespace

std::optional<std::string> accepted_words(const People& people) {
  if (!people.accepted) return std::nullopt;
  return "Accept girths from " + fixed_text(people.accepted->from / mm, 0) + " to " +
         whole_mm(people.accepted->to) + ". " + place_words(people);
}

std::vector<std::string> people_words(const People& people, bool survey) {
  std::vector<std::string> words{verdict_words(people)};
  if (const auto accepted = accepted_words(people)) {
    words.push_back(*accepted);
    words.push_back(basis_words(*people.accepted));
    if (const std::string shares = survey_share_words(people); !shares.empty()) words.push_back(shares);
  } else {
    words.push_back(
        "No range of girths can be given: no two people side by side in girth are within the limits, or they "
        "differ by less than a tape does.");
  }
  if (const std::string lowest = lowest_words(people); !lowest.empty()) words.push_back(lowest);
  for (const PersonRow& row : people.people)
    if (row.verdict != PersonVerdict::kWithin) words.push_back(person_text(row, people.mesh_factor));
  for (const std::string& more : {rows_words(people), mesh_words(people), people.limits_override.value_or(""),
                                  std::string(survey ? kSurveyWords : "")})
    if (!more.empty()) words.push_back(more);
  return words;
}

std::string people_brief(const People& people) {
  const auto accepted = accepted_words(people);
  return (accepted ? *accepted + " " + basis_words(*people.accepted) : "No range of girths can be given.") +
         " " + verdict_words(people) + " Nobody else was tried.";
}

std::string people_csv(const People& people) {
  const std::vector<std::string> inlets = inlets_of(people);
  std::string text =
      "id,verdict,girth_mm,station_mm,body_length_mm,closing_length_mm,tail_mm,closing_row,share_of_limit,"
      "nearest_to_limit,peak_1cm2_kPa,ceiling_of_plan";
  for (const std::string& inlet : inlets)
    text.append(",")
        .append(csv_field("ceiling " + inlet + " kPa"))
        .append(",")
        .append(csv_field("ceiling " + inlet + " mL"));
  text += ",reason\n";
  for (const PersonRow& row : people.people) text += csv_row(row, people, inlets);
  return text;
}

std::string people_markdown(const People& people, bool survey) {
  std::string page = "# Who can wear it: " + markdown_text(people.plan) + "\n\n";
  for (const std::string& sentence : people_words(people, survey)) page += markdown_text(sentence) + "\n\n";
  page +=
      "| who | girth mm | closing length mm | tail mm | at the plan's inflation | share of the limit | "
      "nearest "
      "to a limit, or why not | ceiling |\n|---|---|---|---|---|---|---|---|\n";
  for (const PersonRow& row : people.people) page += table_row(row, people);
  return page +
         "\nPredicted by an uncalibrated model; a girth in the range proves nothing about a person. Not a "
         "medical "
         "device; ask a clinician.\n";
}

std::string people_json(const People& people) {
  PeopleJson json{{"wrapgauge-people", 1},
                  {"program", std::string(program_version())},
                  {"inputs_hash", people.inputs_hash},
                  {"plan", people.plan},
                  {"edge_mm", people.edge / mm},
                  {"plan_edge_mm", people.plan_edge / mm},
                  {"mesh_factor", people.mesh_factor},
                  {"share_of_limb", people.share_of_limb},
                  {"within", people.within()},
                  {"accepted", PeopleJson()},
                  {"survey_share", PeopleJson::object()},
                  {"brief", people_brief(people)},
                  {"people", PeopleJson::array()}};
  if (people.accepted)
    json["accepted"] = {{"from_mm", people.accepted->from / mm},
                        {"to_mm", people.accepted->to / mm},
                        {"smallest_mm", people.accepted->smallest / mm},
                        {"largest_mm", people.accepted->largest / mm},
                        {"people", people.accepted->people}};
  for (const SurveyShare& group : people.survey) json["survey_share"][group.group] = group.share;
  for (const PersonRow& row : people.people) json["people"].push_back(row_json(row));
  return json.dump(1, ' ', false, PeopleJson::error_handler_t::replace) + "\n";
}

Result<std::string> read_people_brief(const std::filesystem::path& file, const std::string& inputs_hash) {
  const auto json = read_study(file, {"people", "give the folder written with its --out"}, inputs_hash);
  if (!json) return json.problem();
  const std::string name = file.filename().string();
  if (!json->contains("brief") || !(*json)["brief"].is_string())
    return bad_input(name + " lacks its words, so it is damaged; run wrapgauge people again.");
  return (*json)["brief"].get<std::string>();
}

}  // namespace wrapgauge
