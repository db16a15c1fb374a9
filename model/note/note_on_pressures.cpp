#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/core/pressure_text.hpp"
#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

std::string band_text(const NoteExtras& extras, const std::string& chamber) {
  if (extras.bands)
    for (const NoteBand& band : extras.bands->chambers)
      if (band.chamber == chamber)
        return kpa_figure(band.peak_low) + " to " + kpa_figure(band.peak_high) + " kPa (" +
               mmhg_figure(band.peak_low) + " to " + mmhg_figure(band.peak_high) + " mmHg)";
  return "not calculated";
}

NoteTable pressures_table(const Summary& summary, const NoteExtras& extras) {
  NoteTable table{{"Chamber", "Air inside", "Mean on the skin", "Peak over 1 cm²",
                   "Band of the peak, 5 to 95 %", "Peak × " + number_text(summary.model_factor, 3)},
                  {},
                  {20, 15, 16, 15, 19, 15}};
  for (const ChamberFigures& chamber : summary.figures.chambers)
    table.rows.push_back({chamber.chamber, pressure_text(chamber.gauge), pressure_text(chamber.mean),
                          pressure_text(chamber.peak), band_text(extras, chamber.chamber),
                          pressure_text(chamber.peak * summary.model_factor)});
  return table;
}

std::string pressures_text(const Summary& summary, const NoteExtras& extras) {
  std::string text = "The highest pressure anywhere is " + pressure_text(summary.figures.peak_anywhere) +
                     ", under '" + english(summary.figures.peak_part) + "'. The model is " +
                     (summary.calibration ? calibrated_words(*summary.calibration) : "not calibrated") +
                     ", so the peak times " + number_text(summary.model_factor, 3) +
                     " is held against the limits. ";
  text += summary.mesh_error
              ? "A coarser mesh moves the peak by " +
                    pressure_text(Pressure(std::abs(summary.mesh_error->peak_difference.si()))) + ". "
              : "The error of the mesh was not calculated. ";
  text += extras.bands ? extras.bands->words + " " : "The spread of the inputs was not calculated. ";
  return text +
         (extras.ceiling ? extras.ceiling->words : "The highest inflation within limits was not calculated.");
}

NoteTable limits_table(const Summary& summary) {
  NoteTable table{{"Place", "Warning", "Limit", "How long", "Status and source"}, {}, {15, 14, 14, 29, 28}};
  for (const LimitRow& row : summary.rows_in_use)
    table.rows.push_back({english(site_words(row.site)), pressure_text(row.warn), pressure_text(row.limit),
                          english(times_words(row.times)), row.status + "; " + row.source});
  return table;
}

std::string girth_text(const Summary& summary) {
  const bool round = std::any_of(summary.rows_in_use.begin(), summary.rows_in_use.end(),
                                 [](const LimitRow& row) { return row.site == SiteClass::kCircumferential; });
  return "The device presses on up to " + fixed_text(100.0 * summary.figures.share_of_girth, 0) +
         " % of a girth, so the row for a cuff round the limb " + (round ? "holds." : "does not hold.") +
         " Limit set: " + summary.limits_name + ". No row is a proven threshold; people differ.";
}

// In a narrow column pressure times time stands in kPa·min alone; the box on top has both units.
std::string in_column(const Measured& measured, const std::string& text) {
  return measured.amount == Amount::kExposure ? text.substr(0, text.find(" (")) : text;
}

// Where nothing was measured against a limit, the sentence says what there is to say.
std::vector<std::string> finding_row(const Finding& finding) {
  const std::string place = marked(finding.severity, place_text(finding));
  if (!finding.measured) return {place, without_source(english(finding.sentence))};
  const Measured& measured = *finding.measured;
  const std::string row = english(measured.row);
  const double share = said_share(finding);
  const std::string cause(cause_text(finding.cause)), action = english(finding.action);
  return {place,
          in_column(measured, amount_text(measured.amount, measured.predicted)),
          in_column(measured, amount_text_against(measured.amount, measured.with_factor, measured.limit)),
          in_column(measured, limit_text_beside(measured.amount, measured.limit, measured.with_factor)) +
              (row.empty() ? "" : ", " + row),
          share_text(share),
          cause.empty() ? "–" : cause,
          action.empty() ? "–" : action};
}

NoteTable findings_table(const Summary& summary) {
  NoteTable table{{"Where", "Predicted", "With the factor", "Limit and row", "Share", "Cause", "What to do"},
                  {},
                  {16, 15, 15, 17, 8, 11, 18}};
  for (const Finding& finding : summary.findings) table.rows.push_back(finding_row(finding));
  return table;
}

}  // namespace

NoteBlocks note_on_pressures(const Summary& summary, const NoteExtras& extras) {
  NoteBlocks blocks{
      NoteHeading{"4. Predicted pressure on the skin"},
      NotePicture{
          kPictureOfPressure,
          "Left: the device laid flat, with the pressure on the skin. Right: the peak while it fills; "
          "the line is the limit over the factor."},
      pressures_table(summary, extras),
      NoteText{pressures_text(summary, extras)},
      NoteHeading{"5. Limits used"},
      limits_table(summary),
      NoteText{girth_text(summary)},
      NoteHeading{"6. Findings"}};
  if (summary.findings.empty())
    blocks.push_back(NoteText{"There are none. That is no evidence that the device is harmless."});
  else
    blocks.push_back(findings_table(summary));
  return blocks;
}

}  // namespace wrapgauge
