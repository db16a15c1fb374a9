#include "model/pipeline/hold_against_limits.hpp"

#include "model/pipeline/judgement.hpp"

namespace wrapgauge {

void hold_against_limits(const Plan& plan, const Resources& resources, LimitInputs limit_inputs,
                         std::optional<std::vector<InletRelief>> relief, Estimate& estimate) {
  estimate.limits = resources.limits;
  estimate.limit_inputs = std::move(limit_inputs);
  Judgement judgement =
      judged({estimate.setup, estimate.path, estimate.map, estimate.figures, estimate.audit},
             {estimate.limits, resources.comparisons, estimate.limit_inputs, plan.supply, plan.filling,
              std::move(relief)});
  estimate.findings = std::move(judgement.findings);
  estimate.hazards = std::move(judgement.hazards);
  estimate.relief = std::move(judgement.relief);
  estimate.exposure = std::move(judgement.exposure);
}

}  // namespace wrapgauge
