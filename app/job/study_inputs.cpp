#include "app/job/study_inputs.hpp"

#include <system_error>

#include "model/study/random_stream.hpp"

namespace wrapgauge {

std::string inputs_hash(const Job& job) {
  std::string all;
  for (const InputFile& input : job.inputs) all += input.role + " " + input.sha256 + "\n";
  return hash_text(all);
}

ResultOrigin origin_of(const Job& job) {
  ResultOrigin origin{job.plan.name, job.inputs, std::nullopt};
  if (!job.plan.date.empty()) origin.date = job.plan.date;
  return origin;
}

Result<ResultOrigin> origin_with(const Job& job, const std::string& role, const std::filesystem::path& file) {
  auto input = input_file(role, file);
  if (!input) return input.problem();
  ResultOrigin origin = origin_of(job);
  origin.inputs.push_back(std::move(input).value());
  return origin;
}

Result<std::monostate> make_folder(const std::filesystem::path& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error) return bad_input("folder '" + folder.string() + "' could not be made: " + error.message() + ".");
  return std::monostate{};
}

}  // namespace wrapgauge
