#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/run_folder_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/kept_plans.hpp"
#include "app/job/study_inputs.hpp"
#include "app/job/variant_jobs.hpp"
#include "app/job/vary_files.hpp"
#include "app/picture/picture_program.hpp"
#include "model/study/runs_forecast.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kVaryExamples =
    "Examples:\n"
    "  wrapgauge vary cuff.json --set layout.skin_sheet.thickness=1,1.5,2 \\\n"
    "    --set layout.skin_sheet.material=00-30,A10 --out thickness\n"
    "  wrapgauge vary cuff.json --set 'inflation.lean left.pressure_kpa=1,2,3' \\\n"
    "    --out pressure --ceiling\n"
    "  wrapgauge vary cuff.json --set friction=0.3,0.5 --out here --part 2/4\n"
    "Stopped and started again, it goes on from the runs kept in DIR/runs. Writes\n"
    "variants.csv, .json, .md, .svg and .png and curves.csv, .svg and .png once every\n"
    "variant is there; the same bytes whatever the parts and the number of cores.\n";

constexpr double kCoarseEdge_mm = 8.0;
constexpr std::size_t kKeptAtMost = 40;  // more cannot be looked at

struct VaryCommand {
  std::filesystem::path plan;
  RunFolderOptions runs;
  std::vector<std::string> sets;
  std::optional<double> edge_mm;
  bool along = false, own_mesh = false, ceiling = false;
  bool json = false, keep = false;
};

// Coarse, and never finer than the plan asks for.
Result<VariantMesh> mesh_for(const VaryCommand& command, const Plan& plan, const Variants& variants) {
  if (command.own_mesh) return VariantMesh{};
  for (const PathChange& change : variants.changes())
    if (change.path.starts_with("mesh."))
      return bad_input("--set " + change.path +
                       " changes the mesh, but all variants are solved on one: add --own-mesh.");
  if (command.edge_mm) return VariantMesh{*command.edge_mm * mm};
  return VariantMesh{std::max(kCoarseEdge_mm * mm, plan.mesh_edge)};
}

Result<Variants> variants_for(const VaryCommand& command, const Plan& plan) {
  std::vector<PathChange> changes;
  for (const std::string& text : command.sets) {
    auto change = path_change_of(text);
    if (!change) return change.problem();
    changes.push_back(std::move(change).value());
  }
  return Variants::make(plan, std::move(changes), command.along ? VariantOrder::kAlong : VariantOrder::kGrid);
}

// What lies before the first solve, said on standard error; nothing where the first cannot be laid on.
void say_forecast(const VaryJob& job, std::size_t runs, Streams streams) {
  const auto plan = job.variants.plan(0);
  const auto inputs = plan ? job.inputs(*plan) : plan.problem();
  if (!plan || !inputs || runs == 0) return;
  const Plan first = meshed(*plan, job.mesh);
  const auto prepared = prepare(first, *inputs->body, *inputs->resources, mesh_of_plan(first));
  if (prepared)
    streams.err << wrapped(
        forecast_words(forecast_runs(runs, job.with_ceiling, first, *prepared), "variants"), 2);
}

Result<VaryResult> result_of(const VaryJob& job, const RunAnswers& answers) {
  VaryResult result{job.plan, job.variants, mesh_words(job.mesh), {}};
  for (const auto& answer : answers) {
    auto read = variant_from(*answer);
    if (!read)
      return bad_input("A run that is kept is damaged: delete the folder runs and solve the variants again.");
    result.answers.push_back(std::move(*read));
  }
  return result;
}

double highest_peak_kpa(const VariantAnswer& answer) {
  const auto& names = whole_figure_names();
  const auto peak = std::find_if(names.begin(), names.end(), [](const FigureName& name) {
    return std::string_view(name.key) == "peak_1cm2_kPa";
  });
  return answer.figures.whole.at(static_cast<std::size_t>(peak - names.begin()));
}

KeptFigures kept_figures(const VariantAnswer& answer, Length edge) {
  KeptFigures figures{
      answer.share, highest_peak_kpa(answer) * kPa, {}, answer.exit_code >= kExitAboveLimit, edge};
  for (const ChamberCurve& curve : answer.curves)
    if (!curve.points.empty()) figures.inside = std::max(figures.inside, curve.points.back().gauge_kpa * kPa);
  return figures;
}

// Those with figures, beside the plan, where the window finds them.
std::optional<Problem> keep_variants(const VaryJob& job, const VaryResult& result,
                                     const VaryCommand& command) {
  for (std::size_t v = 0; v < result.answers.size(); ++v) {
    if (result.answers[v].failed) continue;
    const auto plan = result.variants.plan(v);
    if (!plan) return plan.problem();
    const Length edge = meshed(*plan, job.mesh).mesh_edge;
    const auto kept = keep_plan(std::filesystem::absolute(command.plan), *plan, result.variants.name(v),
                                kept_figures(result.answers[v], edge));
    if (!kept) return kept.problem();
  }
  return std::nullopt;
}

