#pragma once
// All variants of a plan, solved and kept (many_runs.hpp), and how long that takes.

#include <functional>
#include <memory>

#include "model/study/distance_pool.hpp"
#include "model/study/variant_run.hpp"

namespace wrapgauge {

// Body and tables of a variant; many share them.
struct VariantInputs {
  std::shared_ptr<const Body> body;
  std::shared_ptr<const Resources> resources;
  std::string inputs_hash;  // of all files they and the plan came from
  std::shared_ptr<DistancePool> distances = std::make_shared<DistancePool>();  // to that body
  std::shared_ptr<WornCases> worn = std::make_shared<WornCases>();             // on it, with those tables
};
// Called from several threads at once.
using InputsOfVariant = std::function<Result<VariantInputs>(const Plan&)>;

struct VaryJob {
  std::string plan;  // its name
  Variants variants;
  VariantMesh mesh;
  bool with_ceiling = false;
  InputsOfVariant inputs;
};

// Every variant with its inputs, the mesh taken over. Problems: of the first variant whose body or tables
// cannot be had.
Result<std::vector<RunOrder>> variant_orders(const VaryJob& job);

// Solves what `part` still lacks. Problems: those of solve_runs and variant_orders.
Result<RunAnswers> solve_variants(const VaryJob& job, const std::vector<RunOrder>& orders,
                                  const RunFolders& folders, const RunPart& part,
                                  Progress& progress = silent_progress());

}  // namespace wrapgauge
