#include <algorithm>

#include "model/core/counted.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

// "2 findings and 1 hazard"; empty when there are none.
std::string how_many(const Summary& summary, Severity severity) {
  const auto is_such = [&](const auto& item) { return item.severity == severity; };
  const long findings = std::count_if(summary.findings.begin(), summary.findings.end(), is_such),
             hazards = std::count_if(summary.hazards.begin(), summary.hazards.end(), is_such);
  std::string words;
  if (findings > 0) words = counted(static_cast<std::size_t>(findings), "finding");
  if (hazards > 0)
    words += (words.empty() ? "" : " and ") + counted(static_cast<std::size_t>(hazards), "hazard");
  return words;
}

// " Worst: left back, 112 % of 4.0 kPa (30 mmHg)."; empty when no finding lies above a limit.
std::string worst_words(const Summary& summary) {
  const Finding* worst = nullptr;
  for (const Finding& finding : summary.findings)
    if (finding.severity >= Severity::kAboveLimit && finding.share_of_limit > 0.0 &&
        (!worst || finding.share_of_limit > worst->share_of_limit))
      worst = &finding;
  if (!worst) return "";
  return " Worst: " + place_text(*worst) + ", " + share_text(worst->share_of_limit) +
         (worst->measured ? " of " + amount_text(worst->measured->amount, worst->measured->limit)
                          : " of its limit") +
         ".";
}

std::string verdict_words(const Summary& summary) {
  const std::string above = how_many(summary, Severity::kAboveLimit);
  if (summary.worst == Severity::kStop) {
    const std::string stops = how_many(summary, Severity::kStop);
    return "STOP: this device must not be worn as planned. " + stops +
           (stops.starts_with("1 ") && stops.find(" and ") == std::string::npos ? " says" : " say") +
           " stop" + (above.empty() ? "" : "; above a limit: " + above) + "." + worst_words(summary) +
           " This note may go with tests off the body only.";
  }
  if (summary.worst == Severity::kAboveLimit)
    return "ABOVE LIMIT: " + above + "." + worst_words(summary) +
           " Change the plan before anyone wears the device.";
  if (summary.calibration)
    return "Nothing predicted exceeds the limits used. The limits are judgement, and the model is calibrated "
           "on a bench only; this is not approval to wear the device.";
  return "Nothing predicted exceeds the limits used. The limits are judgement and the model is not "
         "calibrated; this is not approval to wear the device.";
}

std::string sites_words(const Summary& summary) {
  if (summary.sites_confirmed)
    return summary.sites_confirmed->who + " gave their word on " + summary.sites_confirmed->when +
           " that no other bony or nerve site lies under the device: " + summary.sites_confirmed->why;
  return "Nobody has said where the bones and nerves of this body lie, so " +
         (summary.bone_anywhere ? "bone is taken to lie " + fixed_text(*summary.bone_anywhere / mm, 0) +
                                      " mm under the skin and "
                                : std::string()) +
         "the limit over bone holds everywhere.";
}

std::string cells_words(const Summary& summary, int to_fill) {
  const int missing = summary.wearers.missing();
  return std::to_string(to_fill) + (to_fill == 1 ? " empty cell is" : " empty cells are") +
         " for the study to fill, " +
         (missing == 0 ? std::string("none of them about the wearers.")
                       : std::to_string(missing) + " of them about the wearers.");
}

}  // namespace

NoteBox note_verdict(const Summary& summary, int to_fill) {
  NoteBox box{{verdict_words(summary)}};
  if (summary.limits_override) box.lines.push_back(*summary.limits_override);
  for (const std::string& words : summary.tables_differ)
    if (words != summary.limits_override) box.lines.push_back(words);
  if (summary.cleared_by)
    box.lines.push_back("Cleared by " + summary.cleared_by->name + ", " + summary.cleared_by->role + ", on " +
                        summary.cleared_by->date + ".");
  if (!summary.sites_known || summary.sites_confirmed) box.lines.push_back(sites_words(summary));
  if (!summary.tissue_confirmed)
    box.lines.push_back("The tissue row was not chosen for this part: it is not confirmed.");
  box.lines.push_back(cells_words(summary, to_fill));
  return box;
}

}  // namespace wrapgauge
