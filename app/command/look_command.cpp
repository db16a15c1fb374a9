#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/wrapped_text.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kLookExamples =
    "Checks the plan, body, layout, materials and fit and says what is ready;\n"
    "nothing is solved.\n"
    "Example:\n"
    "  wrapgauge look cuff.json\n";

int run_look(const std::filesystem::path& plan, Streams streams) {
  const auto job = read_plan_job(plan, streams);
  if (!job) return say_problem(job.problem(), streams);
  const auto words = look(job->plan, job->body, job->resources);
  if (!words) return say_problem(words.problem(), streams);
  for (const std::string& sentence : job->body_words) streams.out << wrapped("body: " + sentence, 2);
  for (const std::string& sentence : *words) streams.out << wrapped(sentence, 2);
  return kExitDone;
}

}  // namespace

void add_look(CLI::App& app, Action& action) {
  auto plan = std::make_shared<std::string>();
  CLI::App* command = app.add_subcommand("look", "Check everything an estimate needs, without solving");
  command->add_option("plan", *plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->footer(kLookExamples);
  command->callback(
      [&action, plan] { action = [plan](Streams streams) { return run_look(*plan, streams); }; });
}

}  // namespace wrapgauge