int write_and_say(const VaryJob& job, const RunAnswers& answers, const VaryCommand& command,
                  ResultFolder& place, Streams streams) {
  const auto result = result_of(job, answers);
  if (!result) return say_problem(result.problem(), streams);
  const auto made = make_variant_files(job, *result);
  if (!made) return say_problem(made.problem(), streams);
  if (auto written = write_set(place, {*made}, streams); !written)
    return say_problem(written.problem(), streams);
  if (command.keep)
    if (auto problem = keep_variants(job, *result, command)) return say_problem(*problem, streams);
  if (command.json) {
    streams.out << variants_json(*result);
  } else {
    for (const std::string& sentence : vary_words(*result)) streams.out << wrapped(sentence, 2);
    streams.out << "Written to " << command.runs.folder.string() << "\n";
    if (command.keep) streams.out << "Kept in " << kept_folder(command.plan).string() << "\n";
  }
  return worst_exit_code(*result);
}

int run_vary(const VaryCommand& command, Streams streams) {
  const auto part = run_part_of(command.runs.part);
  if (!part) return say_problem(part.problem(), streams);
  auto read = read_plan_job(command.plan, streams, PlanCalibration::kLeftOut);
  if (!read) return say_problem(read.problem(), streams);
  const auto variants = variants_for(command, read->plan);
  if (!variants) return say_problem(variants.problem(), streams);
  if (command.keep && variants->count() > kKeptAtMost)
    return say_problem(bad_input("--keep puts each variant into the tray of the window, and " +
                                 std::to_string(variants->count()) + " are too many to look at: at most " +
                                 std::to_string(kKeptAtMost) + "."),
                       streams);
  const auto mesh = mesh_for(command, read->plan, *variants);
  if (!mesh) return say_problem(mesh.problem(), streams);
  const std::string name = read->plan.name;
  ResultOrigin origin = origin_of(*read);
  VariantJobs jobs(std::move(read).value());
  const VaryJob job{name, *variants, *mesh, command.ceiling, [&](const Plan& plan) { return jobs.of(plan); }};
  const auto orders = variant_orders(job);
  if (!orders) return say_problem(orders.problem(), streams);
  if (auto started = start_picture_program(); !started) return say_problem(started.problem(), streams);
  const RunFolders folders = run_folders(command.runs);
  auto opened = ResultFolder::open(command.runs.folder, std::move(origin));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  const auto kept = kept_runs(*orders, folders);
  if (!kept) return say_problem(kept.problem(), streams);
  if (auto made = make_folder(folders.runs); !made) return say_problem(made.problem(), streams);
  say_forecast(job, static_cast<std::size_t>(missing_runs(*kept) / part->parts), streams);
  std::optional<Result<RunAnswers>> answers;
  {
    TerminalProgress progress;
    answers = solve_variants(job, *orders, folders, *part, progress);
  }
  if (!*answers) return say_problem(answers->problem(), streams);
  if (const int missing = missing_runs(**answers); missing > 0)
    return say_part_done("vary", missing, orders->size(), command.runs, streams);
  return write_and_say(job, **answers, command, place, streams);
}

void add_vary_options(CLI::App& command, VaryCommand& wanted) {
  command.add_option("plan", wanted.plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command
      .add_option(
          "--set", wanted.sets,
          "A place of the plan and its values: layout.skin_sheet.thickness=1,1.5,2; an item of a list by "
          "its name; repeat it for a grid of all combinations")
      ->required()
      ->allow_extra_args(false)
      ->type_name("PATH=V1,V2,...");
  command.add_flag("--along", wanted.along, "Take the values of all lists together instead of a grid");
  add_run_folder_options(command, wanted.runs);
  add_mesh_edge_option(command, wanted.edge_mm);
  command.add_flag("--own-mesh", wanted.own_mesh, "The mesh of each variant's plan instead of one of 8 mm")
      ->excludes("--edge-mm");
  command.add_flag("--ceiling", wanted.ceiling, "Find the highest inflation within the limits of each too");
  command.add_flag("--keep", wanted.keep,
                   "Keep each variant beside the plan too, in the tray that the window shows");
  command.add_flag("--json", wanted.json, "Print variants.json instead of sentences");
}

}  // namespace

void add_vary(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<VaryCommand>();
  CLI::App* command =
      app.add_subcommand("vary", "Solve variants of a plan and set them side by side: what if");
  add_vary_options(*command, *wanted);
  command->footer(kVaryExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_vary(*wanted, streams); }; });
}

}  // namespace wrapgauge
