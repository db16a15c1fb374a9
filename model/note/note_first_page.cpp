#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
#include "model/note/cautions.hpp"
#include "model/note/note_pages.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostChambers = 8, kMostFindings = 6;

long count_of(const Summary& summary, Severity severity) {
  return std::count_if(summary.findings.begin(), summary.findings.end(),
                       [&](const Finding& finding) { return finding.severity == severity; }) +
         std::count_if(summary.hazards.begin(), summary.hazards.end(),
                       [&](const Hazard& hazard) { return hazard.severity == severity; });
}

std::string alert_text(const Summary& summary) {
  const long above = count_of(summary, Severity::kAboveLimit);
  const std::string more =
      std::to_string(above) + (above == 1 ? " finding lies" : " findings lie") + " above a limit";
  if (summary.worst == Severity::kStop)
    return "STOP: this device must not be worn as planned. See the findings that say stop; " + more +
           ". This note may go with tests off the body only.";
  if (summary.worst == Severity::kAboveLimit)
    return "ABOVE LIMIT: " + more + ". Change the plan before anyone wears the device.";
  return "No prediction lies above a limit of the set used. This does not show that it does no harm.";
}

// Inlets with steps of their own are told one by one, the others as the session says.
std::string session_text(const Summary& summary) {
  std::string text, own;
  std::size_t with_steps = 0;
  for (const InflatedInlet& inlet : summary.inlets) {
    if (inlet.steps.empty()) continue;
    ++with_steps;
    own += " Inlet '" + inlet.inlet + "' goes " + programme_text(inlet.steps) + ".";
  }
  if (!summary.session) return "How long and how often it is worn is not in the plan." + own;
  const Session& session = *summary.session;
  text = "It is worn for " + time_text(session.length);
  if (session.hold && with_steps < summary.inlets.size()) {
    if (with_steps > 0)
      text += "." + own, own = " The other inlets: ";
    else
      own = ", ";
    text += own + "inflated for " + time_text(*session.hold) + " and vented for " +
            time_text(session.off.value_or(Time())) + " in turn";
    own.clear();
  }
  return text + "." + own;
}

std::string worn_text(const Summary& summary) {
  std::string text;
  for (const std::string& sentence : summary.worn) text += sentence + " ";
  for (const InflatedInlet& inlet : summary.inlets)
    text += "Inlet '" + inlet.inlet + "' is filled to " + pressure_text(inlet.gauge) + ", which takes " +
            fixed_text(inlet.volume / mL, 0) + " mL. ";
  return text + session_text(summary);
}

std::string band_text(const NoteExtras& extras, const std::string& chamber) {
  if (extras.bands)
    for (const NoteBand& band : extras.bands->chambers)
      if (band.chamber == chamber)
        return kpa_figure(band.peak_low) + " to " + kpa_figure(band.peak_high) + " kPa (" +
               mmhg_figure(band.peak_low) + " to " + mmhg_figure(band.peak_high) + " mmHg)";
  return "not worked out";
}

// The most pressed chambers, in the layout's order.
std::vector<ChamberFigures> shown_chambers(const Summary& summary) {
  std::vector<ChamberFigures> shown = summary.figures.chambers;
  if (shown.size() <= kMostChambers) return shown;
  std::vector<Pressure> peaks;
  for (const ChamberFigures& chamber : shown) peaks.push_back(chamber.peak);
  std::nth_element(peaks.begin(), peaks.begin() + kMostChambers - 1, peaks.end(), std::greater<>());
  std::erase_if(shown,
                [&](const ChamberFigures& chamber) { return chamber.peak < peaks[kMostChambers - 1]; });
  shown.resize(std::min(shown.size(), kMostChambers));
  return shown;
}

NoteTable pressures_table(const Summary& summary, const NoteExtras& extras) {
  NoteTable table{{"Chamber", "Air inside", "Mean on the skin", "Peak over 1 cm²",
                   "Band of the peak, 5 to 95 %", "Peak × " + number_text(summary.model_factor, 3)},
                  {},
                  {18, 16, 16, 16, 18, 16}};
  for (const ChamberFigures& chamber : shown_chambers(summary))
    table.rows.push_back({chamber.chamber, pressure_text(chamber.gauge), pressure_text(chamber.mean),
                          pressure_text(chamber.peak), band_text(extras, chamber.chamber),
                          pressure_text(chamber.peak * summary.model_factor)});
  return table;
}

std::string pressures_text(const Summary& summary, const NoteExtras& extras) {
  const std::size_t left_out = summary.figures.chambers.size() - shown_chambers(summary).size();
  std::string text;
  if (left_out > 0) text += std::to_string(left_out) + " less pressed chambers stand in summary.md only. ";
  text += "The highest pressure anywhere is " + pressure_text(summary.figures.peak_anywhere) + ", under '" +
          english(summary.figures.peak_part) + "'. The model is not calibrated, so peak times " +
          number_text(summary.model_factor, 3) + " is held against the limits. ";
  text += summary.mesh_error
              ? "A coarser mesh moves the peak by " +
                    pressure_text(Pressure(std::abs(summary.mesh_error->peak_difference.si()))) + ". "
              : "The error of the mesh was not worked out. ";
  text += extras.bands ? extras.bands->words + " " : "The spread of the inputs was not worked out. ";
  return text +
         (extras.ceiling ? extras.ceiling->words : "The highest inflation within limits was not worked out.");
}

