#include "model/note/verdict.hpp"

#include <algorithm>

#include "model/core/beside_limit.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

int number_with(const Summary& summary, Severity severity) {
  const auto is = [&](const auto& one) { return one.severity == severity; };
  return static_cast<int>(std::count_if(summary.findings.begin(), summary.findings.end(), is) +
                          std::count_if(summary.hazards.begin(), summary.hazards.end(), is));
}

// The gravest finding of that severity, whose list is sorted; a hazard where no finding is as grave.
Phrase worst_place(const Summary& summary, Severity severity) {
  for (const Finding& finding : summary.findings) {
    if (finding.severity != severity) continue;
    if (!finding.measured || finding.share_of_limit <= 0.0) return place_of(finding);
    return Phrase::worded("%1, %2 of %3", {place_of(finding), percent_beside(said_share(finding)),
                                           figures_of(*finding.measured).limit});
  }
  for (const Hazard& hazard : summary.hazards)
    if (hazard.severity == severity) return hazard.name;
  return Phrase::worded("not named");
}

MeasuredFigures in_units(const Measured& measured, int decimals, const char* unit, double scale) {
  const auto shown = [&](double value) {
    return figures_of(number_beside(scale * value, scale * measured.limit, decimals) + unit);
  };
  return {shown(measured.predicted), shown(measured.with_factor), shown(measured.limit)};
}

bool has_factor(const Measured& measured) {
  return measured.amount == Amount::kPressure || measured.amount == Amount::kExposure;
}

bool is_test_object(const Summary& summary) {
  return summary.part && !is_worn(*summary.part);
}

}  // namespace

std::vector<std::string> not_the_programs_own(const Summary& summary) {
  std::vector<std::string> words = summary.tables_differ;
  if (summary.limits_override) words.insert(words.begin(), *summary.limits_override);
  return words;
}

Phrase place_of(const Finding& finding) {
  const bool named = !finding.place.text.empty() || !finding.place.values.empty();
  return named ? finding.place : name_of(finding.where);
}

MeasuredFigures figures_of(const Measured& measured) {
  switch (measured.amount) {
    case Amount::kStrain:
      return in_units(measured, 0, " %", 100.0);
    case Amount::kStretch:
      return in_units(measured, 2, "", 1.0);
    case Amount::kExposure:
      return in_units(measured, 1, " kPa·min", 1.0 / kPa_min.si());
    case Amount::kPressure:
      break;
  }
  const Pressure limit(measured.limit);
  return {figures_of(Pressure(measured.predicted)), figures_beside(Pressure(measured.with_factor), limit),
          limit_figures(limit)};
}

Phrase measured_words(const Measured& measured) {
  const MeasuredFigures figures = figures_of(measured);
  return has_factor(measured) ? Phrase::worded("%1, with the factor %2, limit %3",
                                               {figures.predicted, figures.with_factor, figures.limit})
                              : Phrase::worded("%1, limit %2", {figures.predicted, figures.limit});
}

Phrase cause_and_action(const Finding& finding) {
  std::vector<Phrase> words;
  if (finding.cause != Cause::kNone)
    words.push_back(Phrase::worded("Cause: %1.", {table_words(std::string(cause_text(finding.cause)))}));
  if (finding.action != Phrase{}) words.push_back(finding.action);
  return in_a_row(std::move(words));
}

double said_share(const Finding& finding) {
  if (!finding.measured || finding.measured->limit <= 0.0) return finding.share_of_limit;
  return finding.measured->with_factor / finding.measured->limit;
}

Phrase card_line(const Finding& finding) {
  if (!finding.measured) return finding.sentence;
  return in_a_row({Phrase::worded("%1: %2: %3.", {place_of(finding), measured_words(*finding.measured),
                                                  percent_beside(said_share(finding))}),
                   cause_and_action(finding)});
}

Phrase verdict(const Summary& summary) {
  if (const int stops = number_with(summary, Severity::kStop); stops > 0) {
    const std::vector<Phrase> values = {figures_of(stops), worst_place(summary, Severity::kStop)};
    return stops == 1 ? Phrase::worded("Do not wear it like this: %2.", values)
                      : Phrase::worded("Do not wear it like this, for %1 reasons; first: %2.", values);
  }
  if (const int above = number_with(summary, Severity::kAboveLimit); above > 0) {
    const std::vector<Phrase> values = {figures_of(above), worst_place(summary, Severity::kAboveLimit)};
    return above == 1 ? Phrase::worded("Above the limit in 1 place: %2.", values)
                      : Phrase::worded("Above the limit in %1 places; worst: %2.", values);
  }
  if (is_test_object(summary))
    return Phrase::worded("A test object: no limit for skin or tissue was applied.");
  if (summary.calibration)
    return Phrase::worded(
        "Nothing predicted exceeds the limits used. The limits are judgement, and the model is calibrated on "
        "a "
        "bench only; this is not approval to wear the device.");
  return Phrase::worded(
      "Nothing predicted exceeds the limits used. The limits are judgement and the model is not calibrated; "
      "this is not approval to wear the device.");
}

}  // namespace wrapgauge
