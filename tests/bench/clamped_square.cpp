// A clamped square pad of 60 mm at 2 kPa: our sheets, and the same square as a solid in CalculiX, a
// general-purpose finite-element program. Each by its own ladder of meshes, so that both can be read at the
// same error against their own finest mesh. Ours solves the whole square, twice (two sheets), the solid a
// quarter of one sheet.
#include <benchmark/benchmark.h>

#include "tests/published/solid_model.hpp"
#include "tests/published/square_fixture.hpp"

namespace wrapgauge::published {
namespace {

// By mesh edge in tenths of a millimetre.
void square_sheet(benchmark::State& state) {
  const InflationSetup setup = square_setup(0.1 * static_cast<double>(state.range(0)) * mm);
  InflationOptions options = membrane_only(2);
  options.bending = options.contact_offset = true;
  for (auto _ : state) {
    const auto path = inflate(setup, {2.0 * kPa}, options);
    if (!path) {
      state.SkipWithError(path.problem().message.c_str());
      break;
    }
    state.counters["nodes"] = path->sheet.node_count;
    state.counters["rise_mm"] = height_m(*path, path->states.back()) / 1e-3;
  }
}
BENCHMARK(square_sheet)->Arg(80)->Arg(60)->Arg(40)->Arg(30)->Arg(20)->Arg(10)->Unit(benchmark::kMillisecond);

// By cells along a quarter's side.
void square_solid(benchmark::State& state) {
  if (!SolidModel::installed()) {
    state.SkipWithError("calculix-ccx is not installed");
    return;
  }
  const auto cells = static_cast<int>(state.range(0));
  for (auto _ : state) {
    std::string problem;
    const std::optional<double> rise = quarter_square({.cells = cells}, problem);
    if (!rise) {
      state.SkipWithError(problem.c_str());
      break;
    }
    state.counters["rise_mm"] = *rise;
  }
}
BENCHMARK(square_solid)
    ->Arg(2)
    ->Arg(3)
    ->Arg(4)
    ->Arg(6)
    ->Arg(8)
    ->Arg(12)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

}  // namespace
}  // namespace wrapgauge::published
