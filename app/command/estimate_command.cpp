#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/estimate_report.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/note_studies_options.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/note_files.hpp"
#include "app/job/results.hpp"
#include "app/job/study_inputs.hpp"
#include "app/picture/picture_program.hpp"
#include "model/body/part_rules.hpp"
#include "model/io/writers/summary_json.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/pipeline/solve_forecast.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kEstimateExamples =
    "Examples:\n"
    "  wrapgauge estimate cuff.json --out cuff\n"
    "  wrapgauge estimate cuff.json --out quick --edge-mm 8 --no-mesh-error\n"
    "  wrapgauge estimate cuff.json --out cuff --json | jq .whole\n"
    "  wrapgauge estimate cuff.json --out cuff --note\n"
    "Writes summary.md, summary.json, chambers.csv, body.png, layout.png, body.vtp\n"
    "and layout.vtp. Says the verdict, the chambers and what is above a warning.\n";

struct EstimateCommand {
  std::filesystem::path plan, folder;
  bool json = false;              // summary.json on `out` too
  bool full = false;              // everything on `out`, with whole sentences
  std::optional<double> edge_mm;  // instead of the plan's
  bool mesh_error = true;
  bool wrinkled_too = false;
  bool note = false;  // the study note too
  NoteStudies studies;
  std::optional<std::string> date;  // of the note
};

// Everything is made before anything is written.
Result<std::monostate> write_parts(const EstimateCommand& command, const Estimate& result,
                                   const NoteExtras& extras, ResultFolder& place, Streams streams) {
  std::vector<ResultPart> parts;
  auto results = make_results(result, result.summary);
  if (!results) return results.problem();
  parts.push_back(std::move(results).value());
  if (command.note) {
    auto note = make_note_part(command.plan, result, result.summary, extras);
    if (!note) return note.problem();
    parts.push_back(std::move(note).value());
  }
  return write_set(place, parts, streams);
}

int run_estimate(const EstimateCommand& command, Streams streams) {
  auto read = read_plan_job(command.plan, streams);
  if (!read) return say_problem(read.problem(), streams);
  Job job = std::move(read).value();
  if (command.edge_mm) job.plan.mesh_edge = *command.edge_mm * mm;
  if (command.wrinkled_too) job.plan.compare_wrinkled = true;
  if (command.date) job.plan.date = *command.date;
  const auto extras = read_note_studies(job, command.studies);
  if (!extras) return say_problem(extras.problem(), streams);
  auto prepared = prepare(job.plan, job.body, job.resources, mesh_of_plan(job.plan));
  if (!prepared) return say_problem(prepared.problem(), streams);
  if (command.note)
    if (auto problem = not_of_a_test_object(prepared->part, Phrase::worded("note")))
      return say_problem(*problem, streams);
  if (auto words = long_solve_words(forecast_solve(job.plan, *prepared, {.mesh_error = command.mesh_error})))
    streams.err << wrapped(*words, 2);
  if (auto started = start_picture_program(); !started) return say_problem(started.problem(), streams);
  auto opened = ResultFolder::open(command.folder, origin_of(job));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();

  std::optional<Result<Estimate>> estimated;
  {
    TerminalProgress progress;
    estimated = estimate(job.plan, job.body, job.resources,
                         {.mesh_error = command.mesh_error,
                          .prepared = std::make_shared<const Prepared>(std::move(prepared).value()),
                          .inputs = job.inputs},
                         progress);
  }
  if (!*estimated) return say_problem(estimated->problem(), streams);
  const Estimate& result = **estimated;
  const Summary& summary = result.summary;
  if (auto written = write_parts(command, result, *extras, place, streams); !written)
    return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << summary_json(summary);
  else
    streams.out << estimate_report(summary, command.folder, command.full);
  return exit_code_of(summary.worst);
}

}  // namespace

void add_estimate(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<EstimateCommand>();
  CLI::App* command = app.add_subcommand("estimate", "Solve a plan and write what was found");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->add_option("--out", wanted->folder, "Folder for the results; made if it is missing")
      ->required()
      ->type_name("DIR");
  command->add_flag("--json", wanted->json, "Print summary.json instead of sentences");
  command->add_flag("--full", wanted->full,
                    "List everything that was found: notes, sources, hazards and comparisons too");
  add_mesh_edge_option(*command, wanted->edge_mm);
  command->add_flag("!--no-mesh-error", wanted->mesh_error,
                    "Do not solve once more on a coarser mesh: quicker, but the mesh error stays unknown");
  command->add_flag(
      "--wrinkled-too", wanted->wrinkled_too,
      "Solve once more with wrinkling instead of compression in the sheets (or the other way round) "
      "and say how the chambers differ");
  command->add_flag("--note", wanted->note, "Write the study note too, as `wrapgauge note` does");
  add_note_studies_options(*command, wanted->studies, "--note");
  add_note_date_option(*command, wanted->date, "--note");
  command->footer(kEstimateExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_estimate(*wanted, streams); }; });
}

}  // namespace wrapgauge
