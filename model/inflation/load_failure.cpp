// What a path that found no equilibrium says.
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/inflation/coupled_equilibrium.hpp"
#include "model/inflation/load_stepper.hpp"

namespace wrapgauge {
namespace {

// "inlet 'left' at 4.20 kPa, 12.5 mL"
Phrase inlet_reached(const InflationSetup& setup, std::size_t group, double pressure_pa, double volume_m3) {
  return Phrase::worded(
      "inlet '%1' at %2 kPa, %3 mL",
      {name_of(setup.layout.inlets[index_of(setup.flat.group_inlet[group])].name),
       figures_of(fixed_text(pressure_pa / 1000.0, 2)), figures_of(fixed_text(volume_m3 * 1e6, 1))});
}

Phrase not_closed(const std::optional<Phrase>& misfit) {
  if (misfit)
    return Phrase::worded(
        "No equilibrium was found for the layout closed round the body and not inflated: correct how it "
        "fits. "
        "%1",
        {*misfit});
  return Phrase::worded(
      "No equilibrium was found for the layout closed round the body and not inflated: check that the "
      "closing "
      "length fits the girth.");
}

Phrase not_reached(double share, Phrase inlets, const std::optional<Phrase>& misfit) {
  std::vector<Phrase> values{figures_of(fixed_text(100.0 * share, 0)), std::move(inlets)};
  if (!misfit)
    return Phrase::worded(
        "No equilibrium was found beyond %1 % of the asked inflation; the last one that converged has %2: "
        "ask "
        "for less, or use a finer mesh.",
        std::move(values));
  values.push_back(*misfit);
  return Phrase::worded(
      "No equilibrium was found beyond %1 % of the asked inflation; the last one that converged has %2: ask "
      "for less, and first correct how it fits. %3",
      std::move(values));
}

Phrase unsettled_tissue(const InflationSetup& setup, double fit, int passes) {
  const std::vector<Phrase> values{figures_of(number_text(100.0 * fit)), figures_of(passes)};
  if (setup.misfit)
    return Phrase::worded(
        "The coupled tissue and the sheet did not fit together within %1 % of the deepest place in %2 "
        "passes; "
        "take the foundation model.",
        values);
  return Phrase::worded(
      "The coupled tissue and the sheet did not fit together within %1 % of the deepest place in %2 passes; "
      "take a finer mesh, or the foundation model.",
      values);
}

}  // namespace

Problem LoadStepper::failure() const {
  if (last_end_ == NewtonEnd::kCancelled)
    return said_problem(ProblemKind::kCancelled, Phrase::worded("Cancelled before the target."));
  if (last_end_ == NewtonEnd::kLibraryFailed) return *factorisation_->failure();
  if (!any_converged_ && last_end_ == NewtonEnd::kOverstretched)
    return not_converged(Phrase::worded(
        "Closed round the body and not inflated, a sheet is stretched beyond what its material is known for: "
        "give the layout a longer closing length."));
  std::vector<Phrase> sentences;
  if (last_end_ == NewtonEnd::kOutOfWork)
    sentences.push_back(
        Phrase::worded("The solver stopped after %1 factorisations, which is as far as it goes.",
                       {figures_of(std::to_string(newton_.last_factorisation))}));
  if (last_end_ == NewtonEnd::kTissueUnsettled)
    sentences.push_back(unsettled_tissue(setup_, options_.settings.tissue.coupled_fit,
                                         options_.settings.tissue.coupled_passes));
  if (!any_converged_) {
    sentences.push_back(not_closed(setup_.misfit));
    return not_converged(in_a_row(std::move(sentences)));
  }
  std::vector<Phrase> inlets;
  for (std::size_t g = 0; g < setup_.flat.group_inlet.size(); ++g) {
    const auto index = static_cast<Eigen::Index>(g);
    inlets.push_back(inlet_reached(setup_, g, last_.pressure_pa(index), last_.volume_m3(index)));
  }
  const double share =
      (static_cast<double>(reached_) + share_to_next_) / static_cast<double>(waypoints_.size());
  sentences.push_back(not_reached(share, in_a_row(std::move(inlets), ", "), setup_.misfit));
  return not_converged(in_a_row(std::move(sentences)));
}

}  // namespace wrapgauge
