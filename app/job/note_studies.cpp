#include "app/job/note_studies.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "app/job/study_inputs.hpp"
#include "model/study/ceiling_report.hpp"
#include "model/study/people_report.hpp"
#include "model/study/spread_report.hpp"

namespace wrapgauge {
namespace {

NoteBands note_bands(const Spread& spread, const Job& job) {
  const auto& names = chamber_figure_names();
  const auto peak = static_cast<std::size_t>(
      std::find_if(names.begin(), names.end(),
                   [](const FigureName& name) { return std::string_view(name.key) == "peak_1cm2_kPa"; }) -
      names.begin());
  NoteBands bands{spread_brief(spread), {}, job.inputs};
  for (const ChamberBands& chamber : spread.chambers)
    bands.chambers.push_back(
        {chamber.chamber, chamber.figures.at(peak).low * kPa, chamber.figures.at(peak).high * kPa});
  return bands;
}

// Fewer runs leave the 5th and 95th percentile to two or three of them (judgement).
constexpr int kFewestRuns = 60;

std::optional<Problem> too_few_runs(const Spread& spread) {
  const int solved = spread.runs - static_cast<int>(spread.failed.size());
  if (solved >= kFewestRuns) return std::nullopt;
  return bad_input("the spread has " + std::to_string(solved) +
                   " runs with an equilibrium, and bands in a note need " + std::to_string(kFewestRuns) +
                   ": run wrapgauge spread with --runs " +
                   std::to_string(kFewestRuns + spread.runs - solved) + " or more.");
}

}  // namespace

NoteCeiling note_ceiling(const std::vector<std::string>& brief, const std::optional<std::string>& relief,
                         const std::vector<InputFile>& inputs) {
  NoteCeiling ceiling{"", inputs, relief};
  for (const std::string& sentence : brief) ceiling.words += (ceiling.words.empty() ? "" : " ") + sentence;
  return ceiling;
}

Result<NoteExtras> read_note_studies(const Job& job, const NoteStudies& studies) {
  NoteExtras extras;
  const std::string hash = inputs_hash(job);
  if (studies.spread) {
    const auto spread = read_spread(*studies.spread / "spread.json", hash);
    if (!spread) return spread.problem();
    if (auto problem = too_few_runs(*spread)) return *problem;
    extras.bands = note_bands(*spread, job);
  }
  if (studies.ceiling) {
    const auto answer = read_ceiling(*studies.ceiling, hash);
    if (!answer) return answer.problem();
    extras.ceiling = note_ceiling(answer->brief, answer->relief, job.inputs);
  }
  if (studies.people) {
    const auto brief = read_people_brief(*studies.people / "people.json", hash);
    if (!brief) return brief.problem();
    extras.people = NotePeople{*brief, job.inputs};
  }
  return extras;
}

}  // namespace wrapgauge
