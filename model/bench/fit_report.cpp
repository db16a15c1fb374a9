#include "model/bench/fit_report.hpp"

#include <cmath>

#include "model/core/csv_text.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

std::string value_text(const FittedParameter& one, double value) {
  return is_factor(one.which) ? number_text(value, 3) : fixed_text(value, 2) + " mm";
}

std::string band_text(const FittedParameter& one, double low, double high) {
  return value_text(one, low) + " to " + value_text(one, high);
}

Phrase parameter_sentence(const FittedParameter& one) {
  const Phrase name = parameter_title(one.which);
  if (!one.told) return Phrase::worded("%1: these readings do not tell; as in the plan.", {name});
  const auto figures = [&](double value) { return figures_of(value_text(one, value)); };
  const std::vector<Phrase> values = {name,
                                      figures(one.value),
                                      figures(one.low),
                                      figures(one.high),
                                      figures(one.drawn_low),
                                      figures(one.drawn_high)};
  return is_factor(one.which)
             ? Phrase::worded("%1: times %2, 95 % band %3 to %4 (bootstrap %5 to %6).", values)
             : Phrase::worded("%1: %2 thicker than drawn, 95 % band %3 to %4 (bootstrap %5 to %6).", values);
}

Phrase outlier_sentence(const BenchResult& result) {
  std::string names;
  for (const FittedReading& one : result.fit.readings)
    if (one.outlier)
      names += (names.empty() ? "" : ", ") + ("'" + result.readings.rows[one.row].id + "'") + " (" +
               fixed_text(one.standard, 1) + ")";
  if (names.empty()) return Phrase::worded("No reading lies more than 3 standard errors off.");
  return Phrase::worded("More than 3 standard errors off, kept in the fit: %1. Read them again.",
                        {name_of(names)});
}

Phrase misfit_sentence(const BenchFit& fit) {
  const Phrase times = figures_of(number_text(std::sqrt(fit.misfit), 2));
  return fit.widened > 1.0
             ? Phrase::worded(
                   "Readings scatter by %1 times the standard errors stated, so the bands were "
                   "widened by as much.",
                   {times})
             : Phrase::worded("Readings scatter by %1 times the standard errors stated.", {times});
}

std::optional<Phrase> errors_sentence(const Readings& readings) {
  std::string usual;
  for (int k = 0; k < kReadingKinds; ++k) {
    const auto kind = static_cast<ReadingKind>(k);
    bool there = false;
    for (const Reading& row : readings.rows) there = there || row.kind == kind;
    if (!there || readings.instrument(kind).error_is_said) continue;
    if (!usual.empty()) usual += ", ";
    usual.append(kind_name(kind))
        .append(" ")
        .append(number_text(100.0 * default_error(kind), 3))
        .append(" %");
  }
  if (usual.empty()) return std::nullopt;
  return Phrase::worded("Standard errors not stated, taken as usual (judgement): %1.", {name_of(usual)});
}

Phrase seam_sentence(const SeamHold& hold) {
  const Phrase holds = figures_of(number_text(hold.holds / N_per_mm, 3) + " N/mm");
  return hold.readings == 1
             ? Phrase::worded("Seams are taken to hold %1, from 1 peeled sample.", {holds})
             : Phrase::worded("Seams are taken to hold %1, from the weakest of %2 peeled samples.",
                              {holds, figures_of(hold.readings)});
}

NoteTable parameters_table(const BenchFit& fit) {
  NoteTable table{{"What", "Value", "95 % band", "By drawing anew"}, {}, {34, 18, 24, 24}};
  for (const FittedParameter& one : fit.parameters)
    table.rows.push_back({english(parameter_title(one.which)),
                          one.told ? value_text(one, one.value) : "not told",
                          one.told ? band_text(one, one.low, one.high) : "-",
                          one.told ? band_text(one, one.drawn_low, one.drawn_high) : "-"});
  return table;
}

