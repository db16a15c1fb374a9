#include "app/command/commands.hpp"
#include "app/command/job.hpp"
#include "app/command/results.hpp"
#include "app/command/terminal_progress.hpp"
#include "model/core/pressure_text.hpp"
#include "model/io/summary_json.hpp"
#include "model/pipeline/summarise.hpp"

namespace wrapgauge {
namespace {

void say_chambers(const Summary& summary, std::ostream& out) {
  for (const ChamberFigures& chamber : summary.figures.chambers)
    out << chamber.chamber << ": mean " << pressure_text(chamber.mean) << ", peak over 1 cm2 "
        << pressure_text(chamber.peak) << " at " << pressure_text(chamber.gauge) << " inside\n";
}

void say_result(const Summary& summary, const std::filesystem::path& folder, std::ostream& out) {
  if (summary.limit_point) out << "not reached: " << *summary.limit_point << "\n";
  say_chambers(summary, out);
  for (const Finding& finding : summary.findings)
    if (finding.severity != Severity::kNote)
      out << (finding.severity == Severity::kAboveLimit ? "above limit: " : "warning: ") << finding.sentence
          << "\n";
  out << "Predicted by an uncalibrated model; not a medical device. Written to " << folder.string() << "\n";
}

}  // namespace

int say_problem(const Problem& problem, Streams streams) {
  streams.err << "wrapgauge: " << problem.message << "\n";
  return exit_code_of(problem.kind);
}

int run_estimate(const EstimateCommand& command, Streams streams) {
  auto read = read_job(command.plan);
  if (!read) return say_problem(read.problem(), streams);
  Job job = std::move(read).value();
  if (command.edge_mm) job.plan.mesh_edge = *command.edge_mm * mm;

  if (auto made = make_results_folder(command.folder); !made) return say_problem(made.problem(), streams);

  std::optional<Result<Estimate>> estimated;
  {
    TerminalProgress progress;
    estimated = estimate(job.plan, job.body, job.resources, {.mesh_error = command.mesh_error}, progress);
  }
  if (!*estimated) return say_problem(estimated->problem(), streams);
  const Estimate& result = **estimated;
  const Summary summary = summarise(job.plan, result, job.inputs);
  if (auto written = write_results(result, summary, command.folder); !written)
    return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << summary_json(summary);
  else
    say_result(summary, command.folder, streams.out);
  return summary.above_limit ? kExitAboveLimit : kExitDone;
}

}  // namespace wrapgauge
