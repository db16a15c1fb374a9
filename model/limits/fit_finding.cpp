#include "model/limits/fit_finding.hpp"

#include "model/core/number_text.hpp"
#include "model/wrap/fit_words.hpp"

namespace wrapgauge {
namespace {

// All judgement.
constexpr double kTight = 0.05;      // stretch round the body: made cuffs are fastened at 2 %
constexpr double kLoose = -0.15;     // the same below 0: a cuff may stand off a little at one edge
constexpr double kUneven = 0.10;     // between the most and the least stretched section
constexpr double kDistorted = 0.10;  // laid without closing, along or across
constexpr double kLongTail = 0.5;    // of the girth

Phrase percent(double share) {
  return figures_of(fixed_text(100.0 * share, 1) + " %");
}

Finding warning(const char* source_key, Phrase place, std::vector<Phrase> sentences, Phrase action) {
  Finding finding{Severity::kWarn, "whole device", {}};
  finding.place = std::move(place);
  finding.cause = Cause::kFastening;
  sentences.push_back(action);
  finding.sentence = in_a_row(std::move(sentences));
  finding.action = std::move(action);
  finding.source_key = source_key;
  return finding;
}

Phrase round_action(const Fit& fit, bool tight, bool uneven) {
  if (uneven && fit.even_taper != 0.0)
    return Phrase::worded(
        "Slant the closing lines with the limb: a taper near %1 (layout, closure, taper) evens it out.",
        {figures_of(fixed_text(fit.even_taper, 2))});
  return tight ? Phrase::worded("Fasten it more loosely.")
               : Phrase::worded("Give it a shorter closing length, then look again.");
}

void add_round(const Fit& fit, std::vector<Finding>& out) {
  if (fit.sections.empty()) return;
  const GirthSection &most = tightest(fit), &least = loosest(fit);
  const bool tight = most.stretch() > kTight, loose = least.stretch() < kLoose;
  const bool uneven = most.stretch() - least.stretch() > kUneven;
  if (!tight && !loose && !uneven) return;
  std::vector<Phrase> sentences = {fastened_words(fit)};
  if (tight)
    sentences.push_back(
        Phrase::worded("The most, %1 at station %2, is tight (above %3, judgement): it presses there before "
                       "it is inflated.",
                       {percent(most.stretch()), millimetres_of(most.station), percent_of(kTight)}));
  if (loose)
    sentences.push_back(
        Phrase::worded("The least, %1 at station %2, is loose (below %3, judgement): there the layout is "
                       "longer than the girth and stands off or folds.",
                       {percent(least.stretch()), millimetres_of(least.station), percent_of(kLoose)}));
  if (uneven)
    sentences.push_back(Phrase::worded("It is uneven: most and least lie %1 apart, more than %2 (judgement).",
                                       {percent(most.stretch() - least.stretch()), percent_of(kUneven)}));
  out.push_back(warning(kRoundKey, Phrase::worded("Fit round the body"), std::move(sentences),
                        round_action(fit, tight, uneven)));
}

void add_slit(const Fit& fit, std::vector<Finding>& out) {
  if (!fit.slit) return;
  const Slit& slit = *fit.slit;
  if (slit.height > Length()) {
    out.push_back(warning(
        "slit", Phrase::worded("Closing lines"),
        {Phrase::worded(
            "The closing lines meet over %1 of the layout's %2: beside them a slit stays "
            "open, round station %3.",
            {millimetres_of(slit.fastened), millimetres_of(slit.height), millimetres_of(slit.station)})},
        Phrase::worded("Let them meet over the whole height, by a wider strap or straight edges.")));
    return;
  }
  out.push_back(warning(
      "slit", Phrase::worded("Edges that do not meet"),
      {Phrase::worded("The edges do not meet: at station %1 a slit of %2 stays open, %3 of the girth of %4, "
                      "and nothing that pulls them together is calculated.",
                      {millimetres_of(slit.station), millimetres_of(slit.width),
                       percent(slit.width / slit.girth), millimetres_of(slit.girth)})},
      Phrase::worded("Give it a closure and a strap that bridges the slit, if it is meant to go round.")));
}

void add_tail(const Fit& fit, std::vector<Finding>& out) {
  if (!fit.anchor || fit.tail < kLongTail * fit.anchor->girth) return;
  out.push_back(warning(
      "overlapping tail", Phrase::worded("Overlapping tail"),
      {Phrase::worded(
          "Beyond the closing line the layout goes on for %1, %2 times round the girth of %3 at station %4, "
          "and overlaps itself. This tail is left out: what lies under it is pressed harder than shown.",
          {millimetres_of(fit.tail), figures_of(fixed_text(fit.tail / fit.anchor->girth, 1)),
           millimetres_of(fit.anchor->girth), millimetres_of(fit.anchor->station)})},
      Phrase::worded("Cut the tail shorter.")));
}

Phrase laid_words(const StretchedPlace& place) {
  return Phrase::worded(
      "%1 at x %2, y %3 of the layout (station %4)",
      {percent(place.stretch), figures_of(fixed_text(1e3 * place.at_flat_m.x(), 0)),
       figures_of(fixed_text(1e3 * place.at_flat_m.y(), 0) + " mm"), millimetres_of(place.station)});
}

void add_distorted(const Fit& fit, std::vector<Finding>& out) {
  if (!fit.least || !fit.most) return;
  if (fit.most->stretch <= kDistorted && fit.least->stretch >= -kDistorted) return;
  out.push_back(warning(
      "stretch laid on", Phrase::worded("Stretch laid on"),
      {Phrase::worded("Laid on, the layout is stretched by between %1 and %2, and more than %3 either "
                      "way (judgement) does not lie smoothly.",
                      {laid_words(*fit.least), laid_words(*fit.most), percent_of(kDistorted)})},
      Phrase::worded("Choose a less curved place, or draw the layout narrower there.")));
}

}  // namespace

std::vector<Finding> fit_findings(const Fit& fit) {
  std::vector<Finding> out;
  add_round(fit, out);
  add_slit(fit, out);
  add_tail(fit, out);
  add_distorted(fit, out);
  return out;
}

}  // namespace wrapgauge
