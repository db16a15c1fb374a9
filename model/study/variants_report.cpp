#include "model/study/variants_report.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "model/core/csv_text.hpp"
#include "model/core/markdown_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/version.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kClosing =
    "Predicted by an uncalibrated model; not a medical device. Before anyone wears one of them: estimate it "
    "on "
    "its own mesh, ask a clinician.";

std::size_t count_of(const VaryResult& result, bool (*which)(const VariantAnswer&)) {
  return static_cast<std::size_t>(std::count_if(result.answers.begin(), result.answers.end(), which));
}

bool is_above(const VariantAnswer& answer) {
  return !answer.failed && answer.exit_code != 0;
}
bool must_not_be_worn(const VariantAnswer& answer) {
  return !answer.failed && answer.exit_code == 5;
}
bool is_within(const VariantAnswer& answer) {
  return !answer.failed && answer.exit_code == 0;
}
bool has_none(const VariantAnswer& answer) {
  return answer.failed.has_value();
}

std::string are(std::size_t count) {
  return std::to_string(count) + (count == 1 ? " is " : " are ");
}

std::string verdict_sentence(const VaryResult& result) {
  const std::size_t above = count_of(result, is_above), none = count_of(result, has_none);
  const std::size_t stopped = count_of(result, must_not_be_worn);
  std::string text =
      "Of " + std::to_string(result.answers.size()) + " variants " + are(above) + "above a limit";
  if (stopped > 0) text.append(" (").append(are(stopped)).append("not to be worn as planned)");
  text.append(" and ").append(are(count_of(result, is_within)));
  text.append("within the limits, as predicted on ").append(result.mesh).append("; ");
  return text + (none == 0 ? "every one has figures."
                           : std::to_string(none) + (none == 1 ? " has" : " have") + " no figures.");
}

// The variant that comes nearest to its limits, or is farthest above; or the other way round.
const VariantAnswer* extreme(const VaryResult& result, bool highest) {
  const VariantAnswer* found = nullptr;
  for (const VariantAnswer& answer : result.answers)
    if (!answer.failed && (!found || (highest ? answer.share > found->share : answer.share < found->share)))
      found = &answer;
  return found;
}

std::string share_sentence(const VaryResult& result, bool highest) {
  const VariantAnswer* answer = extreme(result, highest);
  const auto at = static_cast<std::size_t>(answer - result.answers.data());
  return std::string(highest ? "Highest" : "Lowest") + " share of a limit: " + result.variants.name(at) +
         ", " + percent_text(answer->share) + " at '" + answer->where + "'; peak over 1 cm2 " +
         pressure_text(answer->figures.whole[0] * kPa) + ".";
}

double largest(const VariantAnswer& answer, double CurvePoint::*figure) {
  double most = 0.0;
  for (const ChamberCurve& curve : answer.curves) most = std::max(most, curve.points.back().*figure);
  return most;
}

std::string csv_header(const VaryResult& result) {
  std::string line = "variant";
  for (const PathChange& change : result.variants.changes()) line.append(",").append(csv_field(change.path));
  line +=
      ",verdict,exit_code,share_of_limit,where,valve,peak_1cm2_kPa,peak_1cm2_mmHg,largest_mean_kPa,largest_"
      "mean_"
      "mmHg,share_of_girth,total_force_N,bulge_max_mm,stretch_max,cannot_hold,ceiling,reason,not_the_"
      "programs_"
      "own";
  return line + "\n";
}

std::string csv_figures(const VariantAnswer& answer) {
  if (answer.failed) return ",,,,,,,,,,,";
  const double peak = answer.figures.whole[0], mean = largest(answer, &CurvePoint::mean_kpa);
  std::string line(",");
  line.append(fixed_text(answer.share, 4)).append(",").append(csv_field(answer.where));
  line.append(",").append(answer.valve.empty() ? "" : csv_field(answer.valve));
  for (const auto& [value, decimals] : {std::pair{peak, 3},
                                        {peak * (kPa / mmHg), 1},
                                        {mean, 3},
                                        {mean * (kPa / mmHg), 1},
                                        {answer.figures.whole[1], 3},
                                        {answer.figures.whole[2], 3},
                                        {largest(answer, &CurvePoint::bulge_mm), 2},
                                        {largest(answer, &CurvePoint::stretch_max), 4}})
    line.append(",").append(fixed_text(value, decimals));
  return line;
}

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& one : words) all += (all.empty() ? "" : " ") + one;
  return all;
}

