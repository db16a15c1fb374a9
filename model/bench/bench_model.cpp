#include "model/bench/bench_model.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <mutex>

#include "model/bench/family_solver.hpp"
#include "model/core/both_at_once.hpp"
#include "model/core/in_parallel.hpp"
#include "model/material/silicone.hpp"
#include "model/study/even_mesh.hpp"

namespace wrapgauge {
namespace {

// Of pieces that are solved side by side: only whether to go on.
class CancelOnly : public Progress {
 public:
  explicit CancelOnly(const Progress& outer) : outer_(outer) {}
  bool cancelled() const override { return outer_.cancelled(); }

 private:
  const Progress& outer_;
};

// Does `work` for each and ends with the problem of the first, whatever the threads.
std::optional<Problem> for_each_family(std::size_t count,
                                       const std::function<std::optional<Problem>(std::size_t)>& work) {
  std::vector<std::optional<Problem>> problems(count);
  each_in_parallel(
      count,
      [&](std::size_t k) {
        const LargeWork one_of_many;
        tbb::this_task_arena::isolate([&] { problems[k] = work(k); });
      },
      tbb::simple_partitioner());
  for (const auto& problem : problems)
    if (problem) return problem;
  return std::nullopt;
}

}  // namespace

double strip_load_n(const HyperelasticLaw& law, const Reading& strip) {
  const double stretch = strip.value(ReadingField::kStretched) / strip.value(ReadingField::kLength);
  return stretch_energy(law, stretch, 1.0 / std::sqrt(stretch)).w1 * strip.value(ReadingField::kWidth) *
         strip.value(ReadingField::kThickness);
}

struct BenchModel::Parts {
  std::vector<Reading> rows;
  HyperelasticLaw skin_law, outer_law;
  std::vector<FamilySolver> coarse;
  std::vector<double> correction;  // a row each: own mesh and sensor over coarse mesh
  std::vector<std::optional<double>> nominal;
  std::vector<std::size_t> fitted;
  std::vector<std::vector<double>> last;  // of each coarse family
  std::optional<SheetFactors> last_factors;

