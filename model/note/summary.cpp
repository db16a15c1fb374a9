#include "model/note/summary.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/markdown_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/core/pressure_text.hpp"
#include "model/note/cautions.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

std::string both_units(Pressure pressure) {
  return kpa_figure(pressure) + " (" + mmhg_figure(pressure) + ")";
}

std::string list(const std::vector<std::string>& items) {
  std::string text;
  for (const std::string& item : items) text += "- " + markdown_text(item) + "\n";
  return text;
}

std::string finding_mark(Severity severity) {
  if (severity == Severity::kStop) return "**STOP: not to be worn** ";
  if (severity == Severity::kAboveLimit) return "**ABOVE LIMIT** ";
  return severity == Severity::kWarn ? "**Warning** " : "Note: ";
}

std::string findings_section(const Summary& summary) {
  std::string text = "## Findings\n\n";
  if (summary.limit_point) text += "- **Not reached** " + markdown_text(*summary.limit_point) + "\n";
  for (const Finding& finding : summary.findings)
    text += "- " + finding_mark(finding.severity) + markdown_text(english(finding.sentence)) + "\n";
  if (summary.findings.empty())
    text += "- Nothing predicted is above a limit of the set. That is no evidence that it is harmless.\n";
  return text;
}

std::string hazards_section(const Summary& summary) {
  std::string text = "## Other hazards\n\n";
  for (const Hazard& hazard : summary.hazards)
    text += "- " + (hazard.severity == Severity::kNote ? "" : finding_mark(hazard.severity)) +
            markdown_text(english(hazard.name)) + ": " + markdown_text(english(hazard.sentence)) +
            " Control: " + markdown_text(english(hazard.control)) + "\n";
  return text;
}

std::string chamber_row(const ChamberFigures& chamber) {
  return "| " + markdown_text(chamber.chamber) + " | " + both_units(chamber.gauge) + " | " +
         fixed_text(chamber.volume / mL, 1) + " | " + both_units(chamber.mean) + " | " +
         both_units(chamber.peak) + " | " + fixed_text(chamber.contact_area / cm2, 1) + " of " +
         fixed_text(chamber.drawn_area / cm2, 1) + " | " + fixed_text(chamber.force / newton, 1) + " | " +
         fixed_text(chamber.stretch_max, 2) + " | " + fixed_text(chamber.indentation_max / mm, 1) + " |\n";
}

std::string mesh_error_words(const Summary& summary) {
  if (!summary.mesh_error)
    return "The mesh error is not known: the job was not solved on a second, coarser mesh.";
  const MeshError& error = *summary.mesh_error;
  return "Against a mesh of " + fixed_text(error.coarse_edge / mm, 1) + " mm instead of " +
         fixed_text(summary.mesh.edge / mm, 1) + " mm, chamber means move by up to " +
         fixed_text(std::abs(error.worst_mean_difference / kPa), 2) + " kPa and the peak by " +
         fixed_text(std::abs(error.peak_difference / kPa), 2) + " kPa.";
}

std::string pressures_section(const Summary& summary) {
  std::string text = "## Predicted pressures, kPa (mmHg)\n\n";
  text +=
      "| chamber | gauge | mL | mean on the skin | peak over 1 cm² | touching, cm² | force, N | stretch | "
      "indentation, mm |\n|---|---|---|---|---|---|---|---|---|\n";
  for (const ChamberFigures& chamber : summary.figures.chambers) text += chamber_row(chamber);
  text += "\nHighest anywhere over 1 cm²: " + pressure_text(summary.figures.peak_anywhere) + ", at " +
          markdown_text(english(summary.figures.peak_part)) + ". Pressed share of the girth: up to " +
          fixed_text(100.0 * summary.figures.share_of_girth, 0) +
          " %. Mean = contact force over the chamber's area as drawn.\n\n";
  text += mesh_error_words(summary) + " The model is " +
          (summary.calibration ? markdown_text(calibrated_words(*summary.calibration)) : "not calibrated") +
          ": " + number_text(summary.model_factor, 3) +
          " times these pressures is what is held against the limits.\n";
  return text;
}

std::string seams_section(const ContactFigures& figures) {
  constexpr std::size_t kShown = 6;
  if (figures.seams.empty()) return "";
  std::string text =
      "## Seams, most loaded first\n\n| seam | largest, N/mm | mean along it | largest / mean | where, mm | "
      "sheet "
      "|\n|---|---|---|---|---|---|\n";
  for (std::size_t k = 0; k < std::min(kShown, figures.seams.size()); ++k) {
    const SeamFigures& seam = figures.seams[k];
    text += "| " + markdown_text(english(seam.seam)) + " | " + number_text(seam.largest / N_per_mm, 2) +
            " | " + number_text(seam.mean / N_per_mm, 2) + " | " + fixed_text(seam.concentration, 1) + " | " +
            fixed_text(seam.at_flat_m.x() * 1e3, 0) + ", " + fixed_text(seam.at_flat_m.y() * 1e3, 0) + " | " +
            english(seam.sheet) + " |\n";
  }
  return text + "\nWhat a seam holds is not known here; seams are ranked by tension alone.\n\n";
}

