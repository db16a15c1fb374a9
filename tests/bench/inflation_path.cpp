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

}  // namespace
}  // namespace wrapgauge
