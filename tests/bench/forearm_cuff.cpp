// Time of the demo forearm cuff from plan to contact map, by mesh edge, edge beside seams and how far from a
// seam that holds (tenths of a millimetre), and how far the chambers' figures are from those of a mesh of 2
// mm everywhere.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <variant>

#include "bodyforms/form.hpp"
#include "model/pipeline/pipeline.hpp"
#include "tests/bench/bench_process.hpp"

namespace wrapgauge {
namespace {

Result<Estimate> estimated_cuff(std::int64_t edge, std::int64_t seam_edge, std::int64_t seam_band) {
  Plan plan = read_plan(kResources / "plans/forearm-cuff.json").value();
  plan.mesh_edge = static_cast<double>(edge) * 0.1 * mm;
  plan.mesh_seam_edge = static_cast<double>(seam_edge) * 0.1 * mm;
  plan.mesh_seam_band = static_cast<double>(seam_band) * 0.1 * mm;
  const auto& form = std::get<BodyForm>(plan.body);
  return estimate(plan, make_form(form.form, form.parameters).value(), read_resources(kResources).value(),
                  {false});
}

double percent_apart(Pressure a, Pressure b) {
  return 100.0 * std::abs(a.si() / b.si() - 1.0);
}

void forearm_cuff(benchmark::State& state) {
  const Result<Estimate> fine = estimated_cuff(20, 20, 60);
  for (auto _ : state) {
    const Result<Estimate> result = estimated_cuff(state.range(0), state.range(1), state.range(2));
    if (!result) {
      state.SkipWithError(result.problem().message.c_str());
      break;
    }
    state.counters["nodes"] = result->path.sheet.node_count;
    state.counters["factorisations"] = result->path.factorisations;
    double mean_apart = 0.0, peak_apart = 0.0;
    for (std::size_t c = 0; c < result->figures.chambers.size(); ++c) {
      const ChamberFigures &here = result->figures.chambers[c], &there = fine->figures.chambers[c];
      mean_apart = std::max(mean_apart, percent_apart(here.mean, there.mean));
      peak_apart = std::max(peak_apart, percent_apart(here.peak, there.peak));
    }
    state.counters["mean_apart_percent"] = mean_apart;
    state.counters["peak_apart_percent"] = peak_apart;
  }
}
BENCHMARK(forearm_cuff)
    ->Args({20, 20, 60})
    ->Args({35, 35, 60})
    ->Args({60, 25, 60})
    ->Args({60, 25, 30})
    ->Args({80, 80, 60})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

}  // namespace
}  // namespace wrapgauge
