#pragma once
#include <filesystem>
#include <nlohmann/json_fwd.hpp>
#include <string>

#include "model/core/result.hpp"

namespace wrapgauge {

struct StudyFile {
  const char* command;  // that wrote it: "ceiling"
  const char* advice;   // what to name instead: "give the file written with its --out"
};

// The answer of a study, an object. Problems: no such file, another study's, or stale: made from inputs other
// than `inputs_hash` or by another version of the program.
Result<nlohmann::json> read_study(const std::filesystem::path& file, const StudyFile& study,
                                  const std::string& inputs_hash);

}  // namespace wrapgauge