  Result<std::vector<FamilySolver>> solvers(const BenchJob& job, const Plan& plan) const;
  std::optional<Problem> solve_nominal(const BenchJob& job, Progress& progress);
  double strip_n(const Reading& strip, const SheetFactors& factors) const;
};

double BenchModel::Parts::strip_n(const Reading& strip, const SheetFactors& factors) const {
  return strip.sheet == SheetSide::kSkin ? factors.skin_law * strip_load_n(skin_law, strip)
                                         : factors.outer_law * strip_load_n(outer_law, strip);
}

Result<std::vector<FamilySolver>> BenchModel::Parts::solvers(const BenchJob& job, const Plan& plan) const {
  std::vector<FamilySolver> all;
  Layout open = plan.layout;
  open.closure.reset();
  const FlatMeshOptions mesh = mesh_of_plan(plan);
  const auto flat = triangulate_layout(open, std::nullopt, mesh);
  if (!flat) return flat.problem();
  for (BenchFamily& family : bench_families(rows, plan.layout, *flat)) {
    auto solver = FamilySolver::make({job.plan, job.body, job.resources, job.preview_edge}, rows,
                                     std::move(family), mesh);
    if (!solver) return solver.problem();
    all.push_back(std::move(solver).value());
  }
  return all;
}

std::optional<Problem> BenchModel::Parts::solve_nominal(const BenchJob& job, Progress& progress) {
  const Plan preview = no_finer_than(job.plan, job.preview_edge);
  auto made = solvers(job, preview);
  if (!made) return made.problem();
  coarse = std::move(made).value();
  const Plan own = no_finer_than(job.plan, job.finest_edge);
  auto fine_made = solvers(job, own);
  if (!fine_made) return fine_made.problem();
  std::vector<FamilySolver> fine = std::move(fine_made).value();
  const bool finer = own.mesh_edge < preview.mesh_edge;
  last.resize(coarse.size());
  std::mutex mutex;
  std::size_t done = 0;
  CancelOnly quiet(progress);
  progress.report("predicting the readings", 0.0);
  return for_each_family(coarse.size(), [&](std::size_t f) -> std::optional<Problem> {
    auto on_own = finer ? fine[f].by_path({}, quiet) : coarse[f].by_path({}, quiet);
    if (!on_own) return on_own.problem();
    const auto sensor = (finer ? fine : coarse)[f].sensor_factors(*on_own, quiet);
    if (!sensor) return sensor.problem();
    auto on_coarse = finer ? coarse[f].by_path({}, quiet) : on_own;
    if (!on_coarse) return on_coarse.problem();
    last[f] = *on_coarse;
    const auto& readings = coarse[f].family().readings;
    for (std::size_t k = 0; k < readings.size(); ++k) {
      nominal[readings[k]] = (*on_own)[k] * (*sensor)[k];
      correction[readings[k]] = *nominal[readings[k]] / last[f][k];
    }
    const std::lock_guard lock(mutex);
    progress.report("predicting the readings",
                    static_cast<double>(++done) / static_cast<double>(coarse.size()));
    return std::nullopt;
  });
}

BenchModel::BenchModel(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
BenchModel::~BenchModel() = default;
BenchModel::BenchModel(BenchModel&&) noexcept = default;
BenchModel& BenchModel::operator=(BenchModel&&) noexcept = default;

Result<BenchModel> BenchModel::make(const BenchJob& job, const std::vector<Reading>& rows,
                                    Progress& progress) {
  auto parts = std::make_unique<Parts>();
  parts->rows = rows;
  parts->nominal.resize(rows.size());
  parts->correction.assign(rows.size(), 1.0);
  const auto skin = find_grade(job.resources.silicones, job.plan.layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(job.resources.silicones, job.plan.layout.outer_sheet.material);
  if (!outer) return outer.problem();
  parts->skin_law = skin->law;
  parts->outer_law = outer->law;
  if (auto problem = parts->solve_nominal(job, progress)) return *problem;
  for (std::size_t row = 0; row < rows.size(); ++row) {
    if (rows[row].kind == ReadingKind::kStrip) parts->nominal[row] = parts->strip_n(rows[row], {});
    if (parts->nominal[row]) parts->fitted.push_back(row);
  }
  parts->last_factors = SheetFactors{};
  return BenchModel(std::move(parts));
}

const std::vector<std::optional<double>>& BenchModel::nominal() const {
  return parts_->nominal;
}

const std::vector<std::size_t>& BenchModel::fitted_rows() const {
  return parts_->fitted;
}

bool BenchModel::tells_of_tissue() const {
  return std::any_of(parts_->coarse.begin(), parts_->coarse.end(), [](const FamilySolver& solver) {
    return solver.family().kind != BenchFamily::Kind::kOffBody;
  });
}

void BenchModel::go_on_from_last() {
  for (FamilySolver& solver : parts_->coarse) solver.keep_last();
}

Result<Eigen::VectorXd> BenchModel::log_predictions(const SheetFactors& factors, Progress& progress) {
  Parts& parts = *parts_;
  SheetFactors of_sheets = factors;
  if (parts.last_factors) of_sheets.tissue = parts.last_factors->tissue;
  const bool same_sheets = parts.last_factors == of_sheets;  // nothing changed but the tissue
  parts.last_factors.reset();                                // until all of them are there
  CancelOnly quiet(progress);
  const auto solve = [&](std::size_t f) -> std::optional<Problem> {
    if (same_sheets && parts.coarse[f].family().kind == BenchFamily::Kind::kOffBody) return std::nullopt;
    auto values = parts.coarse[f].from_known(factors, quiet);
    if (!values) return values.problem();
    parts.last[f] = std::move(values).value();
    return std::nullopt;
  };
  if (auto problem = for_each_family(parts.coarse.size(), solve)) return *problem;
  parts.last_factors = factors;
  std::vector<double> predicted(parts.rows.size(), 1.0);
  for (std::size_t f = 0; f < parts.coarse.size(); ++f) {
    const auto& readings = parts.coarse[f].family().readings;
    for (std::size_t k = 0; k < readings.size(); ++k)
      predicted[readings[k]] = parts.correction[readings[k]] * parts.last[f][k];
  }
  Eigen::VectorXd logs(static_cast<Eigen::Index>(parts.fitted.size()));
  for (std::size_t k = 0; k < parts.fitted.size(); ++k) {
    const std::size_t row = parts.fitted[k];
    if (parts.rows[row].kind == ReadingKind::kStrip) predicted[row] = parts.strip_n(parts.rows[row], factors);
    logs(static_cast<Eigen::Index>(k)) = std::log(predicted[row]);
  }
  return logs;
}

}  // namespace wrapgauge
