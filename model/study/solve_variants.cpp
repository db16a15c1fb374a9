#include "model/study/solve_variants.hpp"

#include <tbb/task_arena.h>

#include <cmath>

#include "model/core/in_parallel.hpp"
#include "model/core/number_text.hpp"
#include "model/pipeline/solve_forecast.hpp"

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

std::string rough_time_words(double seconds) {
  if (seconds < 90.0) return std::to_string(std::max(1L, std::lround(seconds))) + " s";
  if (seconds < 5400.0) return std::to_string(std::lround(seconds / 60.0)) + " min";
  return std::to_string(std::lround(seconds / 3600.0)) + " h";
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
                                      job.with_ceiling, inner, distances.get());
    inputs->distances->give_back(std::move(distances));
    if (!solved) return solved.problem();
    return variant_json(*solved);
  };
  return solve_runs(orders, folders, part, answer, progress);
}

VaryForecast forecast_variants(const VaryJob& job, std::size_t runs, const Plan& first,
                               const Prepared& prepared) {
  constexpr double kBeside_s = 1.3;  // laying it on and reading every state, beside solving; docs/09-vary.md
  constexpr double kCeilingSolves = 8.0;
  constexpr double kProgram_mb = 60.0, kThread_mb = 25.0, kNodes = 768.0;  // docs/09-vary.md
  const SolveForecast one = forecast_solve(first, prepared, {.mesh_error = false, .relief = false});
  VaryForecast forecast{.runs = runs, .time = {}, .threads = tbb::this_task_arena::max_concurrency()};
  const double larger = std::max(1.0, one.nodes / kNodes);
  const Time one_run =
      (one.time + kBeside_s * larger * second) * (job.with_ceiling ? 1.0 + kCeilingSolves : 1.0);
  const double side_by_side = std::min(static_cast<double>(runs), static_cast<double>(forecast.threads));
  if (runs > 0) forecast.time = one_run * (static_cast<double>(runs) / side_by_side);
  forecast.memory_mb = kProgram_mb + side_by_side * kThread_mb * larger;
  return forecast;
}

std::string forecast_words(const VaryForecast& forecast) {
  return "time: " + std::to_string(forecast.runs) + " variants to solve take of the order of " +
         rough_time_words(forecast.time.si()) + " on " + std::to_string(forecast.threads) +
         (forecast.threads == 1 ? " core" : " cores") + " and " +
         fixed_text(10.0 * std::ceil(forecast.memory_mb / 10.0), 0) +
         " MB of memory; Ctrl-C stops it and keeps what is solved.";
}

}  // namespace wrapgauge