NoteTable limits_table(const Summary& summary) {
  NoteTable table{{"Place", "Warning", "Limit", "How long", "Status and source"}, {}, {16, 12, 12, 32, 28}};
  for (const LimitRow& row : summary.rows_in_use)
    table.rows.push_back({english(site_words(row.site)), pressure_text(row.warn), pressure_text(row.limit),
                          english(times_words(row.times)), row.status + "; " + row.source});
  return table;
}

// "2 warnings, at 'a', 'b'"
std::string left_out_text(const std::vector<const Finding*>& left_out, Severity severity) {
  constexpr std::size_t kNamed = 6;
  std::vector<std::string> places;
  std::size_t count = 0;
  for (const Finding* finding : left_out) {
    if (finding->severity != severity) continue;
    ++count;
    if (std::find(places.begin(), places.end(), finding->where) == places.end())
      places.push_back(finding->where);
  }
  if (count == 0) return "";
  std::string text = std::to_string(count);
  text += severity == Severity::kStop         ? " that say stop"
          : severity == Severity::kAboveLimit ? " above a limit"
          : count == 1                        ? " warning"
                                              : " warnings";
  text += ", at ";
  for (std::size_t i = 0; i < std::min(places.size(), kNamed); ++i)
    text.append(i ? ", '" : "'").append(places[i]).append("'");
  if (places.size() > kNamed) text += " and " + std::to_string(places.size() - kNamed) + " more places";
  return text;
}

NoteList findings_list(const Summary& summary) {
  NoteList list;
  std::vector<const Finding*> left_out;
  for (const Finding& finding : summary.findings) {
    if (finding.severity == Severity::kNote) continue;
    if (list.items.size() == kMostFindings) {
      left_out.push_back(&finding);
      continue;
    }
    std::string mark(severity_text(finding.severity));
    mark[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(mark[0])));
    list.items.push_back(mark + ": " + without_source(english(finding.sentence)));
  }
  if (!left_out.empty()) {
    std::string words;
    for (const Severity severity : {Severity::kStop, Severity::kAboveLimit, Severity::kWarn})
      if (const std::string some = left_out_text(left_out, severity); !some.empty())
        words += (words.empty() ? "" : "; ") + some;
    list.items.push_back(std::to_string(left_out.size()) + " more are left out here: " + words +
                         ". All stand in full in summary.md, written by wrapgauge estimate.");
  }
  if (list.items.empty()) list.items.push_back("None above a warning.");
  return list;
}

std::string girth_text(const Summary& summary) {
  const bool round = std::any_of(summary.rows_in_use.begin(), summary.rows_in_use.end(),
                                 [](const LimitRow& row) { return row.site == SiteClass::kCircumferential; });
  return "The device presses on up to " + fixed_text(100.0 * summary.figures.share_of_girth, 0) +
         " % of a girth, so the row for a cuff round the limb " + (round ? "holds." : "does not hold.");
}

}  // namespace

std::string without_source(const std::string& sentence) {
  std::string text = sentence;
  for (const char* status :
       {" (judgement", " (confirmed", " (from memory", " (derived", " (common practice"}) {
    for (std::size_t at; (at = text.find(status)) != std::string::npos;) {
      std::size_t end = at + 1;
      int depth = 0;
      do {
        depth += text[end] == '(' ? 1 : text[end] == ')' ? -1 : 0;
        ++end;
      } while (depth > 0 && end < text.size());
      text.erase(at, end - at);
    }
  }
  return text;
}

NotePage note_first_page(const Summary& summary, const NoteExtras& extras) {
  NotePage page;
  page.blocks.push_back(NoteText{alert_text(summary), true});
  if (summary.limits_override) page.blocks.push_back(NoteText{*summary.limits_override, true});
  page.blocks.push_back(NoteTable{{"Study", "Responsible person", "Ethics reference", "Date and signature"},
                                  {{"", "", "", ""}},
                                  {28, 24, 24, 24}});
  page.blocks.push_back(NoteHeading{"1. What is worn and where"});
  page.blocks.push_back(NoteText{worn_text(summary)});
  page.blocks.push_back(
      NotePicture{kNotePicture,
                  "Worn, flat, and the peak on the skin while it fills. Line: here the peak times the "
                  "model factor meets the limit. Hatched: above it."});
  page.blocks.push_back(NoteHeading{"2. Predicted pressure on the skin"});
  page.blocks.push_back(pressures_table(summary, extras));
  page.blocks.push_back(NoteText{pressures_text(summary, extras)});
  page.blocks.push_back(NoteHeading{"3. Limits used"});
  page.blocks.push_back(limits_table(summary));
  page.blocks.push_back(NoteText{girth_text(summary) + " Set: " + summary.limits_name +
                                 ". No row is a proven threshold; people differ."});
  page.blocks.push_back(NoteHeading{"4. Findings"});
  page.blocks.push_back(findings_list(summary));
  return page;
}

}  // namespace wrapgauge
