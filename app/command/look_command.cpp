#include "app/command/commands.hpp"
#include "app/command/job.hpp"

namespace wrapgauge {

int run_look(const std::filesystem::path& plan, Streams streams) {
  const auto job = read_job(plan);
  if (!job) return say_problem(job.problem(), streams);
  const auto words = look(job->plan, job->body, job->resources);
  if (!words) return say_problem(words.problem(), streams);
  for (const std::string& sentence : job->body_words) streams.out << "body: " << sentence << "\n";
  for (const std::string& sentence : *words) streams.out << sentence << "\n";
  return kExitDone;
}

}  // namespace wrapgauge
