#include <CLI/CLI.hpp>
#include <charconv>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/study_inputs.hpp"
#include "model/core/file.hpp"
#include "model/study/aim_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kAimExamples =
    "Examples:\n"
    "  wrapgauge aim sleeve.json --target ankle=2.4 --target calf=1.8\n"
    "  wrapgauge aim cuff.json --target 'left front=15mmHg' --edge-mm 8\n"
    "Finds the pressure at each inlet that gives the wanted mean contact pressures\n"
    "and, if the drawing cannot, which chambers would have to be fed apart.\n";

struct AimCommand {
  std::filesystem::path plan;
  std::vector<std::string> targets;
  std::optional<std::filesystem::path> out;
  std::optional<double> edge_mm;
  bool json = false;
};

// "left front=2.5", "left front=2.5kPa" or "left front=19mmHg".
Result<AimTarget> target_from(const std::string& text) {
  const std::size_t equals = text.rfind('=');
  if (equals != std::string::npos && equals > 0) {
    const char* begin = text.data() + equals + 1;
    const char* end = text.data() + text.size();
    double number = 0.0;
    const auto read = std::from_chars(begin, end, number);
    const std::string unit(read.ptr, end);
    if (read.ec == std::errc() && (unit.empty() || unit == "kPa" || unit == "mmHg"))
      return AimTarget{text.substr(0, equals), unit == "mmHg" ? number * mmHg : number * kPa};
  }
  return bad_input("--target is '" + text +
                   "': write CHAMBER=PRESSURE, in kPa or with its unit, e.g. 'left front=2.5' or 'left "
                   "front=19mmHg'.");
}

int say_aim(const AimCommand& command, const Aim& found, const std::string& json, Streams streams) {
  if (command.out)
    if (auto written = write_file_atomically(*command.out, json); !written)
      return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << json;
  else
    for (const std::string& sentence : aim_words(found)) streams.out << wrapped(sentence, 2);
  if (!found.as_drawn.reached) return kExitNotReached;
  return exit_code_of(found.as_drawn.judgement.worst());
}

int run_aim(const AimCommand& command, Streams streams) {
  std::vector<AimTarget> targets;
  for (const std::string& text : command.targets) {
    const auto target = target_from(text);
    if (!target) return say_problem(target.problem(), streams);
    targets.push_back(*target);
  }
  const auto job = read_plan_job(command.plan, streams);
  if (!job) return say_problem(job.problem(), streams);
  Plan plan = job->plan;
  if (command.edge_mm) plan.mesh_edge = *command.edge_mm * mm;
  std::optional<Result<Aim>> found;
  {
    TerminalProgress progress;
    found = aim(plan, job->body, job->resources, targets, progress);
  }
  if (!*found) return say_problem(found->problem(), streams);
  return say_aim(command, **found, aim_json(**found, plan.name, inputs_hash(*job)), streams);
}

}  // namespace

void add_aim(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<AimCommand>();
  CLI::App* command =
      app.add_subcommand("aim", "Find the inflation that gives wanted mean contact pressures");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command
      ->add_option(
          "--target", wanted->targets,
          "Wanted mean contact pressure of a chamber, kPa unless its unit stands behind it; repeat it")
      ->required()
      ->allow_extra_args(false)
      ->type_name("CHAMBER=PRESSURE");
  command->add_option("--out", wanted->out, "Write the answer as JSON to this file too")->type_name("FILE");
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  add_mesh_edge_option(*command, wanted->edge_mm);
  command->footer(kAimExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_aim(*wanted, streams); }; });
}

}  // namespace wrapgauge
