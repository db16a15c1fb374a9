#include "model/pipeline/pipeline.hpp"

#include <algorithm>

#include "model/core/both_at_once.hpp"
#include "model/core/number_text.hpp"
#include "model/pipeline/hold_against_limits.hpp"
#include "model/pipeline/prepare.hpp"

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

void take_over(Prepared& prepared, const Resources& resources, const Plan& plan, Estimate& estimate) {
  estimate.closing_length = prepared.closing_length;
  estimate.skin_grade = prepared.skin_grade;
  estimate.outer_grade = prepared.outer_grade;
  estimate.tissue = prepared.tissue;
  estimate.tissue_depth_m = std::move(prepared.bed.depth_m);
  estimate.wrap = std::move(prepared.wrap);
  estimate.limits = resources.limits;
  estimate.limit_inputs = limit_inputs(plan, prepared);
  estimate.setup = std::move(prepared.setup);
}

void read_contact(Estimate& estimate) {
  const EquilibriumState& last = estimate.path.states.back();
  estimate.map = contact_map(estimate.body, estimate.setup, estimate.path, last);
  const auto read_figures = [&] {
    estimate.figures = contact_figures(estimate.body, estimate.setup, figure_inputs(estimate), estimate.path,
                                       last, estimate.map);
  };
  both_at_once(read_figures,
               [&] { estimate.audit = audit(estimate.body, estimate.setup, estimate.path, last); });
}

// inflation -> contact, without limits.
Result<Estimate> solve_prepared(const Plan& plan, const Body& body, const Resources& resources,
                                Prepared ready, Progress& progress) {
  Estimate estimate;
  estimate.body = body;
  take_over(ready, resources, plan, estimate);
  auto path = inflate(estimate.setup, ready.targets, plan.solver, progress, ready.closing.get());
  if (!path) return path.problem();
  estimate.path = std::move(path).value();
  progress.report("reading the contact", 0.0);
  read_contact(estimate);
  return estimate;
}

// body -> contact, without limits, on one mesh.
Result<Estimate> solve(const Plan& plan, const Body& body, const Resources& resources,
                       const FlatMeshOptions& mesh, Progress& progress) {
  progress.report("putting it on", 0.0);
  auto prepared = prepare(plan, body, resources, mesh);
  if (!prepared) return prepared.problem();
  return solve_prepared(plan, body, resources, std::move(prepared).value(), progress);
}

std::optional<Problem> compare_with_coarser_mesh(const Plan& plan, const Resources& resources,
                                                 Progress& progress, Estimate& estimate) {
  NamedProgress coarse_progress(progress, "once more on a coarser mesh");
  const FlatMeshOptions mesh = mesh_of_plan(plan, kCoarser);
  const auto coarse = solve(plan, estimate.body, resources, mesh, coarse_progress);
  if (!coarse && coarse.problem().kind == ProblemKind::kCancelled) return coarse.problem();
  if (coarse) estimate.mesh_error = mesh_error(estimate.figures, coarse->figures, mesh.edge);
  return std::nullopt;
}

std::optional<Problem> compare_with(const Plan& other, const std::string& words, const Resources& resources,
                                    Progress& progress, Estimate& estimate) {
  NamedProgress other_progress(progress, "once more for comparison");
  const auto solved = solve(other, estimate.body, resources, mesh_of_plan(other), other_progress);
  if (!solved && solved.problem().kind == ProblemKind::kCancelled) return solved.problem();
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

std::string closing_words(const ClosureReport& closure) {
  const auto mm_text = [](Length length) { return fixed_text(length / mm, 1) + " mm"; };
  return "closure: girth " + mm_text(closure.girth_at_anchor) + ", closing length " +
         mm_text(closure.closing_length_used) + " (" + mm_text(closure.closing_length_needed) +
         " would meet without stretching)";
}

std::string quality_words(const WrapQuality& quality) {
  return quality.part + ": laid on with stretch " + fixed_text(quality.stretch_min, 3) + " to " +
         fixed_text(quality.stretch_max, 3) + ", shear up to " + fixed_text(quality.shear_max_deg, 1) +
         " degrees";
}

}  // namespace

Severity Estimate::worst() const {
  Severity worst = Severity::kNote;
  for (const Finding& finding : findings) worst = std::max(worst, finding.severity);
  for (const Hazard& hazard : hazards) worst = std::max(worst, hazard.severity);
  return worst;
}

Result<Estimate> estimate(const Plan& plan, Body body, const Resources& resources,
                          const EstimateOptions& options, Progress& progress) {
  const auto ready = body_of_plan(plan, std::move(body));
  if (!ready) return ready.problem();
  auto solved = options.prepared ? solve_prepared(plan, *ready, resources, *options.prepared, progress)
                                 : solve(plan, *ready, resources, mesh_of_plan(plan), progress);
  if (!solved) return solved.problem();
  Estimate estimate = std::move(solved).value();
  hold_against_limits(plan, resources, estimate);
  if (options.mesh_error)
    if (auto problem = compare_with_coarser_mesh(plan, resources, progress, estimate)) return *problem;
  if (options.comparisons)
    if (auto problem = compare_assumptions(plan, resources, progress, estimate)) return *problem;
  progress.report("done", 1.0);
  return estimate;
}

Result<std::vector<std::string>> look(const Plan& plan, const Body& body, const Resources& resources) {
  const auto ready_body = body_of_plan(plan, body);
  if (!ready_body) return ready_body.problem();
  const auto prepared = prepare(plan, *ready_body, resources, mesh_of_plan(plan));
  if (!prepared) return prepared.problem();
  const FlatMesh& flat = prepared->setup.flat;
  std::vector<std::string> words;
  words.push_back("body: '" + ready_body->name + "', " + std::to_string(ready_body->surface.faces.rows()) +
                  " triangles, tissue '" + prepared->tissue.name + "'");
  words.push_back("layout: '" + plan.layout.name + "', " + std::to_string(plan.layout.chambers.size()) +
                  " chambers fed by " + std::to_string(flat.group_inlet.size()) + " inlets, skin sheet " +
                  prepared->skin_grade.hardness + ", outer sheet " + prepared->outer_grade.hardness);
  words.push_back("mesh: " + std::to_string(flat.vertices_m.rows()) + " flat vertices, " +
                  std::to_string(flat.triangles.rows()) + " triangles");
  if (prepared->wrap.closure) words.push_back(closing_words(*prepared->wrap.closure));
  for (const WrapQuality& quality : prepared->wrap.quality) words.push_back(quality_words(quality));
  words.push_back("ready: everything an estimate needs is there; nothing has been solved.");
  return words;
}

}  // namespace wrapgauge
