#include "app/command/estimate_report.hpp"

#include "app/command/wrapped_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMark = 13;    // columns of "above limit", so that cards stand below each other
constexpr std::size_t kFigure = 13;  // columns of "12.3 (92)" and a gap

std::string figure(Pressure pressure) {
  return right_aligned(kpa_figure(pressure) + " (" + mmhg_figure(pressure) + ")", kFigure);
}

// A name that leaves no room for its figures stands on a line of its own.
std::string chamber_line(const std::string& name, const std::string& figures) {
  constexpr std::size_t kName = kColumns - 4 * kFigure;
  if (columns_of(name) < kName) return left_aligned(name, kName) + figures + "\n";
  return wrapped(name) + std::string(kName, ' ') + figures + "\n";
}

std::string chamber_table(const Summary& summary) {
  const std::string factor = "x " + number_text(summary.model_factor, 3);
  std::string text =
      chamber_line("kPa (mmHg)", right_aligned("inside", kFigure) + right_aligned("mean on skin", kFigure) +
                                     right_aligned("worst 1 cm²", kFigure) + right_aligned(factor, kFigure));
  for (const ChamberFigures& chamber : summary.figures.chambers)
    text +=
        chamber_line(chamber.chamber, figure(chamber.gauge) + figure(chamber.mean) + figure(chamber.peak) +
                                          figure(chamber.peak * summary.model_factor));
  return text;
}

std::string comparison_lines(const Summary& summary) {
  std::string text;
  for (const FiguresDifference& difference : summary.comparisons) {
    if (!difference.problem.empty())
      text += wrapped("Against " + difference.other + ": not known: " + difference.problem, 2);
    for (const ChamberDifference& chamber : difference.chambers)
      text += wrapped(chamber.chamber + ", against " + difference.other + ": mean " +
                          fixed_text(chamber.mean_other / kPa, 2) + " kPa, worst 1 cm² " +
                          fixed_text(chamber.peak_other / kPa, 2) + " kPa",
                      2);
  }
  return text;
}

std::string marked(Severity severity, const std::string& words) {
  return wrapped(left_aligned(std::string(severity_text(severity)), kMark) + words, kMark);
}

std::string finding_card(const Finding& finding, bool full) {
  return marked(finding.severity, english(full ? finding.sentence : card_line(finding)));
}

// A hazard that is not calculated says what keeps it in check.
std::string hazard_card(const Hazard& hazard) {
  const std::string sentence = english(hazard.sentence);
  return marked(hazard.severity, english(hazard.name) + ": " + (sentence.empty() ? "" : sentence + " ") +
                                     english(hazard.control));
}

// What the others rest on, then findings and hazards alike, the gravest first.
std::string cards(const Summary& summary, bool full) {
  std::string text;
  for (const Finding& finding : summary.findings)
    if (finding.comes_first) text += finding_card(finding, full);
  for (const Severity severity : {Severity::kStop, Severity::kAboveLimit, Severity::kWarn, Severity::kNote}) {
    if (severity == Severity::kNote && !full) break;
    for (const Finding& finding : summary.findings)
      if (finding.severity == severity && !finding.comes_first) text += finding_card(finding, full);
    for (const Hazard& hazard : summary.hazards)
      if (hazard.severity == severity) text += hazard_card(hazard);
  }
  return text;
}

// What the cards leave out.
std::string notes_line(const Summary& summary) {
  int notes = 0;
  for (const Finding& finding : summary.findings)
    notes += int(finding.severity == Severity::kNote && !finding.comes_first);
  for (const Hazard& hazard : summary.hazards) notes += int(hazard.severity == Severity::kNote);
  if (notes == 0) return "";
  return wrapped(std::to_string(notes) + (notes == 1 ? " note is" : " notes are") +
                 " not listed here: see summary.md, or run with --full.");
}

std::string differing_tables(const Summary& summary) {
  std::string text;
  for (const std::string& words : not_the_programs_own(summary)) text += wrapped(words, 2);
  return text;
}

}  // namespace

std::string estimate_report(const Summary& summary, const std::filesystem::path& folder, bool full) {
  std::string text = wrapped(english(verdict(summary)));
  text += differing_tables(summary);
  if (summary.limit_point) text += wrapped("Not reached: " + *summary.limit_point);
  text += "\n" + chamber_table(summary);
  if (full) text += comparison_lines(summary);
  text += "\n" + cards(summary, full);
  if (!full) text += notes_line(summary);
  text += "\n" + wrapped("Status: " + std::string(status_text(summary)) + ".");
  return text +
         wrapped(model_words(summary.calibration) + "; not a medical device. Written to " + folder.string());
}

}  // namespace wrapgauge
