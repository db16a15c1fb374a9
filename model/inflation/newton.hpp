#pragma once
// One equilibrium: the minimum of the total potential for given chamber loads, by Newton's method with the
// exact tangent, a proximal shift, a step cap and an Armijo line search. Far from equilibrium, or where no
// moderate shift makes the exact tangent definite, its positive semi-definite parts are used. Contact areas
// and friction limits are brought up to date after every step, so that the equilibrium found is one with its
// own areas and limits. They make no potential: near balance steps are on the full, unsymmetric equations,
// without which they go to and fro for ever along a sheet's soft directions: first as many as help with the
// factors of one tangent, else one with the linearised equations.

#include <limits>

#include "model/core/progress.hpp"
#include "model/inflation/equilibrium_system.hpp"
#include "model/inflation/factorisation.hpp"

namespace wrapgauge {

// What one solve is asked; its constants are the system's SolverSettings.
struct NewtonOptions {
  double residual_tolerance = InflationOptions{}.residual_tolerance;  // against pressure x nodal area
  int max_iterations = InflationOptions{}.max_iterations;
  int last_factorisation = std::numeric_limits<int>::max();        // the count at which the work is used up
  double volume_cap_m3 = std::numeric_limits<double>::infinity();  // a group larger than this has run away
  // For where steps end in circles: shorter ones, and less of them along the skin. The answer is the same.
  bool careful = false;
};

enum class NewtonEnd {
  kConverged,
  kTooManyIterations,
  kRanAway,
  kStalled,
  kOverstretched,    // converged, with a sheet stretched beyond what its law is known for
  kTissueUnsettled,  // coupled tissue and sheet do not fit together
  kOutOfWork,        // as many factorisations as one path may take
  kLibraryFailed,    // the factorisation says why
  kCancelled,
};

struct NewtonResult {
  NewtonEnd end = NewtonEnd::kTooManyIterations;
  Points3 positions_m;
  Eigen::VectorXd group_volume_m3;
  Eigen::VectorXd group_pressure_pa;
  double residual_n = 0.0;
  int iterations = 0;
  bool converged() const { return end == NewtonEnd::kConverged; }
};

NewtonResult find_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                              const std::vector<CavityLoad>& loads, Points3 start_m,
                              const NewtonOptions& options, const Progress& progress);

// False where a sheet at this equilibrium is so compressed that it would rather fold than stay smooth: the
// exact tangent, what follows the volume included, is not positive definite. Problem: the factorisation's.
Result<bool> keeps_its_shape(EquilibriumSystem& system, Factorisation& factorisation,
                             const std::vector<CavityLoad>& loads, const Points3& positions_m);

}  // namespace wrapgauge
