#pragma once
// What the commands of the study stage share.

#include "app/job/job.hpp"
#include "app/job/result_manifest.hpp"

namespace wrapgauge {

// One hash of every input file's, so that results of other inputs are told apart.
std::string inputs_hash(const Job& job);

// What results of the job are made from, for their manifest.
ResultOrigin origin_of(const Job& job);
// With one file more, such as readings.
Result<ResultOrigin> origin_with(const Job& job, const std::string& role, const std::filesystem::path& file);

// Makes a folder and the folders above it.
Result<std::monostate> make_folder(const std::filesystem::path& folder);

}  // namespace wrapgauge
