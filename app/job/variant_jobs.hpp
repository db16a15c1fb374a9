#pragma once
// Bodies and tables of the variants of a plan: what they share is read once.

#include <map>
#include <mutex>

#include "app/job/job.hpp"
#include "model/study/solve_variants.hpp"

namespace wrapgauge {

class VariantJobs {
 public:
  explicit VariantJobs(Job base);

  // The base's own where the variant changes neither body nor limits; else a body file is read, or a form
  // made, once for all variants that have it in common. A few of them are kept at a time. From any thread.
  // Problems: those of complete_job.
  Result<VariantInputs> of(const Plan& variant);

 private:
  struct Shared {
    VariantInputs inputs;
    std::optional<Problem> problem;
  };
  Shared made_for(const Plan& variant) const;

  Job base_;
  std::string base_hash_, base_key_;
  VariantInputs base_inputs_;
  std::mutex mutex_;
  std::map<std::string, Shared> kept_;  // by body and limits
};

}  // namespace wrapgauge
