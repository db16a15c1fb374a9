#include "app/command/job.hpp"

#include <QByteArray>
#include <QCryptographicHash>

#include "app/command/resource_folder.hpp"
#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/io/mesh_reader.hpp"
#include "model/limits/own_limits.hpp"

namespace wrapgauge {
namespace {

std::string sha256(const std::string& bytes) {
  const QByteArray view = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
  return QCryptographicHash::hash(view, QCryptographicHash::Sha256).toHex().toStdString();
}

std::optional<Problem> add_input(const char* role, const std::filesystem::path& file, Job& job) {
  const auto bytes = read_file(file);
  if (!bytes) return bytes.problem();
  job.inputs.push_back({role, file.filename().string(), sha256(*bytes)});
  return std::nullopt;
}

std::optional<Problem> add_drawing(const DrawnLayout& drawn, Job& job) {
  if (auto problem = add_input("drawing", job.plan.folder / drawn.file, job)) return problem;
  const auto* map = std::get_if<std::filesystem::path>(&drawn.map);
  return map ? add_input("mapping", job.plan.folder / *map, job) : std::nullopt;
}

std::optional<Problem> read_body_file(const BodyFile& wanted, Job& job) {
  const std::filesystem::path file = job.plan.folder / wanted.file;
  auto raw = read_mesh(file);
  if (!raw) return raw.problem();
  auto mended = mend_body(std::move(raw).value(), {file.stem().string(), wanted.unit, wanted.axis_direction},
                          wanted.mend);
  if (!mended) return mended.problem();
  job.body = mended->checked.body;
  for (const MendReport& report : mended->reports)
    job.body_words.push_back(report.step + ": " + report.sentence);
  const BodyReport& report = mended->checked.report;
  job.body_words.insert(job.body_words.end(), report.notes.begin(), report.notes.end());
  for (const Repair& repair : report.repairs) job.body_words.push_back(repair.sentence);
  return add_input("body", file, job);
}

std::optional<Problem> make_body_form(const BodyForm& wanted, Job& job) {
  auto made = make_form(wanted.form, wanted.parameters, wanted.person);
  if (!made) return made.problem();
  job.body = std::move(made).value();
  const Person& person = wanted.person;
  job.body_words = {"body made from the form '" + wanted.form + "'" +
                    (person.side == BodySide::kLeft ? ", left" : "") + "; measures not given are those of " +
                    (person.sex.value_or(Sex::kMale) == Sex::kMale ? "men" : "women") + " at percentile " +
                    number_text(person.percentile.value_or(50.0), 4) + "; it brings " +
                    std::to_string(job.body.bony_sites.size()) + " places that bear less."};
  return std::nullopt;
}

std::optional<Problem> read_tables(Job& job) {
  const auto folder = resource_folder();
  if (!folder) return folder.problem();
  auto resources = read_resources(*folder);
  if (!resources) return resources.problem();
  job.resources = std::move(resources).value();
  for (const char* name : {"silicones", "tissues", "limits", "comparisons"})
    if (auto problem = add_input(name, *folder / (std::string(name) + ".json"), job)) return problem;
  return std::nullopt;
}

// The plan's own limit set in place of the program's.
std::optional<Problem> take_own_limits(Job& job) {
  if (!job.plan.limits_file) return std::nullopt;
  const std::filesystem::path file = job.plan.folder / *job.plan.limits_file;
  auto own = read_limit_set(file);
  if (!own) return own.problem();
  auto held = own_limit_set(std::move(own).value(), job.resources.limits, job.resources.comparisons,
                            job.plan.limits_override_reason);
  if (!held) return held.problem();
  job.resources.limits = std::move(held).value();
  return add_input("own limits", file, job);
}

}  // namespace

Result<Job> read_job(const std::filesystem::path& plan_file) {
  Job job;
  auto plan = read_plan(plan_file);
  if (!plan) return plan.problem();
  job.plan = std::move(plan).value();
  if (auto problem = add_input("plan", plan_file, job)) return *problem;
  if (job.plan.layout_file)
    if (auto problem = add_input("layout", job.plan.folder / *job.plan.layout_file, job)) return *problem;
  if (job.plan.layout_drawing)
    if (auto problem = add_drawing(*job.plan.layout_drawing, job)) return *problem;
  const auto* file = std::get_if<BodyFile>(&job.plan.body);
  auto problem = file ? read_body_file(*file, job) : make_body_form(std::get<BodyForm>(job.plan.body), job);
  if (problem) return *problem;
  if (problem = read_tables(job); problem) return *problem;
  if (problem = take_own_limits(job); problem) return *problem;
  return job;
}

}  // namespace wrapgauge
