#include "model/pipeline/judgement.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

// A compression class is information, and of lower legs only: a device that lands in one was not made to be
// one.
std::optional<Finding> class_note(const Solved& solved, const Rules& rules) {
  if (rules.inputs.part != BodyPart::kLowerLeg) return std::nullopt;
  if (solved.figures.share_of_girth < rules.limits.circumferential_share) return std::nullopt;
  const ChamberFigures* highest = nullptr;
  for (const ChamberFigures& chamber : solved.figures.chambers)
    if (!highest || chamber.mean > highest->mean) highest = &chamber;
  const auto classes = highest ? classes_words(rules.comparisons, highest->mean) : std::nullopt;
  if (!classes) return std::nullopt;
  Finding note{
      Severity::kNote, "compression classes",
      Phrase::worded("For comparison only: the highest mean, %1 under chamber '%2', would lie in %3. Class "
                     "numbers differ by country: read mmHg; a class is prescribed and is no limit here.",
                     {figures_of(highest->mean), name_of(highest->chamber), *classes}),
      0.0};
  note.place = Phrase::worded("Compression classes");
  note.source_key = "compression classes";
  return note;
}

}  // namespace

Severity Judgement::worst() const {
  Severity worst = Severity::kNote;
  for (const Finding& finding : findings) worst = std::max(worst, finding.severity);
  for (const Hazard& hazard : hazards) worst = std::max(worst, hazard.severity);
  return worst;
}

Judgement judged(const Solved& solved, const Rules& rules) {
  const auto& [setup, path, map, figures, audit] = solved;
  Judgement out;
  out.findings = findings(rules.limits, rules.inputs, setup, path, path.states.back(), map, figures, audit);
  out.exposure = skin_exposure(rules.limits, rules.inputs, setup, path, map, figures);
  if (out.exposure)
    for (Finding& finding : exposure_findings(rules.limits, *out.exposure))
      out.findings.push_back(std::move(finding));
  out.relief =
      rules.relief ? *rules.relief : relief_settings(rules.limits, rules.inputs, setup, path, map, figures);
  out.hazards = hazards({rules.limits, rules.inputs, setup, path, map, figures, audit, out.exposure,
                         out.relief, rules.supply, rules.filling});
  if (auto note = class_note(solved, rules)) out.findings.push_back(*note);
  worst_first(out.findings);
  return out;
}

}  // namespace wrapgauge