NoteTable readings_table(const BenchResult& result) {
  NoteTable table{{"Reading", "Kind", "Read", "Predicted", "Fitted", "Standard errors off"},
                  {},
                  {16, 12, 22, 20, 20, 10}};
  for (const FittedReading& one : result.fit.readings) {
    const Reading& row = result.readings.rows[one.row];
    table.rows.push_back({row.id, std::string(kind_name(row.kind)), read_text(row, one.read),
                          read_text(row, one.nominal), read_text(row, one.fitted),
                          fixed_text(one.standard, 1) + (one.outlier ? ", outlier" : "")});
  }
  return table;
}

}  // namespace

std::vector<Phrase> fit_words(const BenchResult& result) {
  std::vector<Phrase> words{result.model_factor.why};
  if (!result.readings.remark.empty())
    words.push_back(Phrase::worded("Remark on the readings: %1", {name_of(result.readings.remark)}));
  for (const FittedParameter& one : result.fit.parameters) words.push_back(parameter_sentence(one));
  for (const Phrase& sentence : result.fit.cannot_tell) words.push_back(sentence);
  words.push_back(misfit_sentence(result.fit));
  words.push_back(outlier_sentence(result));
  if (auto errors = errors_sentence(result.readings)) words.push_back(*errors);
  if (result.calibration.seams) words.push_back(seam_sentence(*result.calibration.seams));
  if (result.fit.factors.tissue != result.calibration.factors.tissue)
    words.push_back(Phrase::worded("The dummy's tissue is its own: the plan keeps that of its row."));
  return words;
}

std::string fitted_readings_csv(const BenchResult& result) {
  std::string text = "id,kind,unit,read,predicted,fitted,standard_errors_off,outlier\n";
  for (const FittedReading& one : result.fit.readings) {
    const Reading& row = result.readings.rows[one.row];
    const ReadingField field = read_field(row.kind);
    text += csv_field(row.id);
    text.append(1, ',').append(kind_name(row.kind)).append(1, ',').append(field_unit(field));
    for (const double si : {one.read, one.nominal, one.fitted})
      text.append(1, ',').append(number_text(field_value(field, si), 5));
    text.append(1, ',').append(fixed_text(one.standard, 2)).append(one.outlier ? ",yes\n" : ",no\n");
  }
  return text;
}

Note fit_note(const BenchResult& result, const std::string& plan) {
  Note note{plan + ": fit to bench readings", result.readings.date, {}};
  NoteBox box{{"Calibrated: predictions are multiplied by " +
               number_text(result.calibration.model_factor, 3) + " before they are held against a limit."}};
  box.lines.push_back(english(result.model_factor.why));
  if (!result.readings.remark.empty()) box.lines.push_back(result.readings.remark);
  note.blocks.push_back(box);
  note.blocks.push_back(NoteText{"Fitted on " + std::to_string(result.fit.readings.size()) + " of " +
                                 std::to_string(result.readings.rows.size()) + " readings (" +
                                 result.calibration.kinds + ") in " + result.readings.file +
                                 ". Not a medical device; no pressure is shown to be harmless."});
  note.blocks.push_back(NoteHeading{"1. What the readings made of the plan"});
  note.blocks.push_back(parameters_table(result.fit));
  std::vector<std::string> words = english(fit_words(result));
  words.erase(words.begin());
  note.blocks.push_back(NoteList{words});
  note.blocks.push_back(NoteHeading{"2. Predicted against read"});
  note.blocks.push_back(NotePicture{kPictureOfPlace,
                                    "Fitted against read; line: agreement; grey: twice the "
                                    "largest standard error."});
  note.blocks.push_back(NotePicture{kPictureOfPressure, "What is left, in standard errors, by kind."});
  note.blocks.push_back(NoteHeading{"3. Readings"});
  note.blocks.push_back(readings_table(result));
  return note;
}

}  // namespace wrapgauge