std::string csv_line(const VaryResult& result, std::size_t variant) {
  const VariantAnswer& answer = result.answers[variant];
  std::string line = result.variants.number(variant);
  for (const std::string& value : result.variants.values(variant))
    line.append(",").append(csv_field(value_words(value)));
  line.append(",").append(csv_field(verdict_words(answer)));
  line.append(",").append(std::to_string(answer.exit_code)).append(csv_figures(answer));
  for (const std::string& words : {answer.held.value_or(""), answer.ceiling ? answer.ceiling->words : "",
                                   answer.failed.value_or(""), joined(answer.limits_words)})
    line.append(",").append(words.empty() ? "" : csv_field(words));
  return line + "\n";
}

using ReportJson = nlohmann::ordered_json;

ReportJson figures_by_name(const std::vector<FigureName>& names, const std::vector<double>& values) {
  ReportJson out = ReportJson::object();
  for (std::size_t f = 0; f < names.size(); ++f) out[names[f].key] = values[f];
  return out;
}

ReportJson chambers_by_name(const VariantAnswer& answer) {
  ReportJson all = ReportJson::array();
  for (std::size_t c = 0; c < answer.curves.size(); ++c) {
    ReportJson chamber{{"chamber", answer.curves[c].chamber}};
    chamber.update(figures_by_name(chamber_figure_names(), answer.figures.chambers[c]));
    chamber["bulge_mm"] = answer.curves[c].points.back().bulge_mm;
    all.push_back(std::move(chamber));
  }
  return all;
}

ReportJson variant_to_json(const VaryResult& result, std::size_t variant) {
  const VariantAnswer& answer = result.answers[variant];
  ReportJson out{{"variant", variant + 1}, {"set", ReportJson::object()}};
  const auto values = result.variants.values(variant);
  for (std::size_t c = 0; c < values.size(); ++c)
    out["set"][result.variants.changes()[c].path] = ReportJson::parse(values[c]);
  out["verdict"] = verdict_words(answer);
  out["exit_code"] = answer.exit_code;
  out["reason"] = answer.failed ? ReportJson(*answer.failed) : ReportJson();
  if (answer.failed) return out;
  out["cannot_hold"] = answer.held ? ReportJson(*answer.held) : ReportJson();
  out["nearest"] = {{"where", answer.where},
                    {"share_of_limit", answer.share},
                    {"sentence", answer.sentence},
                    {"valve", answer.valve}};
  out["whole"] = figures_by_name(whole_figure_names(), answer.figures.whole);
  out["chambers"] = chambers_by_name(answer);
  if (!answer.ceiling) return out;
  out["ceiling"] = {{"words", answer.ceiling->words}, {"inlets", ReportJson::array()}};
  for (const CeilingInlet& inlet : answer.ceiling->inlets)
    out["ceiling"]["inlets"].push_back(
        {{"inlet", inlet.inlet}, {"gauge_kPa", inlet.gauge / kPa}, {"volume_mL", inlet.volume / mL}});
  return out;
}

// Of a table's cell: a bar would end it.
std::string table_cell(const std::string& text) {
  return std::string(1, ' ').append(markdown_text(text)).append(" |");
}

// Where the share of the limit is highest, and what else is wrong.
std::string place_words(const VariantAnswer& answer) {
  std::string words = answer.where;
  if (!answer.valve.empty()) words.append("; above a limit: ").append(answer.valve);
  if (answer.held) words.append(". ").append(*answer.held);
  return words;
}

std::string markdown_row(const VaryResult& result, std::size_t variant, bool with_ceiling) {
  const VariantAnswer& answer = result.answers[variant];
  std::string row("|");
  row += table_cell(result.variants.number(variant));
  for (const std::string& value : result.variants.values(variant)) row += table_cell(value_words(value));
  row += table_cell(verdict_words(answer));
  if (answer.failed)
    return row + table_cell("") + table_cell(*answer.failed) + table_cell("") + table_cell("") +
           table_cell("") + (with_ceiling ? table_cell("") : "") + "\n";
  row += table_cell(percent_text(answer.share)) + table_cell(place_words(answer)) +
         table_cell(pressure_text(answer.figures.whole[0] * kPa)) +
         table_cell(pressure_text(largest(answer, &CurvePoint::mean_kpa) * kPa)) +
         table_cell(fixed_text(largest(answer, &CurvePoint::bulge_mm), 1) + " mm, " +
                    fixed_text(100.0 * (largest(answer, &CurvePoint::stretch_max) - 1.0), 0) + " %");
  if (with_ceiling) row += table_cell(answer.ceiling ? answer.ceiling->words : "");
  return row + "\n";
}

