#pragma once
#include "model/study/study_case.hpp"

namespace wrapgauge {

// The last state, judged as an estimate judges it. The setting of the relief valves may only make a verdict
// worse, and no worse than above a limit: what is there already is not solved once more. Problems: cancelled.
Result<StateReading> read_as_estimate(const StudyCase& study, const LoadPath& path, Progress& progress);

// The hazard that alone makes the reading above a limit, though no place is: a valve that opens too late.
// Null: there is none.
const Hazard* valve_above_limit(const StateReading& reading);

}  // namespace wrapgauge
