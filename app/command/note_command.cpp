#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/note_studies_options.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/note_files.hpp"
#include "app/job/study_inputs.hpp"
#include "app/picture/picture_program.hpp"
#include "model/body/part_rules.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/pipeline/solve_forecast.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kNoteExamples =
    "Examples:\n"
    "  wrapgauge note cuff.json --out cuff\n"
    "  wrapgauge note cuff.json --out cuff --spread cuff-spread \\\n"
    "      --ceiling cuff-ceiling.json\n"
    "  wrapgauge note cuff.json --out cuff --date 2026-11-29\n"
    "Solves the plan and writes note.pdf, note.html and note.md, the same words,\n"
    "with note-place.png and note-pressure.png. To have the other results too, use\n"
    "estimate with --note, which solves once. Without a day in the plan or in\n"
    "--date its cell stays empty. A note is refused when no equilibrium was found,\n"
    "when the inflation asked for is never reached, and when an input file changed\n"
    "while the plan was solved or since the spread or ceiling was found.\n";

struct NoteCommand {
  std::filesystem::path plan, folder;
  std::optional<double> edge_mm;
  NoteStudies studies;
  std::optional<std::string> date;
};

int run_note(const NoteCommand& command, Streams streams) {
  auto read = read_plan_job(command.plan, streams);
  if (!read) return say_problem(read.problem(), streams);
  Job job = std::move(read).value();
  if (command.edge_mm) job.plan.mesh_edge = *command.edge_mm * mm;
  if (command.date) job.plan.date = *command.date;
  const auto extras = read_note_studies(job, command.studies);
  if (!extras) return say_problem(extras.problem(), streams);
  auto prepared = prepare(job.plan, job.body, job.resources, mesh_of_plan(job.plan));
  if (!prepared) return say_problem(prepared.problem(), streams);
  if (auto problem = not_of_a_test_object(prepared->part, Phrase::worded("note")))
    return say_problem(*problem, streams);
  if (auto words = long_solve_words(forecast_solve(job.plan, *prepared))) streams.err << wrapped(*words, 2);
  if (auto started = start_picture_program(); !started) return say_problem(started.problem(), streams);
  auto opened = ResultFolder::open(command.folder, origin_of(job));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  std::optional<Result<Estimate>> estimated;
  {
    TerminalProgress progress;
    estimated = estimate(
        job.plan, job.body, job.resources,
        {.prepared = std::make_shared<const Prepared>(std::move(prepared).value()), .inputs = job.inputs},
        progress);
  }
  if (!*estimated) return say_problem(estimated->problem(), streams);
  const Summary& summary = (*estimated)->summary;
  const auto note = make_note_part(command.plan, **estimated, summary, *extras);
  if (!note) return say_problem(note.problem(), streams);
  if (auto written = write_set(place, {*note}, streams); !written)
    return say_problem(written.problem(), streams);
  streams.out << "Status: " << status_text(summary) << ".\nNote written to "
              << (command.folder / "note.pdf").string() << "; empty cells are for the study to fill.\n";
  return exit_code_of(summary.worst);
}

}  // namespace

void add_note(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<NoteCommand>();
  CLI::App* command = app.add_subcommand("note", "Solve a plan and write the study note for its reviewers");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->add_option("--out", wanted->folder, "Folder for the note; made if it is missing")
      ->required()
      ->type_name("DIR");
  add_mesh_edge_option(*command, wanted->edge_mm);
  add_note_studies_options(*command, wanted->studies);
  add_note_date_option(*command, wanted->date);
  command->footer(kNoteExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_note(*wanted, streams); }; });
}

}  // namespace wrapgauge
