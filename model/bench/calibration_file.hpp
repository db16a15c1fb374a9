#pragma once
// calibration.json: what a plan names so that its readings count.

#include <filesystem>

#include "model/bench/calibrate.hpp"

namespace wrapgauge {

std::string calibration_json(const BenchResult& result);

// Of a plan, its body and its tables as they are now; the readings are looked up beside it. Problems: not a
// calibration; stale, by what has changed: layout, materials, readings or program. Contact of another part or
// posture than the plan's does not count: the model factor is then that of a plan without a calibration, or
// higher where it was, and the words say why.
Result<Calibration> read_calibration(const std::filesystem::path& file, const Plan& plan, const Body& body,
                                     const Resources& resources);

// Whether the limb that contact was read on is the plan's; if not, `calibration` is changed as above.
void keep_to_part(const Plan& plan, std::optional<BodyPart> part, Calibration& calibration);

}  // namespace wrapgauge
