#pragma once
// How long solving a plan will take, before it starts: an order of magnitude, said where it is minutes. It
// goes to no file.

#include <optional>
#include <string>

#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

struct ForecastOptions {
  bool mesh_error = true, relief = true;  // as an estimate is asked for them
};

struct SolveForecast {
  int nodes = 0;
  double solves = 0.0;  // paths from laid flat on this mesh that all of it amounts to
  bool held = true;     // by a closure or a glued rim
  Time time;
};

// The measured law of docs/speed.md, 0.51 s at 2815 nodes and power 1.33 for a path of seven states, on the
// machine named there; solves once more are counted. A layout that nothing holds is forecast at the longest
// that was measured (docs/03-wrap.md): its sheets have no shape of their own and its chambers may run away.
SolveForecast forecast_solve(const Plan& plan, const Prepared& prepared, const ForecastOptions& options = {});

// One sentence; none below a minute.
std::optional<std::string> long_solve_words(const SolveForecast& forecast);

}  // namespace wrapgauge
