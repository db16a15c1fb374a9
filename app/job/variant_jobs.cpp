#include "app/job/variant_jobs.hpp"

#include <nlohmann/json.hpp>

#include "app/job/study_inputs.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kKeptAtATime = 16;

// All that body and tables depend on.
std::string key_of(const Plan& plan) {
  const auto json = plan_to_json(plan);
  return json["body"].dump() + json["limits"].dump();
}

}  // namespace

VariantJobs::VariantJobs(Job base)
    : base_(std::move(base)), base_hash_(inputs_hash(base_)), base_key_(key_of(base_.plan)) {
  base_inputs_ = {std::make_shared<const Body>(base_.body),
                  std::make_shared<const Resources>(base_.resources), base_hash_,
                  std::make_shared<DistancePool>(), std::make_shared<WornCases>()};
}

VariantJobs::Shared VariantJobs::made_for(const Plan& variant) const {
  std::optional<ReadBody> known;
  if (variant.body == base_.plan.body) known = ReadBody{base_.body, {}, {}, {}};
  auto made = complete_job(variant, std::move(known), PlanCalibration::kLeftOut);
  if (!made) return {VariantInputs{}, made.problem()};
  Job job = std::move(made).value();
  const std::string hash = base_hash_ + inputs_hash(job);
  return {{std::make_shared<const Body>(std::move(job.body)),
           std::make_shared<const Resources>(std::move(job.resources)), hash,
           std::make_shared<DistancePool>(), std::make_shared<WornCases>()},
          std::nullopt};
}

Result<VariantInputs> VariantJobs::of(const Plan& variant) {
  const std::string key = key_of(variant);
  if (key == base_key_) return base_inputs_;
  const std::lock_guard lock(mutex_);
  auto found = kept_.find(key);
  if (found == kept_.end()) {
    if (kept_.size() >= kKeptAtATime) kept_.clear();
    found = kept_.emplace(key, made_for(variant)).first;
  }
  if (found->second.problem) return *found->second.problem;
  return found->second.inputs;
}

}  // namespace wrapgauge
