// What a path that found no equilibrium says.
#include <iomanip>
#include <sstream>

#include "model/inflation/coupled_equilibrium.hpp"
#include "model/inflation/load_stepper.hpp"

namespace wrapgauge {

Problem LoadStepper::failure() const {
  if (last_end_ == NewtonEnd::kCancelled)
    return {ProblemKind::kCancelled, "Cancelled before the target.", {}};
  if (last_end_ == NewtonEnd::kLibraryFailed) return *factorisation_->failure();
  std::ostringstream words;
  if (last_end_ == NewtonEnd::kOutOfWork)
    words << "The solver stopped after " << newton_.last_factorisation
          << " factorisations, which is as far as it goes. ";
  if (last_end_ == NewtonEnd::kTissueUnsettled)
    words << "The coupled tissue and the sheet did not fit together within "
          << 100.0 * options_.settings.tissue.coupled_fit << " % of the deepest place in "
          << options_.settings.tissue.coupled_passes << " passes; take "
          << (setup_.misfit.empty() ? "a finer mesh, or " : "") << "the foundation model. ";
  if (!any_converged_ && last_end_ == NewtonEnd::kOverstretched)
    return {ProblemKind::kNotConverged,
            "Closed round the body and not inflated, a sheet is stretched beyond what its material is known "
            "for: give "
            "the layout a longer closing length.",
            {}};
  if (!any_converged_) {
    words << "No equilibrium was found for the layout closed round the body and not inflated: ";
    words << (setup_.misfit.empty() ? "check that the closing length fits the girth."
                                    : "correct how it fits. " + setup_.misfit);
    return {ProblemKind::kNotConverged, words.str(), {}};
  }
  const double share =
      (static_cast<double>(reached_) + share_to_next_) / static_cast<double>(waypoints_.size());
  words << std::fixed << "No equilibrium was found beyond " << std::setprecision(0) << 100.0 * share
        << " % of the asked inflation; the last one that converged has";
  for (std::size_t g = 0; g < setup_.flat.group_inlet.size(); ++g) {
    const auto index = static_cast<Eigen::Index>(g);
    words << (g ? ", " : " ") << "inlet '" << setup_.layout.inlets[index_of(setup_.flat.group_inlet[g])].name
          << "' at " << std::setprecision(2) << last_.pressure_pa(index) / 1000.0 << " kPa, "
          << std::setprecision(1) << last_.volume_m3(index) * 1e6 << " mL";
  }
  if (setup_.misfit.empty())
    words << ": ask for less, or use a finer mesh.";
  else
    words << ": ask for less, and first correct how it fits. " << setup_.misfit;
  return {ProblemKind::kNotConverged, words.str(), {}};
}

}  // namespace wrapgauge
