#pragma once
// For many runs on one body: a plan that is worn as an earlier one was, and differs in its inflation, session
// and supply alone, is not laid on and closed once more.

#include <memory>
#include <mutex>
#include <utility>
#include <vector>

#include "model/plan/plan.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {

// The last few cases of one body and one set of tables. From any thread.
class WornCases {
 public:
  // As StudyCase::make would have it, to the same bits. None: no plan was worn so lately. Problems: those of
  // with_inflation_of.
  std::optional<Result<StudyCase>> as_worn(const Plan& plan) const {
    const std::shared_ptr<const StudyCase> worn = find(plan);
    if (!worn) return std::nullopt;
    return worn->with_inflation_of(plan);
  }
  void keep(const Plan& plan, const StudyCase& worn) {
    if (find(plan)) return;
    auto kept = std::make_shared<const StudyCase>(worn);
    const std::lock_guard lock(mutex_);
    if (kept_.size() < kMost)
      kept_.emplace_back(plan, std::move(kept));
    else
      kept_[next_++ % kMost] = {plan, std::move(kept)};
  }

 private:
  static constexpr std::size_t kMost = 8;

  static bool worn_alike(const Plan& one, Plan other) {
    other.inflation = one.inflation;
    other.session = one.session;
    other.supply = one.supply;
    return one == other;
  }
  std::shared_ptr<const StudyCase> find(const Plan& plan) const {
    const std::lock_guard lock(mutex_);
    for (const auto& [before, worn] : kept_)
      if (worn_alike(before, plan)) return worn;
    return nullptr;
  }

  mutable std::mutex mutex_;
  std::vector<std::pair<Plan, std::shared_ptr<const StudyCase>>> kept_;
  std::size_t next_ = 0;
};

}  // namespace wrapgauge
