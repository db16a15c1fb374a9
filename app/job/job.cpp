#include "app/job/job.hpp"

#include "app/job/resource_folder.hpp"
#include "app/job/result_manifest.hpp"
#include "bodyforms/form.hpp"
#include "model/bench/calibration_file.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/limits/own_limits.hpp"
#include "model/limits/shipped_limits.hpp"
#include "model/plan/body_label.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> add_input(const char* role, const std::filesystem::path& file,
                                 std::vector<InputFile>& inputs) {
  auto input = input_file(role, file);
  if (!input) return input.problem();
  inputs.push_back(std::move(input).value());
  return std::nullopt;
}

std::optional<Problem> add_layout(Job& job) {
  const Plan& plan = job.plan;
  if (plan.layout_file)
    if (auto problem = add_input("layout", plan.folder / *plan.layout_file, job.inputs)) return problem;
  if (!plan.layout_drawing) return std::nullopt;
  if (auto problem = add_input("drawing", plan.folder / plan.layout_drawing->file, job.inputs))
    return problem;
  const auto* map = std::get_if<std::filesystem::path>(&plan.layout_drawing->map);
  return map ? add_input("mapping", plan.folder / *map, job.inputs) : std::nullopt;
}

Phrase label_words(const std::filesystem::path& mesh, const BodyLabel& label, const BodyLabel& still_holds) {
  const Phrase name = name_of(label_file_of(mesh).filename().string());
  if (still_holds.sites.size() == label.sites.size())
    return Phrase::worded("label '%1' read: it marks %2 bony and nerve sites.",
                          {name, figures_of(static_cast<int>(label.sites.size()))});
  return Phrase::worded(
      "label '%1' read: its %2 bony and nerve sites and its front are left out, because the "
      "repair steps move the body.",
      {name, figures_of(static_cast<int>(label.sites.size()))});
}

Result<ReadBody> read_body_file(const Plan& plan, const BodyFile& wanted) {
  const std::filesystem::path file = plan.folder / wanted.file;
  auto raw = read_mesh(file);
  if (!raw) return raw.problem();
  const auto label = read_label(file, static_cast<int>(raw->faces.rows()));
  if (!label) return label.problem();
  const BodyLabel known = label_after(label->value_or(BodyLabel{}), wanted.mend);
  const auto axis = wanted.axis_direction ? wanted.axis_direction : known.axis_direction;
  auto mended = mend_body(std::move(raw).value(), {file.stem().string(), wanted.unit, axis}, wanted.mend);
  if (!mended) return mended.problem();
  ReadBody read{mended->checked.body, std::move(mended->reports), {}, {}};
  const BodyReport& report = mended->checked.report;
  read.words = report.notes;
  for (const Repair& repair : report.repairs) read.words.push_back(repair.sentence);
  if (auto problem = add_input("body", file, read.inputs)) return *problem;
  if (!*label) return read;
  apply_label(known, read.body);
  read.words.push_back(label_words(file, **label, known));
  if (auto problem = add_input("body label", label_file_of(file), read.inputs)) return *problem;
  return read;
}

std::vector<std::string> english_words(const ReadBody& read) {
  std::vector<std::string> words;
  for (const MendReport& report : read.mending)
    words.push_back(step_name(report.step) + ": " + english(report.sentence));
  for (const Phrase& phrase : read.words) words.push_back(english(phrase));
  return words;
}

Result<ReadBody> make_body_form(const BodyForm& wanted) {
  auto made = make_measured_form(wanted.form, wanted.parameters, wanted.person);
  if (!made) return made.problem();
  ReadBody read{std::move(made->body), {}, {}, {}};
  const Person& person = wanted.person;
  const Phrase form = name_of(wanted.form);
  read.words = {Phrase::worded(
      "body made from %1; measures not given are those of %2 at percentile %3; it brings %4 bony and nerve "
      "sites.",
      {person.side == BodySide::kLeft ? Phrase::worded("the form '%1', left", {form})
                                      : Phrase::worded("the form '%1'", {form}),
       person.sex.value_or(Sex::kMale) == Sex::kMale ? Phrase::worded("men") : Phrase::worded("women"),
       figures_of(number_text(person.percentile.value_or(50.0), 4)),
       figures_of(static_cast<int>(read.body.bony_sites.size()))})};
  for (const BeyondSurvey& odd : made->beyond_survey) read.words.push_back(beyond_survey_words(odd));
  return read;
}

std::optional<Problem> read_tables(Job& job) {
  const auto folder = resource_folder();
  if (!folder) return folder.problem();
  auto resources = read_resources(*folder);
  if (!resources) return resources.problem();
  job.resources = std::move(resources).value();
  for (const char* name : {"silicones", "tissues", "limits", "comparisons"})
    if (auto problem = add_input(name, *folder / (std::string(name) + ".json"), job.inputs)) return problem;
  return std::nullopt;
}

