#include "model/wrap/fit_words.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr double kAlike = 5e-4;      // below what is printed: the anchor then stands for all
constexpr double kWoundRound = 1.5;  // closing lengths a girth, judgement: no ring hangs as loose as that

bool less_stretched(const GirthSection& a, const GirthSection& b) {
  return a.stretch() < b.stretch();
}

Phrase stretch_figure(const GirthSection& section) {
  return figures_of(fixed_text(100.0 * section.stretch(), 1) + " %");
}

// Where the closing length is the same at all heights and said once.
Phrase girth_words(const GirthSection& section) {
  return Phrase::worded(
      "%1 at station %2 (girth %3)",
      {stretch_figure(section), millimetres_of(section.station), millimetres_of(section.girth)});
}

Problem lies_on_itself(const SelfLap& lap) {
  return bad_input(Phrase::worded(
      "Laid on, the layout overlaps itself: round station %1, where the girth is %2, %3 cm2 of it lie in up "
      "to %4 layers, and how layers press on each other is not calculated; give it a closure, which leaves "
      "the overlapping tail out, or make it shorter round the body.",
      {millimetres_of(lap.station), millimetres_of(lap.girth), figures_of(fixed_text(lap.area / cm2, 1)),
       figures_of(lap.layers)}));
}

Problem wound_round(const GirthSection& section) {
  return bad_input(Phrase::worded(
      "The closing length of %1 is %2 times the girth of %3 at station %4: such a layout is wound round more "
      "than once, and how layers press on each other is not calculated; give a closing length near the "
      "girth.",
      {millimetres_of(section.closing_length),
       figures_of(fixed_text(section.closing_length / section.girth, 1)), millimetres_of(section.girth),
       millimetres_of(section.station)}));
}

}  // namespace

Phrase section_words(const GirthSection& section) {
  return Phrase::worded("%1 at station %2 (girth %3, closing length %4)",
                        {stretch_figure(section), millimetres_of(section.station),
                         millimetres_of(section.girth), millimetres_of(section.closing_length)});
}

Phrase fastened_words(const Fit& fit) {
  const GirthSection &distal = fit.sections.front(), &proximal = fit.sections.back();
  if (std::abs((proximal.closing_length - distal.closing_length) / mm) < 0.05)
    return Phrase::worded(
        "Stretch round the body, fastened at a closing length of %4 and deflated: at the distal edge %1, at "
        "the anchor %2, at the proximal edge %3.",
        {girth_words(distal), girth_words(*fit.anchor), girth_words(proximal),
         millimetres_of(fit.anchor->closing_length)});
  return Phrase::worded(
      "Stretch round the body, fastened and deflated: at the distal edge %1, at the anchor %2, at the "
      "proximal edge %3.",
      {section_words(distal), section_words(*fit.anchor), section_words(proximal)});
}

const GirthSection& tightest(const Fit& fit) {
  const auto most = std::max_element(fit.sections.begin(), fit.sections.end(), less_stretched);
  return most->stretch() - fit.anchor->stretch() < kAlike ? *fit.anchor : *most;
}

const GirthSection& loosest(const Fit& fit) {
  const auto least = std::min_element(fit.sections.begin(), fit.sections.end(), less_stretched);
  return fit.anchor->stretch() - least->stretch() < kAlike ? *fit.anchor : *least;
}

std::optional<Problem> laps_itself(const Fit& fit) {
  if (fit.lap) return lies_on_itself(*fit.lap);
  if (fit.sections.empty()) return std::nullopt;
  const GirthSection& most = tightest(fit);
  if (most.closing_length < kWoundRound * most.girth) return std::nullopt;
  return wound_round(most);
}

}  // namespace wrapgauge
