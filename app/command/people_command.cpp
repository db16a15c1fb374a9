#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/run_folder_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/people_list.hpp"
#include "app/job/study_inputs.hpp"
#include "app/picture/people_picture.hpp"
#include "app/picture/picture_program.hpp"
#include "app/picture/png.hpp"
#include "model/body/part_rules.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/study/even_mesh.hpp"
#include "model/study/people_report.hpp"
#include "model/study/runs_forecast.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kPeopleExamples =
    "Examples:\n"
    "  wrapgauge people cuff.json --percentiles 5,25,50,75,95 --sex both --out who\n"
    "  wrapgauge people cuff.json --list people.csv --out who\n"
    "  wrapgauge people cuff.json --list people.csv --rows-mm 240,252,264 --out who\n"
    "A list has a heading: id and the form's measures in mm (girth_forearm, or\n"
    "girth_forearm_in for inches; sex), or id and file, a body mesh each.\n"
    "Writes people.csv, people.json, people.md and people.png once every run is\n"
    "there; the same bytes whatever the parts, their order and the number of cores.\n"
    "Exit code 4: somebody is above a limit, or the device does not close on them.\n";

struct PeopleCommand {
  std::filesystem::path plan;
  RunFolderOptions runs;
  std::optional<std::filesystem::path> list;
  std::vector<double> percentiles, rows_mm;
  std::string sex = "both";
  std::optional<double> preview_mm;
  bool own_mesh = false, ceiling = true, json = false;
};

std::vector<Sex> sexes_of(const std::string& word) {
  if (word == "both") return {Sex::kFemale, Sex::kMale};
  return {*sex_from_name(word)};
}

Result<std::vector<PersonTried>> people_for(const PeopleCommand& command, const Plan& plan) {
  if (command.list) return people_of_list(plan, *command.list);
  std::vector<double> percentiles = command.percentiles;
  if (percentiles.empty()) percentiles = {5.0, 25.0, 50.0, 75.0, 95.0};
  return people_of_survey(plan, percentiles, sexes_of(command.sex));
}

Result<PeopleOptions> options_for(const PeopleCommand& command, const Plan& plan) {
  PeopleOptions options;
  if (command.preview_mm) options.edge = *command.preview_mm * mm;
  if (command.own_mesh) options.edge = plan.mesh_edge;
  options.ceiling = command.ceiling;
  std::vector<double> rows = command.rows_mm;
  std::sort(rows.begin(), rows.end());
  if (std::adjacent_find(rows.begin(), rows.end()) != rows.end())
    return bad_input("--rows-mm names a closing length twice: keep one.");
  if (!rows.empty() && !plan.layout.closure)
    return bad_input("--rows-mm is for a layout that closes, and this one does not: leave it out.");
  for (const double row : rows) options.rows.push_back(row * mm);
  return options;
}

Result<Body> body_for(const Plan& plan) {
  auto read = read_body(plan);
  if (!read) return read.problem();
  return std::move(read)->body;
}

int write_people(const People& people, const PeopleCommand& command, ResultFolder& place, Streams streams) {
  const bool survey = !command.list;
  const auto png = png_bytes(people_picture(people));
  if (!png) return say_problem(png.problem(), streams);
  const std::string json = people_json(people);
  const ResultPart part{"people",
                        {{"people.csv", people_csv(people)},
                         {"people.json", json},
                         {"people.md", people_markdown(people, survey)},
                         {"people.png", *png}}};
  if (auto written = write_set(place, {part}, streams); !written)
    return say_problem(written.problem(), streams);
  if (command.json) {
    streams.out << json;
  } else {
    for (const std::string& sentence : people_words(people, survey)) streams.out << wrapped(sentence, 2);
    streams.out << wrapped(
        "Predicted by an uncalibrated model; not a medical device; ask a clinician. Written to " +
            command.runs.folder.string() + ".",
        2);
  }
  return people.within() < static_cast<int>(people.people.size()) ? kExitAboveLimit : kExitDone;
}