// The plan's own limit set in place of that of the tables' folder, and either of them held against the set
// that the program ships: a folder of one's own is no way round it.
std::optional<Problem> take_limits(Job& job) {
  if (job.plan.limits_file) {
    const std::filesystem::path file = job.plan.folder / *job.plan.limits_file;
    auto own = read_limit_set(file);
    if (!own) return own.problem();
    job.resources.limits = std::move(own).value();
    if (auto problem = add_input("own limits", file, job.inputs)) return problem;
  }
  const auto shipped = shipped_limit_set();
  const auto comparisons = shipped_comparisons();
  if (!shipped || !comparisons) return shipped ? comparisons.problem() : shipped.problem();
  auto held =
      own_limit_set(std::move(job.resources.limits), *shipped, *comparisons, job.plan.limits_override_reason);
  if (!held) return held.problem();
  job.resources.limits = std::move(held).value();
  return std::nullopt;
}

// Read against the tables and the body as they are.
std::optional<Problem> take_plan_calibration(Job& job, PlanCalibration wanted) {
  if (!job.plan.calibration) return std::nullopt;
  const std::filesystem::path file = job.plan.folder / *job.plan.calibration;
  if (auto problem = add_input("calibration", file, job.inputs)) return problem;
  if (wanted == PlanCalibration::kLeftOut) return std::nullopt;
  const auto calibration = read_calibration(file, job.plan, job.body, job.resources);
  if (!calibration) return calibration.problem();
  take_calibration(*calibration, kUncalibratedFactor, job.resources.limits);
  return std::nullopt;
}

// Every output carries the words of the limit set.
void say_test_object(Job& job) {
  const std::optional<BodyPart> part = job.plan.part ? job.plan.part : job.body.part;
  if (!part || is_worn(*part)) return;
  std::optional<Phrase>& words = job.resources.limits.override_words;
  const Phrase unworn =
      Phrase::worded("Test object: no limit is applied to it, and nobody may wear the device.");
  words = words ? in_a_row({unworn, *words}, " ") : unworn;
}

}  // namespace

Result<InputFile> input_file(const std::string& role, const std::filesystem::path& file) {
  const auto bytes = read_file(file);
  if (!bytes) return bytes.problem();
  return InputFile{role, file.filename().string(), sha256_of(*bytes)};
}

Result<ReadBody> read_body(const Plan& plan) {
  if (const auto* file = std::get_if<BodyFile>(&plan.body)) return read_body_file(plan, *file);
  return make_body_form(std::get<BodyForm>(plan.body));
}

Result<Job> complete_job(Plan plan, std::optional<ReadBody> known_body, PlanCalibration calibration) {
  Job job;
  job.plan = std::move(plan);
  if (auto problem = add_layout(job)) return *problem;
  if (!known_body) {
    auto read = read_body(job.plan);
    const auto* file = std::get_if<BodyFile>(&job.plan.body);
    if (!read) return file ? with_step_named(read.problem(), file->mend) : read.problem();
    known_body = std::move(read).value();
  }
  job.body = std::move(known_body->body);
  job.body_words = english_words(*known_body);
  job.inputs.insert(job.inputs.end(), known_body->inputs.begin(), known_body->inputs.end());
  if (auto problem = read_tables(job)) return *problem;
  if (auto problem = take_limits(job)) return *problem;
  if (auto problem = take_plan_calibration(job, calibration)) return *problem;
  say_test_object(job);
  return job;
}

std::vector<std::filesystem::path> files_outside(const Plan& plan) {
  std::vector<std::filesystem::path> named;
  if (const auto* body = std::get_if<BodyFile>(&plan.body)) named.push_back(body->file);
  if (plan.layout_file) named.push_back(*plan.layout_file);
  if (plan.layout_drawing) {
    named.push_back(plan.layout_drawing->file);
    if (const auto* map = std::get_if<std::filesystem::path>(&plan.layout_drawing->map))
      named.push_back(*map);
  }
  if (plan.limits_file) named.push_back(*plan.limits_file);
  std::erase_if(named, [](const std::filesystem::path& file) {
    const std::filesystem::path shortest = file.lexically_normal();
    return !shortest.is_absolute() && (shortest.empty() || *shortest.begin() != "..");
  });
  return named;
}

Result<Job> read_job(const std::filesystem::path& plan_file, PlanCalibration calibration) {
  auto plan = read_plan(plan_file);
  if (!plan) return plan.problem();
  auto input = input_file("plan", plan_file);
  if (!input) return input.problem();
  auto job = complete_job(std::move(plan).value(), std::nullopt, calibration);
  if (!job) return job.problem();
  Job whole = std::move(job).value();
  whole.inputs.insert(whole.inputs.begin(), std::move(input).value());
  return whole;
}

}  // namespace wrapgauge
