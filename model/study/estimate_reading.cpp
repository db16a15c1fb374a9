#include "model/study/estimate_reading.hpp"

namespace wrapgauge {

Result<StateReading> read_as_estimate(const StudyCase& study, const LoadPath& path, Progress& progress) {
  StateReading reading = study.read(path);
  if (reading.judgement.worst() >= Severity::kAboveLimit) return reading;
  return study.read_with_relief(path, progress);
}

const Hazard* valve_above_limit(const StateReading& reading) {
  if (reading.nearest.above()) return nullptr;
  for (const Hazard& hazard : reading.judgement.hazards)
    if (hazard.severity >= Severity::kAboveLimit) return &hazard;
  return nullptr;
}

}  // namespace wrapgauge