// What lies before the first solve, said on standard error; a study that goes on has been told.
void say_forecast_of_people(const PeopleJob& job, const RunPart& part, const RunFolders& folders,
                            Streams streams) {
  if (std::filesystem::exists(folders.runs)) return;
  const Plan first = no_finer_than(job.plan, job.options.edge);
  const auto prepared = prepare(first, job.body, job.resources, mesh_of_plan(first));
  const std::size_t runs = (job.people.size() + part.parts - 1) / static_cast<std::size_t>(part.parts);
  if (prepared)
    streams.err << wrapped(
        forecast_words(forecast_runs(runs, job.options.ceiling, first, *prepared), "people"), 2);
}

int run_people(const PeopleCommand& command, Streams streams) {
  const auto part = run_part_of(command.runs.part);
  if (!part) return say_problem(part.problem(), streams);
  const auto job = read_plan_job(command.plan, streams, PlanCalibration::kLeftOut);
  if (!job) return say_problem(job.problem(), streams);
  auto options = options_for(command, job->plan);
  if (!options) return say_problem(options.problem(), streams);
  if (auto problem = not_for_other_bodies(job->plan)) return say_problem(*problem, streams);
  auto people = people_for(command, job->plan);
  if (!people) return say_problem(people.problem(), streams);
  const auto ready = prepare(job->plan, job->body, job->resources, mesh_of_plan(job->plan));
  if (!ready) return say_problem(ready.problem(), streams);
  if (auto problem = not_of_a_test_object(ready->part, Phrase::worded("people")))
    return say_problem(*problem, streams);
  if (auto started = start_picture_program(); !started) return say_problem(started.problem(), streams);
  const RunFolders folders = run_folders(command.runs);
  const PeopleJob wanted{job->plan,         job->body,          job->resources,     body_for,
                         inputs_hash(*job), std::move(*people), std::move(*options)};
  auto opened = ResultFolder::open(command.runs.folder, origin_of(*job));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  say_forecast_of_people(wanted, *part, folders, streams);
  if (auto made = make_folder(folders.runs); !made) return say_problem(made.problem(), streams);
  int missing = 0;
  std::optional<Result<std::optional<People>>> tried;
  {
    TerminalProgress progress;
    tried = try_people(wanted, folders, *part, missing, progress);
  }
  if (!*tried) return say_problem(tried->problem(), streams);
  if (!**tried) return say_part_done("people", missing, wanted.people.size(), command.runs, streams);
  return write_people(***tried, command, place, streams);
}

void add_people_options(CLI::App& command, PeopleCommand& wanted) {
  command.add_option("plan", wanted.plan, "The plan, a JSON file")->required()->type_name("PLAN");
  add_run_folder_options(command, wanted.runs);
  CLI::Option* list =
      command.add_option("--list", wanted.list, "CSV file of the people to try")->type_name("CSV");
  command
      .add_option("--percentiles", wanted.percentiles, "Of the survey, 1 to 99; 5,25,50,75,95 if not given")
      ->delimiter(',')
      ->check(CLI::Range(1.0, 99.0))
      ->excludes(list)
      ->type_name("P,...");
  command.add_option("--sex", wanted.sex, "Whose survey: male, female or both; both if not given")
      ->check(CLI::IsMember({"male", "female", "both"}))
      ->excludes(list);
  command
      .add_option("--rows-mm", wanted.rows_mm,
                  "Closing lengths the device can be fastened at, such as rows of holes")
      ->delimiter(',')
      ->check(CLI::Range(10.0, 3000.0))
      ->type_name("MM,...");
  CLI::Option* own = command.add_flag("--own-mesh", wanted.own_mesh, "Solve on the plan's own mesh: slower");
  command.add_option("--preview-mm", wanted.preview_mm, "Mesh edge of the runs, 1 to 30 mm; 8 if not given")
      ->check(CLI::Range(1.0, 30.0))
      ->excludes(own)
      ->type_name("MM");
  command.add_flag("!--no-ceiling", wanted.ceiling, "Do not look for each person's ceiling: quicker");
  command.add_flag("--json", wanted.json, "Print people.json instead of sentences");
}

}  // namespace

void add_people(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<PeopleCommand>();
  CLI::App* command =
      app.add_subcommand("people", "Find who can wear it: which girths to accept, whom not and why");
  add_people_options(*command, *wanted);
  command->footer(kPeopleExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_people(*wanted, streams); }; });
}

}  // namespace wrapgauge