std::string both_ways(Pressure shown, Pressure other) {
  const double percent = other.si() != 0.0 ? 100.0 * (shown / other - 1.0) : 0.0;
  return fixed_text(shown / kPa, 2) + " | " + fixed_text(other / kPa, 2) + " | " +
         (percent < 0.0 ? "−" : "+") + fixed_text(std::abs(percent), 0) + " % |";
}

std::string comparison_section(const FiguresDifference& difference) {
  std::string text = "## Against " + markdown_text(difference.other) + "\n\n";
  if (!difference.problem.empty()) return text + "Not known: " + markdown_text(difference.problem) + "\n\n";
  text +=
      "| chamber | mean shown, kPa | mean otherwise | difference | peak shown, kPa | peak otherwise | "
      "difference "
      "|\n|---|---|---|---|---|---|---|\n";
  for (const ChamberDifference& chamber : difference.chambers)
    text += "| " + markdown_text(chamber.chamber) + " | " + both_ways(chamber.mean, chamber.mean_other) +
            " " + both_ways(chamber.peak, chamber.peak_other) + "\n";
  return text + "\nHighest anywhere over 1 cm²: " + fixed_text(difference.peak_anywhere / kPa, 2) +
         " kPa as shown, " + fixed_text(difference.peak_anywhere_other / kPa, 2) + " kPa otherwise.\n\n";
}

std::string percent(double share) {
  return number_text(100.0 * share, 2) + " %";
}

std::string balance_section(const Summary& summary) {
  const Audit& audit = summary.audit;
  std::string text = "## Does it balance\n\n";
  text += "Contact forces left over across the axis " + percent(audit.lateral_balance) + ", along it " +
          percent(audit.axial_balance) + " of their sum. ";
  if (audit.cuts > 0)
    text += "On " + std::to_string(audit.cuts) +
            " cuts through the worn device, contact against sheet tension and chamber pressure: within " +
            percent(audit.cut_balance) + ". ";
  text += "The taper pushes it along the limb with " +
          fixed_text(std::abs(audit.push_along_axis / newton), 1) + " N towards the " +
          (audit.push_along_axis.si() < 0.0 ? "distal" : "proximal") +
          " end; friction or a strap has to hold that.\n";
  return text;
}

std::string cautions_section(const Summary& summary) {
  const Cautions all = cautions(summary.part, summary.calibration.has_value());
  std::string text = "## Cautions\n\n" + all.standing + " **" + all.never + "**\n";
  if (!all.of_part.empty()) text += "\nOn this part of the body:\n" + list(all.of_part);
  return text + "\nEvery time it goes on:\n" + list(all.every_time) + "\nWho must not take part:\n" +
         list(all.not_for) + "\nVent it, open the closure and take it off at once on:\n" +
         list(all.stop_signs) + "\n" + all.ask + "\n";
}

std::string inputs_section(const Summary& summary) {
  std::string text = "## What was assumed\n\n" + list(summary.assumed) + "\n";
  text +=
      "Wrapgauge " + summary.program_version + "; " + std::to_string(summary.mesh.nodes) + " nodes. Inputs:";
  for (const InputFile& input : summary.inputs)
    text += " " + input.role + " " + markdown_text(input.name) + " (SHA-256 " + input.sha256.substr(0, 12) +
            ")" + (&input == &summary.inputs.back() ? "." : ";");
  return text + "\n";
}

}  // namespace

std::string_view status_text(const Summary& summary) {
  if (summary.worst == Severity::kStop) return "stopped: not to be worn";
  return summary.worst == Severity::kAboveLimit ? "done, above a limit" : "done";
}

std::string summary_markdown(const Summary& summary) {
  std::string text = "# " + markdown_text(summary.plan) + ": predicted contact pressure\n\n";
  text += "**" + markdown_text(english(verdict(summary))) + "**\n\n";
  text += list(not_the_programs_own(summary));
  text += "Status: " + std::string(status_text(summary)) + ".\n\n";
  text += list(summary.worn) + "\n";
  text += findings_section(summary) + "\n";
  text += hazards_section(summary) + "\n";
  text += pressures_section(summary) + "\n";
  text += seams_section(summary.figures);
  for (const FiguresDifference& difference : summary.comparisons) text += comparison_section(difference);
  text += balance_section(summary) + "\n";
  text += cautions_section(summary) + "\n";
  text += inputs_section(summary);
  return text;
}

}  // namespace wrapgauge
