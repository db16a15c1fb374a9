#include "model/pipeline/pipeline.hpp"

#include "model/inflation/kept_closing.hpp"
#include "model/note/summarise.hpp"
#include "model/pipeline/hold_against_limits.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/pipeline/read_contact.hpp"
#include "model/pipeline/solved_relief.hpp"

namespace wrapgauge {
Result<Estimate> estimate(const Plan& plan, Body given, const Resources& resources,
                          const EstimateOptions& options, Progress& progress) {
  const KnownBefore known{.prepared = options.prepared.get()};
  if (!options.prepared) progress.report("putting it on", 0.0);

  const auto body = take_body(plan, std::move(given), resources, known);
  if (!body) return body.problem();
  auto layout = lay_out(plan, *body, resources, mesh_of_plan(plan), known);
  if (!layout) return layout.problem();
  const auto worn = put_on(plan, *body, std::move(layout).value(), known);
  if (!worn) return worn.problem();
  auto path = inflate(worn->setup, worn->targets, plan.solver, progress, worn->closing.get());
  if (!path) return path.problem();
  auto found = read_contact(plan, *body->body, resources, *worn, std::move(path).value(), options, progress);
  if (!found) return found.problem();
  Estimate estimate = std::move(found).value();
  const LimitInputs inputs = limit_inputs(plan, *worn);
  std::optional<std::vector<InletRelief>> relief;
  if (options.relief) {
    auto off_path = relief_settings(resources.limits, inputs, estimate.setup, estimate.path, estimate.map,
                                    estimate.figures);
    auto solved = solved_relief({*body->body, *worn, plan.solver, resources.limits, inputs},
                                std::move(off_path), progress);
    if (!solved) return solved.problem();
    relief = std::move(solved->settings);
  }
  hold_against_limits(plan, resources, inputs, std::move(relief), estimate);
  estimate.summary = summarise(plan, estimate, resources.differ, options.inputs);

  progress.report("done", 1.0);
  return estimate;
}

}  // namespace wrapgauge
