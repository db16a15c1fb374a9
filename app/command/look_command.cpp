#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/picture/body_picture.hpp"
#include "app/picture/picture_program.hpp"
#include "app/picture/png.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kLookExamples =
    "Checks the plan, body, layout, materials and fit and says what is ready;\n"
    "nothing is solved.\n"
    "Examples:\n"
    "  wrapgauge look cuff.json\n"
    "  wrapgauge look cuff.json --picture cuff.png\n";

struct LookCommand {
  std::filesystem::path plan, picture;
};

// Where the layout lies, on the body and on its part in view.
Result<std::string> picture_bytes(const Job& job) {
  if (auto started = start_picture_program(); !started) return started.problem();
  const auto body = body_of_plan(job.plan, job.body);
  if (!body) return body.problem();
  const auto prepared = prepare(job.plan, *body, job.resources, mesh_of_plan(job.plan));
  if (!prepared) return prepared.problem();
  return png_bytes(worn_picture(*body, *prepared, QString::fromStdString(job.plan.name)));
}

int run_look(const LookCommand& command, Streams streams) {
  const auto job = read_plan_job(command.plan, streams);
  if (!job) return say_problem(job.problem(), streams);
  const auto words = look(job->plan, job->body, job->resources);
  if (!words) return say_problem(words.problem(), streams);
  if (!command.picture.empty()) {
    FilesToWrite files;
    files.add(command.picture, picture_bytes(*job));
    if (const auto written = files.write(); !written) return say_problem(written.problem(), streams);
  }
  for (const std::string& sentence : job->body_words) streams.out << wrapped("body: " + sentence, 2);
  for (const std::string& sentence : *words) streams.out << wrapped(sentence, 2);
  return kExitDone;
}

}  // namespace

void add_look(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<LookCommand>();
  CLI::App* command = app.add_subcommand("look", "Check everything an estimate needs, without solving");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->add_option("--picture", wanted->picture, "Write a picture of where the layout lies here")
      ->type_name("PNG");
  command->footer(kLookExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_look(*wanted, streams); }; });
}

}  // namespace wrapgauge