std::string markdown_table(const VaryResult& result) {
  const bool with_ceiling =
      std::any_of(result.answers.begin(), result.answers.end(),
                  [](const VariantAnswer& answer) { return answer.ceiling.has_value(); });
  std::string head("|");
  head += table_cell("variant");
  for (const PathChange& change : result.variants.changes()) head += table_cell(change.path);
  for (const char* title : {"predicted", "share of limit", "where", "peak over 1 cm2",
                            "highest mean of a chamber", "highest bulge, largest stretch"})
    head += table_cell(title);
  if (with_ceiling) head += table_cell("highest inflation within the limits");
  std::string rule = "|";
  for (std::size_t c = 0; c < result.variants.changes().size() + (with_ceiling ? 8 : 7); ++c) rule += "---|";
  std::string rows;
  for (std::size_t v = 0; v < result.answers.size(); ++v) rows += markdown_row(result, v, with_ceiling);
  return head + "\n" + rule + "\n" + rows;
}

}  // namespace

std::string verdict_words(const VariantAnswer& answer) {
  if (answer.failed) return "no figures";
  if (answer.exit_code == 5) return "not to be worn";
  return answer.exit_code == 0 ? "within the limits, as predicted" : "above a limit";
}

std::vector<std::string> limits_words(const VaryResult& result) {
  std::vector<std::string> all;
  for (const VariantAnswer& answer : result.answers)
    for (const std::string& words : answer.limits_words)
      if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(words);
  return all;
}

int worst_exit_code(const VaryResult& result) {
  if (count_of(result, has_none) == result.answers.size()) return 3;
  int worst = 0;
  for (const VariantAnswer& answer : result.answers)
    if (!answer.failed) worst = std::max(worst, answer.exit_code);
  return worst;
}

std::vector<std::string> vary_words(const VaryResult& result) {
  std::vector<std::string> words{verdict_sentence(result)};
  if (extreme(result, true)) {
    words.push_back(share_sentence(result, true));
    words.push_back(share_sentence(result, false));
  }
  for (const std::string& own : limits_words(result)) words.push_back(own);
  words.emplace_back(kClosing);
  return words;
}

std::string variants_csv(const VaryResult& result) {
  std::string text = csv_header(result);
  for (std::size_t v = 0; v < result.answers.size(); ++v) text += csv_line(result, v);
  return text;
}

std::string curves_csv(const VaryResult& result) {
  std::string text = "variant";
  for (const PathChange& change : result.variants.changes()) text.append(",").append(csv_field(change.path));
  text +=
      ",chamber,state,gauge_kPa,gauge_mmHg,volume_mL,mean_kPa,mean_mmHg,peak_1cm2_kPa,peak_1cm2_mmHg,bulge_"
      "mm,"
      "stretch_max\n";
  for (std::size_t v = 0; v < result.answers.size(); ++v) {
    std::string set = result.variants.number(v);
    for (const std::string& value : result.variants.values(v))
      set.append(",").append(csv_field(value_words(value)));
    for (const ChamberCurve& curve : result.answers[v].curves)
      for (std::size_t s = 0; s < curve.points.size(); ++s) {
        const CurvePoint& p = curve.points[s];
        text.append(set).append(",").append(csv_field(curve.chamber)).append(",").append(std::to_string(s));
        for (const auto& [value, decimals] : {std::pair{p.gauge_kpa, 3},
                                              {p.gauge_kpa * (kPa / mmHg), 1},
                                              {p.volume_ml, 2},
                                              {p.mean_kpa, 3},
                                              {p.mean_kpa * (kPa / mmHg), 1},
                                              {p.peak_kpa, 3},
                                              {p.peak_kpa * (kPa / mmHg), 1},
                                              {p.bulge_mm, 2},
                                              {p.stretch_max, 4}})
          text.append(",").append(fixed_text(value, decimals));
        text += "\n";
      }
  }
  return text;
}

std::string variants_json(const VaryResult& result) {
  ReportJson out{{"wrapgauge-variants", 1},
                 {"program", std::string(program_version())},
                 {"plan", result.plan},
                 {"mesh", result.mesh},
                 {"words", vary_words(result)},
                 {"not_the_programs_own", limits_words(result)},
                 {"variants", ReportJson::array()}};
  for (std::size_t v = 0; v < result.answers.size(); ++v)
    out["variants"].push_back(variant_to_json(result, v));
  return out.dump(1, ' ', false, ReportJson::error_handler_t::replace) + "\n";
}

std::string variants_markdown(const VaryResult& result) {
  std::string page = "# Variants: " + markdown_text(result.plan) + "\n\n";
  for (const std::string& words : vary_words(result)) page += markdown_text(words) + "\n";
  return page + "\n" + markdown_table(result) +
         "\nThe share of the limit counts the model factor. A variant above a limit is above one at what it "
         "asks "
         "for, not at every inflation. The highest mean is contact force over a chamber's drawn area; the "
         "bulge "
         "is the greatest distance between the two sheets. Curves of every chamber stand in curves.csv.\n";
}

}  // namespace wrapgauge
