#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/command/write_plan_option.hpp"
#include "app/job/study_inputs.hpp"
#include "model/core/file.hpp"
#include "model/study/ceiling_report.hpp"
#include "model/study/spread_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kCeilingExamples =
    "Examples:\n"
    "  wrapgauge ceiling cuff.json\n"
    "  wrapgauge ceiling cuff.json --edge-mm 8 --together --json | jq .together.at\n"
    "All inlets are scaled together in the plan's proportion; then each inlet\n"
    "alone, the others open.\n"
    "  wrapgauge ceiling cuff.json --write cuff-at-ceiling.json\n"
    "Exit code 4: the plan asks for more than its ceiling, or a relief valve of it\n"
    "opens too late.\n";

struct CeilingCommand {
  std::filesystem::path plan;
  std::optional<std::filesystem::path> out, spread, write;
  std::optional<double> edge_mm;
  bool alone = true, json = false;
};

int say_ceiling(const CeilingCommand& command, const Ceiling& ceiling, const std::string& json,
                Streams streams) {
  if (command.out)
    if (auto written = write_file_atomically(*command.out, json); !written)
      return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << json;
  else
    for (const std::string& sentence : ceiling_words(ceiling)) streams.out << wrapped(sentence, 2);
  return ceiling.plan_within ? kExitDone : kExitAboveLimit;
}

// The plan set to its ceiling, beside the sentences. Nothing is written where nothing may be inflated.
std::optional<Problem> write_at_ceiling(const Plan& plan, const Ceiling& ceiling,
                                        const std::filesystem::path& file, Streams streams) {
  const auto set = plan_at_ceiling(plan, ceiling.together);
  if (!set) {
    streams.err << "wrapgauge: " << file.filename().string()
                << " is not written: no inflation is within the limits.\n";
    return std::nullopt;
  }
  if (auto written = write_plan(*set, file); !written) return written.problem();
  return std::nullopt;
}

int run_ceiling(const CeilingCommand& command, Streams streams) {
  if (auto problem = writes_over_plan(command.write, command.plan)) return say_problem(*problem, streams);
  const auto job = read_plan_job(command.plan, streams);
  if (!job) return say_problem(job.problem(), streams);
  Plan plan = job->plan;
  if (command.edge_mm) plan.mesh_edge = *command.edge_mm * mm;
  CeilingOptions options;
  options.alone = command.alone;
  if (command.spread) {
    const auto spread = read_spread(*command.spread / "spread.json", inputs_hash(*job));
    if (!spread) return say_problem(spread.problem(), streams);
    options.spread_factor = spread->limit_factor;
  }
  std::optional<Result<Ceiling>> found;
  {
    TerminalProgress progress;
    found = find_ceiling(plan, job->body, job->resources, options, progress);
  }
  if (!*found) return say_problem(found->problem(), streams);
  if (command.write)
    if (const auto problem = write_at_ceiling(plan, **found, *command.write, streams))
      return say_problem(*problem, streams);
  return say_ceiling(command, **found, ceiling_json(**found, job->plan.name, inputs_hash(*job)), streams);
}

}  // namespace

void add_ceiling(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<CeilingCommand>();
  CLI::App* command = app.add_subcommand("ceiling", "Find the highest inflation within the limits");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->add_option("--out", wanted->out, "Write the answer as JSON to this file too")->type_name("FILE");
  command->add_option("--write", wanted->write, "Write the plan set to its ceiling to this file")
      ->type_name("PLAN");
  command
      ->add_option("--spread", wanted->spread,
                   "Folder of a spread of this plan: keep 19 runs in 20 within the limits too")
      ->type_name("DIR");
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  command->add_flag("!--together", wanted->alone, "All inlets together only, not each alone: quicker");
  add_mesh_edge_option(*command, wanted->edge_mm);
  command->footer(kCeilingExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_ceiling(*wanted, streams); }; });
}

}  // namespace wrapgauge
