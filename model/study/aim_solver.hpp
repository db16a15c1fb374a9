#pragma once
// Inlet pressures that bring chamber means nearest to what is wanted, on real solves.

#include <optional>

#include "model/study/aim.hpp"

namespace wrapgauge {

struct AimUnknowns {
  std::vector<std::optional<int>> variable_of_group;  // none: keeps the plan's inflation
  int count = 0;
};

struct AimSolution {
  bool reached = false;
  Eigen::VectorXd pressure_pa;  // a variable each
  StateReading reading;         // with the relief valves solved, as an estimate reads it
  int solves = 0;
};

// Gauss-Newton: the first Jacobian by differences, then Broyden's rank-one updates (Broyden 1965, Mathematics
// of Computation 19:577); pressures stay at or above 0, steps that do not help are halved. `wanted`: a
// chamber each.
Result<AimSolution> solve_aim(const StudyCase& study, const AimUnknowns& unknowns,
                              const std::vector<std::optional<Pressure>>& wanted, Progress& progress);

}  // namespace wrapgauge
