#pragma once
// One plan with some of its values changed, over and over: what if.

#include <memory>
#include <string>
#include <vector>

#include "model/plan/plan.hpp"
#include "model/study/plan_path.hpp"

namespace wrapgauge {

// kGrid: every value with every other, the last change runs quickest. kAlong: the first values together, then
// the second ones, and so on.
enum class VariantOrder { kGrid, kAlong };

inline constexpr std::size_t kMostVariants = 10000;

class Variants {
 public:
  // A layout that stands in a file or drawing is written out first, so that its parts can be changed. Every
  // variant is read by the plan's reader. Problems, nothing half-done: no change; two changes of one place;
  // lists of different lengths where they run along; more than kMostVariants; a variant that the reader
  // refuses, with the nearest path where the plan lacks the one asked for.
  static Result<Variants> make(const Plan& plan, std::vector<PathChange> changes, VariantOrder order);

  std::size_t count() const { return count_; }
  const std::vector<PathChange>& changes() const { return changes_; }
  // A JSON text a change.
  std::vector<std::string> values(std::size_t variant) const;
  std::string number(std::size_t variant) const { return std::to_string(variant + 1); }  // from 1
  std::string name(std::size_t variant) const;  // "skin_sheet.thickness 1.5, skin_sheet.material A10"
  Result<Plan> plan(std::size_t variant) const;

 private:
  struct BasePlan;  // as JSON

  std::shared_ptr<const BasePlan> base_;
  std::vector<PathChange> changes_;
  VariantOrder order_ = VariantOrder::kGrid;
  std::size_t count_ = 0;
};

}  // namespace wrapgauge
