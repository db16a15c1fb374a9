#pragma once
// A plan with everything it names read in.

#include <filesystem>
#include <optional>
#include <vector>

#include "model/body/mend.hpp"
#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

struct ReadBody {
  Body body;
  std::vector<MendReport> mending;  // of a file that is mended
  std::vector<Phrase> words;        // what else reading the body had to say: unit, repairs
  std::vector<InputFile> inputs;    // mesh and label; empty: made from a form
};
// The plan's file read and mended, or its form made. Problems of mending name their step by its place.
Result<ReadBody> read_body(const Plan& plan);

// Problem: it cannot be read.
Result<InputFile> input_file(const std::string& role, const std::filesystem::path& file);

struct Job {
  Plan plan;
  Body body;
  std::vector<std::string> body_words;
  Resources resources;
  std::vector<InputFile> inputs;
};

// A calibration holds for the plan's own device: whatever changes the device or the body leaves it out.
enum class PlanCalibration { kTaken, kLeftOut };

// Of a plan in memory: `inputs` are all but the plan's own. `known_body`: read already, by read_body. Problem
// among others: a calibration that is stale.
Result<Job> complete_job(Plan plan, std::optional<ReadBody> known_body = std::nullopt,
                         PlanCalibration calibration = PlanCalibration::kTaken);

// What of the plan's files is named by an absolute path or one that leaves the folder of the plan (../), as
// written.
std::vector<std::filesystem::path> files_outside(const Plan& plan);

Result<Job> read_job(const std::filesystem::path& plan_file,
                     PlanCalibration calibration = PlanCalibration::kTaken);

}  // namespace wrapgauge
