// The demo forearm cuff from laid flat, closed, to six pressures up to 6 kPa in both inlets, all recorded, by
// mesh edge (tenths of a millimetre): the solver alone, as the table in docs/05-inflation.md counts it.
#include <benchmark/benchmark.h>

#include <variant>

#include "bodyforms/form.hpp"
#include "model/pipeline/prepare.hpp"
#include "tests/bench/bench_process.hpp"

namespace wrapgauge {
namespace {

Result<Prepared> prepared_cuff(double edge_mm) {
  Plan plan = read_plan(kResources / "plans/forearm-cuff.json").value();
  plan.mesh_edge = edge_mm * mm;
  const auto& form = std::get<BodyForm>(plan.body);
  const Body body = body_of_plan(plan, make_form(form.form, form.parameters).value()).value();
  return prepare(plan, body, read_resources(kResources).value(), mesh_of_plan(plan));
}

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
BENCHMARK(inflation_path)->Arg(80)->Arg(40)->Arg(35)->Arg(30)->Arg(22)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace wrapgauge
