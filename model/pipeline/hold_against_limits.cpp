#include "model/pipeline/hold_against_limits.hpp"

namespace wrapgauge {
namespace {

// A compression class is information, and of lower legs only: a device that lands in one was not made to be
// one.
std::optional<Finding> class_note(const Comparisons& comparisons, const Estimate& estimate) {
  if (estimate.limit_inputs.part != BodyPart::kLowerLeg) return std::nullopt;
  if (estimate.figures.share_of_girth < estimate.limits.circumferential_share) return std::nullopt;
  const ChamberFigures* highest = nullptr;
  for (const ChamberFigures& chamber : estimate.figures.chambers)
    if (!highest || chamber.mean > highest->mean) highest = &chamber;
  const auto classes = highest ? classes_words(comparisons, highest->mean) : std::nullopt;
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

void hold_against_limits(const Plan& plan, const Resources& resources, LimitInputs limit_inputs,
                         Estimate& estimate) {
  estimate.limits = resources.limits;
  estimate.limit_inputs = std::move(limit_inputs);
  estimate.findings = findings(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path,
                               estimate.path.states.back(), estimate.map, estimate.figures, estimate.audit);
  estimate.exposure = skin_exposure(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path,
                                    estimate.map, estimate.figures);
  if (estimate.exposure)
    for (Finding& finding : exposure_findings(estimate.limits, *estimate.exposure))
      estimate.findings.push_back(std::move(finding));
  const HazardInputs inputs{estimate.limits,  estimate.limit_inputs, estimate.setup, estimate.path,
                            estimate.figures, plan.supply,           plan.filling};
  estimate.hazards = hazards(inputs);
  estimate.highest_relief = highest_relief(inputs);
  if (auto note = class_note(resources.comparisons, estimate)) estimate.findings.push_back(*note);
  worst_first(estimate.findings);
}

}  // namespace wrapgauge
