#include "model/pipeline/read_contact.hpp"

#include "model/core/both_at_once.hpp"
#include "model/inflation/kept_closing.hpp"

namespace wrapgauge {
namespace {

constexpr double kCoarser = 1.6;  // edge ratio of the second mesh: about 2.5 times fewer triangles

// The same stage under another name, so that a second solve is told from the first.
class NamedProgress : public Progress {
 public:
  NamedProgress(Progress& inner, std::string_view name) : inner_(inner), name_(name) {}
  void report(std::string_view, double fraction) override { inner_.report(name_, fraction); }
  bool cancelled() const override { return inner_.cancelled(); }

 private:
  Progress& inner_;
  std::string_view name_;
};

FigureInputs figure_inputs(const Estimate& estimate) {
  return {estimate.skin_grade.elongation_at_break, estimate.outer_grade.elongation_at_break,
          estimate.tissue_depth_m};
}

Estimate taken_over(const Body& body, const Prepared& worn, LoadPath path) {
  Estimate estimate;
  estimate.body = body;
  estimate.closing_length = worn.closing_length;
  estimate.skin_grade = worn.skin_grade;
  estimate.outer_grade = worn.outer_grade;
  estimate.tissue = worn.tissue;
  estimate.tissue_depth_m = worn.bed.depth_m;
  estimate.wrap = worn.wrap;
  estimate.setup = worn.setup;
  estimate.path = std::move(path);
  return estimate;
}

void read_last_state(Estimate& estimate) {
  const EquilibriumState& last = estimate.path.states.back();
  estimate.map = contact_map(estimate.setup, estimate.path, last);
  const auto read_figures = [&] {
    estimate.figures = contact_figures(estimate.body, estimate.setup, figure_inputs(estimate), estimate.path,
                                       last, estimate.map);
  };
  both_at_once(read_figures,
               [&] { estimate.audit = audit(estimate.body, estimate.setup, estimate.path, last); });
}

// The figures of the same body, with something else changed.
Result<Estimate> solve_once_more(const Plan& plan, const Body& body, const Resources& resources,
                                 const FlatMeshOptions& mesh, Progress& progress) {
  progress.report("putting it on", 0.0);
  const auto worn = prepare(plan, body, resources, mesh);
  if (!worn) return worn.problem();
  auto path = inflate(worn->setup, worn->targets, plan.solver, progress, worn->closing.get());
  if (!path) return path.problem();
  progress.report("reading the contact", 0.0);
  Estimate estimate = taken_over(body, *worn, std::move(path).value());
  read_last_state(estimate);
  return estimate;
}

std::optional<Problem> compare_with_coarser_mesh(const Plan& plan, const Resources& resources,
                                                 Progress& progress, Estimate& estimate) {
  NamedProgress coarse_progress(progress, "once more on a coarser mesh");
  const FlatMeshOptions mesh = mesh_of_plan(plan, kCoarser);
  const auto coarse = solve_once_more(plan, estimate.body, resources, mesh, coarse_progress);
  if (!coarse && is_no_answer(coarse.problem().kind)) return coarse.problem();
  if (coarse) estimate.mesh_error = mesh_error(estimate.figures, coarse->figures, mesh.edge);
  return std::nullopt;
}

std::optional<Problem> compare_with(const Plan& other, const std::string& words, const Resources& resources,
                                    Progress& progress, Estimate& estimate) {
  NamedProgress other_progress(progress, "once more for comparison");
  const auto solved = solve_once_more(other, estimate.body, resources, mesh_of_plan(other), other_progress);
  if (!solved && is_no_answer(solved.problem().kind)) return solved.problem();
  if (!solved)
    estimate.comparisons.push_back({words, {}, {}, {}, solved.problem().message});
  else if (solved->path.limit_point || estimate.path.limit_point)
    estimate.comparisons.push_back(
        {words, {}, {}, {}, "one of the two stops before the inflation asked for, so they are not alike."});
  else
    estimate.comparisons.push_back(figures_difference(estimate.figures, solved->figures, words));
  return std::nullopt;
}

std::optional<Problem> compare_assumptions(const Plan& plan, const Resources& resources, Progress& progress,
                                           Estimate& estimate) {
  if (plan.tissue_model == TissueModel::kCoupled) {
    Plan other = plan;
    other.tissue_model = TissueModel::kFoundation;
    if (auto problem = compare_with(other, "tissue as a foundation", resources, progress, estimate))
      return problem;
  }
  if (!plan.compare_wrinkled) return std::nullopt;
  Plan other = plan;
  other.solver.relaxed_compression = !plan.solver.relaxed_compression;
  const std::string words = other.solver.relaxed_compression
                                ? "sheets that wrinkle instead of carrying compression"
                                : "sheets that carry compression instead of wrinkling";
  return compare_with(other, words, resources, progress, estimate);
}

}  // namespace

Result<Estimate> read_contact(const Plan& plan, const Body& body, const Resources& resources,
                              const Prepared& worn, LoadPath path, const EstimateOptions& options,
                              Progress& progress) {
  progress.report("reading the contact", 0.0);
  Estimate estimate = taken_over(body, worn, std::move(path));
  read_last_state(estimate);
  if (options.mesh_error)
    if (auto problem = compare_with_coarser_mesh(plan, resources, progress, estimate)) return *problem;
  if (options.comparisons)
    if (auto problem = compare_assumptions(plan, resources, progress, estimate)) return *problem;
  return estimate;
}

}  // namespace wrapgauge
