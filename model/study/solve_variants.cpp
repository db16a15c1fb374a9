#include "model/study/solve_variants.hpp"

#include <tbb/task_arena.h>

#include <cmath>

#include "model/core/in_parallel.hpp"

namespace wrapgauge {
namespace {

Result<RunOrder> order_of(const VaryJob& job, std::size_t variant) {
  const auto plan = job.variants.plan(variant);
  if (!plan) return plan.problem();
  const auto inputs = job.inputs(*plan);
  if (!inputs)
    return bad_input("variant " + job.variants.number(variant) + " (" + job.variants.name(variant) +
                     "): " + inputs.problem().message);
  const Plan on_mesh = meshed(*plan, job.mesh);
  return RunOrder{"variant " + job.variants.number(variant),
                  variant_identity(job.variants, variant, on_mesh, inputs->inputs_hash, job.with_ceiling),
                  cost_of_edge(on_mesh.mesh_edge, 8.0 * mm)};
}

}  // namespace

Result<std::vector<RunOrder>> variant_orders(const VaryJob& job) {
  std::vector<RunOrder> orders(job.variants.count());
  std::vector<std::optional<Problem>> problems(orders.size());
  each_in_parallel(orders.size(), [&](std::size_t v) {
    // A thread that waits while a body is made, which others wait for, must not begin another variant.
    tbb::this_task_arena::isolate([&] {
      auto order = order_of(job, v);
      if (order)
        orders[v] = std::move(order).value();
      else
        problems[v] = order.problem();
    });
  });
  for (const auto& problem : problems)
    if (problem) return *problem;
  return orders;
}

Result<RunAnswers> solve_variants(const VaryJob& job, const std::vector<RunOrder>& orders,
                                  const RunFolders& folders, const RunPart& part, Progress& progress) {
  const auto answer = [&](std::size_t variant, Progress& inner) -> Result<std::string> {
    const auto plan = job.variants.plan(variant);
    if (!plan) return plan.problem();
    const auto inputs = job.inputs(*plan);
    if (!inputs) return inputs.problem();
    auto distances = inputs->distances->borrow();
    const auto solved = solve_variant(meshed(*plan, job.mesh), *inputs->body, *inputs->resources,
                                      job.with_ceiling, inner, {distances.get(), inputs->worn.get()});
    inputs->distances->give_back(std::move(distances));
    if (!solved) return solved.problem();
    return variant_json(*solved);
  };
  return solve_runs(orders, folders, part, answer, progress);
}

}  // namespace wrapgauge
