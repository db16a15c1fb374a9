#include "model/study/spread_report.hpp"

#include <cmath>

#include "model/core/markdown_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_figures.hpp"

namespace wrapgauge {
namespace {

std::string mm_text(Length length) {
  return fixed_text(length / mm, 1) + " mm";
}

std::string unit_text(const char* unit) {
  return *unit ? std::string(" ") + unit : "";
}

std::string band_text(const FigureBand& band, const FigureName& figure) {
  const auto in = [&](double value) { return fixed_text(value, figure.decimals); };
  std::string text = in(band.low) + " to " + in(band.high) + unit_text(figure.unit);
  if (std::string(figure.unit) == "kPa")
    text += " (" + mmhg_figure(band.low * kPa) + " to " + mmhg_figure(band.high * kPa) + " mmHg)";
  return text;
}

std::string sample_text(const Spread& spread) {
  std::string text = std::to_string(spread.runs) + " runs, all inputs drawn at once (Latin hypercube, seed " +
                     std::to_string(spread.seed) + "), at mesh edge " + mm_text(spread.preview_edge);
  if (spread.fine_edge < spread.preview_edge)
    text += ", each figure shifted by what the nominal one moves from there to the plan's " +
            mm_text(spread.fine_edge);
  return text + ".";
}

std::string failed_text(const Spread& spread) {
  if (spread.failed.empty()) return "Every run found an equilibrium.";
  std::string text = std::to_string(spread.failed.size()) + " of " + std::to_string(spread.runs) +
                     " runs have no figures and are missing from the bands, which may be too narrow for it:";
  for (const FailedRun& run : spread.failed) text += " " + run.run + " (" + run.sentence + ")";
  return text;
}

const FigureInfluence* influence_on(const Spread& spread, const std::string& where, const std::string& key) {
  for (const FigureInfluence& influence : spread.influences)
    if (influence.where == where && influence.figure == key) return &influence;
  return nullptr;
}

int used_runs(const Spread& spread) {
  return spread.runs - static_cast<int>(spread.failed.size());
}

std::string influence_rows(const Spread& spread, const FigureInfluence& influence) {
  std::string rows =
      "| input | regression of ranks | rank correlation | told from chance |\n|---|---|---|---|\n";
  const double chance = chance_correlation(used_runs(spread));
  for (const Influence& input : influence.ranking.inputs)
    rows += "| " + markdown_text(spread.inputs[static_cast<std::size_t>(input.input)].name) + " | " +
            fixed_text(input.regression, 2) + " | " + fixed_text(input.correlation, 2) + " | " +
            (std::abs(input.correlation) > chance ? "yes" : "no") + " |\n";
  return rows;
}

std::string chamber_rows(const Spread& spread) {
  std::string rows = "| chamber | figure | nominal | 5 to 95 % of runs | median |\n|---|---|---|---|---|\n";
  for (const ChamberBands& chamber : spread.chambers)
    for (std::size_t f = 0; f < chamber.figures.size(); ++f) {
      const FigureName& figure = chamber_figure_names()[f];
      rows += "| " + markdown_text(chamber.chamber) + " | " + figure.text + " | " +
              fixed_text(chamber.figures[f].nominal, figure.decimals) + unit_text(figure.unit) + " | " +
              band_text(chamber.figures[f], figure) + " | " +
              fixed_text(chamber.figures[f].median, figure.decimals) + " |\n";
    }
  return rows;
}

std::string whole_rows(const Spread& spread) {
  std::string rows = "| whole device | nominal | 5 to 95 % of runs | median |\n|---|---|---|---|\n";
  for (std::size_t f = 0; f < spread.whole.size(); ++f) {
    const FigureName& figure = whole_figure_names()[f];
    rows += "| " + std::string(figure.text) + " | " + fixed_text(spread.whole[f].nominal, figure.decimals) +
            unit_text(figure.unit) + " | " + band_text(spread.whole[f], figure) + " | " +
            fixed_text(spread.whole[f].median, figure.decimals) + " |\n";
  }
  return rows;
}

std::string input_rows(const Spread& spread) {
  std::string rows = "| input | from | to | drawn | status | source |\n|---|---|---|---|---|---|\n";
  for (const UncertainInput& input : spread.inputs)
    rows += "| " + markdown_text(input.name) + " | " + number_text(input.low, 4) +
            unit_text(input.unit.c_str()) + " | " + number_text(input.high, 4) +
            unit_text(input.unit.c_str()) + " | " +
            (input.logarithmic ? "every ratio as likely" : "every value as likely") + " | " +
            markdown_text(input.status) + " | " + markdown_text(input.source) + " |\n";
  return rows;
}

std::string strongest_inputs(const FigureInfluence& influence, const Spread& spread, std::size_t count,
                             bool with_figures) {
  std::string text;
  for (std::size_t i = 0; i < std::min(influence.ranking.inputs.size(), count); ++i) {
    const Influence& input = influence.ranking.inputs[i];
    text.append(i ? ", " : "").append(spread.inputs[static_cast<std::size_t>(input.input)].name);
    if (with_figures) text += " (" + fixed_text(input.regression, 2) + ")";
  }
  return text;
}

}  // namespace

std::string spread_brief(const Spread& spread) {
  std::string text = "Bands: 9 of 10 of " + std::to_string(used_runs(spread)) +
                     " runs, all uncertain inputs drawn at once; the peak anywhere is " +
                     band_text(spread.whole[0], whole_figure_names()[0]) + " in them.";
  if (!spread.failed.empty())
    text.append(" ")
        .append(std::to_string(spread.failed.size()))
        .append(" more runs have no figures and are left out.");
  if (const FigureInfluence* peak = influence_on(spread, "", whole_figure_names()[0].key))
    text += " What moves it most: " + strongest_inputs(*peak, spread, 3, false) + ".";
  return text;
}

std::string spread_markdown(const Spread& spread) {
  const FigureInfluence* peak = influence_on(spread, "", whole_figure_names()[0].key);
  std::string page = "# Spread of the prediction: " + markdown_text(spread.plan) + "\n\n" +
                     sample_text(spread) + "\n" + markdown_text(failed_text(spread)) + "\n" +
                     (spread.limits_override ? markdown_text(*spread.limits_override) + "\n" : "") + "\n" +
                     whole_rows(spread) + "\n" + chamber_rows(spread);
  if (peak)
    page += "\n## Inputs that matter to the peak anywhere, the strongest first\n\n" +
            influence_rows(spread, *peak) + "\nRegression of ranks explains " +
            fixed_text(100.0 * peak->ranking.explained, 0) + " % of the peak. A rank correlation below " +
            fixed_text(chance_correlation(used_runs(spread)), 2) +
            " may be chance. spread.json ranks the inputs for every figure.\n";
  page += "\n## Ranges\n\n" + input_rows(spread);
  return page +
         "\nThe band holds nine runs in ten of this model with these ranges; it is no bound on what a person "
         "feels, and what the model leaves out is not in it. Not a medical device; ask a clinician.\n";
}

std::vector<std::string> spread_words(const Spread& spread) {
  std::vector<std::string> words{sample_text(spread), failed_text(spread)};
  if (spread.limits_override) words.push_back(*spread.limits_override);
  constexpr std::size_t kMean = 2, kPeak = 3;
  for (const ChamberBands& chamber : spread.chambers)
    words.push_back(chamber.chamber + ": mean " +
                    band_text(chamber.figures[kMean], chamber_figure_names()[kMean]) + ", peak over 1 cm2 " +
                    band_text(chamber.figures[kPeak], chamber_figure_names()[kPeak]) + " in 9 of 10 runs.");
  words.push_back("Peak anywhere: " + band_text(spread.whole[0], whole_figure_names()[0]) +
                  "; highest share of a limit after the model factor: " +
                  band_text(spread.whole.back(), whole_figure_names().back()) + ".");
  if (const FigureInfluence* peak = influence_on(spread, "", whole_figure_names()[0].key))
    words.push_back("Inputs that matter most to the peak, by regression of ranks: " +
                    strongest_inputs(*peak, spread, 4, true) + ".");
  return words;
}

}  // namespace wrapgauge
