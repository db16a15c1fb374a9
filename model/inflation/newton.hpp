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

struct NewtonOptions {
  double residual_tolerance = 3e-3;  // against pressure x nodal area
  double sum_tolerance = 5e-4;       // of all forces out of balance, against what touches the body
  double pressure_floor_pa = 300.0;  // smallest pressure the residual is measured against
  int max_iterations = 200;
  int last_factorisation = std::numeric_limits<int>::max();  // the count at which the work is used up
  double step_cap_m = 6e-3;
  // Resistance along the skin that the matrix gives a sliding node, against that across its way; without it
  // one step throws the node far along the skin and the next one back. The answer is the same.
  double sliding_share = 0.2;
  double volume_tolerance = 1e-4;  // of the asked volume, for groups filled with liquid
  double volume_cap_m3 = 1e9;      // a group larger than this has run away
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

// For where these end in circles: shorter steps, and less of them along the skin.
NewtonOptions carefully(NewtonOptions options);

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
