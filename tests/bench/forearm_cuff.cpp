// Time and memory of the demo forearm cuff from plan to contact map, by mesh edge (tenths of a millimetre).
// Peak memory is the process's so far: run one size at a time for it, e.g. --benchmark_filter=/22$
#include <benchmark/benchmark.h>

#include <variant>

#include "bodyforms/form.hpp"
#include "model/pipeline/pipeline.hpp"
#include "tests/bench/bench_process.hpp"

namespace wrapgauge {
namespace {

void forearm_cuff(benchmark::State& state) {
  Plan plan = read_plan(kResources / "plans/forearm-cuff.json").value();
  plan.mesh_edge = static_cast<double>(state.range(0)) * 0.1 * mm;
  const Resources resources = read_resources(kResources).value();
  const auto& form = std::get<BodyForm>(plan.body);
  for (auto _ : state) {
    const auto result = estimate(plan, make_form(form.form, form.parameters).value(), resources, {false});
    if (!result) {
      state.SkipWithError(result.problem().message.c_str());
      break;
    }
    state.counters["nodes"] = result->path.sheet.node_count;
    state.counters["factorisations"] = result->path.factorisations;
    state.counters["cut_balance_percent"] = 100.0 * result->audit.cut_balance;
    state.counters["peak_MB"] = peak_megabytes();
  }
}
BENCHMARK(forearm_cuff)->Arg(80)->Arg(40)->Arg(35)->Arg(20)->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace
}  // namespace wrapgauge
