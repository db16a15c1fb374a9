#include "model/bench/calibrate.hpp"

#include <algorithm>
#include <cmath>

#include "model/bench/readings_file.hpp"
#include "model/bench/slip_check.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

// Enough of a law to know it by: its stress at stretches that devices reach.
std::string law_text(const HyperelasticLaw& law) {
  std::string text(law_name(law));
  for (const auto& [l1, l2] : {std::pair(1.1, 1.0), {1.5, 1.0}, {2.0, 1.2}, {3.0, 1.0}})
    text.append(1, ' ').append(number_text(stretch_energy(law, l1, l2).w1, 12));
  return text;
}

std::string kinds_text(const std::vector<Reading>& rows) {
  std::string text;
  for (int k = 0; k < kReadingKinds; ++k) {
    const auto kind = static_cast<ReadingKind>(k);
    const auto count =
        std::count_if(rows.begin(), rows.end(), [&](const Reading& row) { return row.kind == kind; });
    if (count == 0) continue;
    if (!text.empty()) text += ", ";
    text += std::to_string(count);
    text += ' ';
    text += kind_name(kind);
  }
  return text;
}

// Contact that was read on a person tells of the wearer's tissue; a dummy's tissue is its own.
bool read_on_person(const std::vector<Reading>& rows) {
  return std::any_of(rows.begin(), rows.end(),
                     [](const Reading& row) { return row.kind == ReadingKind::kContact && row.on_person; });
}

Result<BodyPart> part_of_plan(const Plan& plan, const Body& body) {
  const auto own = body_of_plan(plan, body);
  if (!own) return own.problem();
  return own->part.value_or(BodyPart{});
}

// Of one of the rows: the file is named too.
Problem in_readings(const Readings& readings, const Problem& problem) {
  return problem.message.starts_with("line ") ? told_of(readings.file, problem) : problem;
}

LogResponse response_of(BenchModel& model, Progress& progress) {
  int solved = 0;
  const auto predict = [&model, &progress, solved](const Eigen::VectorXd& parameters) mutable {
    std::string stage = "fitting, solve ";
    stage += std::to_string(++solved);
    progress.report(stage, 0.0);
    return model.log_predictions(factors_of(parameters), progress);
  };
  std::vector<bool> is_free(kFitParameters, true);
  is_free.back() = model.tells_of_tissue();
  return with_differences(
      predict, [&model] { model.go_on_from_last(); }, is_free);
}

}  // namespace

std::optional<SeamHold> seam_hold(const std::vector<Reading>& rows) {
  constexpr double kOneSided = 1.645;  // 95 %
  std::optional<SeamHold> hold;
  for (const Reading& row : rows) {
    if (row.kind != ReadingKind::kPeel) continue;
    const LineTension at(row.value(ReadingField::kMass) / row.value(ReadingField::kWidth) *
                         std::exp(-kOneSided * row.error));
    hold = SeamHold{hold ? std::min(hold->holds, at) : at, hold ? hold->readings + 1 : 1};
  }
  return hold;
}

Result<std::string> materials_hash(const Plan& plan, const Body& body, const Resources& resources) {
  const auto skin = find_grade(resources.silicones, plan.layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(resources.silicones, plan.layout.outer_sheet.material);
  if (!outer) return outer.problem();
  const std::string site = plan.tissue_site.empty() ? body.tissue_site : plan.tissue_site;
  const auto tissue = find_tissue(resources.tissues, site);
  if (!tissue) return tissue.problem();
  return hash_text(law_text(skin->law) + "; " + law_text(outer->law) + "; " + tissue->name + " " +
                   number_text(tissue->young.si(), 12) + " " + number_text(tissue->poisson, 12) + " " +
                   number_text(tissue->depth.si(), 12) + " " +
                   number_text(plan.tissue_stiffness_factor.value_or(1.0), 12));
}

Result<BenchResult> calibrate(const BenchJob& job, const Readings& readings, Progress& progress) {
  Resources bare = job.resources;
  bare.limits.calibration.reset();
  auto materials = materials_hash(job.plan, job.body, bare);
  if (!materials) return materials.problem();
  const auto part = part_of_plan(job.plan, job.body);
  if (!part) return part.problem();
  auto made = BenchModel::make({job.plan, job.body, bare, job.preview_edge, job.finest_edge}, readings.rows,
                               progress);
  if (!made) return in_readings(readings, made.problem());
  BenchModel model = std::move(made).value();
  if (auto problem = slip_of(readings, model.nominal())) return *problem;
  std::vector<double> nominal;
  for (const std::size_t row : model.fitted_rows()) nominal.push_back(*model.nominal()[row]);
  auto fit = fit_bench({readings.rows, model.fitted_rows(), nominal, model.tells_of_tissue()},
                       response_of(model, progress));
  if (!fit) return fit.problem();
  BenchResult result{readings,
                     model.nominal(),
                     std::move(fit).value(),
                     {},
                     {},
                     std::max(job.finest_edge, job.plan.mesh_edge),
                     std::max(job.preview_edge, job.plan.mesh_edge)};
  result.model_factor = model_factor(readings.rows, result.fit, job.plan.layout, readings.part == *part);
  Calibration& out = result.calibration;
  out.readings = static_cast<int>(readings.rows.size());
  out.kinds = kinds_text(readings.rows);
  out.date = readings.date;
  out.remark = readings.remark;
  out.factors = result.fit.factors;
  if (!read_on_person(readings.rows) && is_worn(*part)) out.factors.tissue = 1.0;
  out.model_factor = result.model_factor.factor;
  out.model_factor_why = english(result.model_factor.why);
  out.seams = seam_hold(readings.rows);
  out.part = readings.part;
  out.posture = readings.posture;
  out.layout_hash = layout_hash(job.plan.layout);
  out.materials_hash = std::move(materials).value();
  out.readings_hash = readings.hash;
  return result;
}

}  // namespace wrapgauge
