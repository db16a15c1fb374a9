// The demo forearm cuff from laid flat, closed, to six pressures up to 6 kPa in both inlets, all recorded, by
// mesh edge (tenths of a millimetre): the solver alone, as docs/speed.md counts it.
#include <benchmark/benchmark.h>

#include "tests/bench/inflated_cuff.hpp"

namespace wrapgauge {
namespace {

void inflation_path(benchmark::State& state) {
  const auto prepared = prepared_cuff(0.1 * static_cast<double>(state.range(0)));
  const std::vector<InflationTarget> targets(2, Pressure(6000.0));
  for (auto _ : state) {
    const auto path = inflate(prepared->setup, targets);
    if (!path) {
      state.SkipWithError(path.problem().message.c_str());
      break;
    }
    state.counters["nodes"] = path->sheet.node_count;
    state.counters["factorisations"] = path->factorisations;
    state.counters["peak_MB"] = peak_megabytes();
  }
}
BENCHMARK(inflation_path)->Arg(80)->Arg(40)->Arg(30)->Arg(22)->Unit(benchmark::kMillisecond);

// One tick of a slider that goes on from the last shape: a path of 120 small steps, a step's share.
void small_step(benchmark::State& state) {
  const auto prepared = prepared_cuff(0.1 * static_cast<double>(state.range(0)));
  constexpr int kSteps = 120;
  InflationOptions options;
  options.steps = kSteps;
  const std::vector<InflationTarget> targets(2, Pressure(6000.0));
  for (auto _ : state) {
    const auto path = inflate(prepared->setup, targets, options);
    if (!path) {
      state.SkipWithError(path.problem().message.c_str());
      break;
    }
    state.counters["factorisations_a_step"] = static_cast<double>(path->factorisations) / kSteps;
    state.counters["step_s"] = benchmark::Counter(
        kSteps, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
  }
}
BENCHMARK(small_step)->Arg(80)->Arg(40)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace wrapgauge
