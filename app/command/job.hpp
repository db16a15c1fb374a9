#pragma once
// A plan with everything it names read in.

#include <filesystem>
#include <vector>

#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

struct Job {
  Plan plan;
  Body body;
  std::vector<std::string> body_words;  // what reading the body had to say: unit, repairs
  Resources resources;
  std::vector<InputFile> inputs;
};

Result<Job> read_job(const std::filesystem::path& plan_file);

}  // namespace wrapgauge
