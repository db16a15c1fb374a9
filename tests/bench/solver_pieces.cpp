// The pieces that an equilibrium is made of, each at the shape of the demo forearm cuff at 6 kPa, by mesh
// edge (tenths of a millimetre): times their number on the path, this is where its time goes.
#include <benchmark/benchmark.h>
#include <cholmod.h>

#include <map>
#include <memory>

#include "model/inflation/cholmod_view.hpp"
#include "model/inflation/equilibrium_system.hpp"
#include "model/inflation/factorisation.hpp"
#include "tests/bench/inflated_cuff.hpp"

extern "C" void openblas_set_num_threads(int);

namespace wrapgauge {
namespace {

struct Inflated {
  Result<Prepared> prepared;
  EquilibriumSystem system;
  Factorisation factorisation;
  std::vector<CavityLoad> loads;
  Points3 shape_m;
  Evaluation now;
  std::vector<double> definite;  // the tangent with a shift

  explicit Inflated(double edge_mm)
      : prepared(prepared_cuff(edge_mm)),
        system(prepared->setup, {}),
        factorisation(make_factorisation(system.tangent()).value()),
        loads(2, CavityLoad::pressure(6000.0)),
        shape_m(inflate(prepared->setup, {Pressure(6000.0), Pressure(6000.0)})
                    .value()
                    .states.back()
                    .positions_m) {
    system.refresh(shape_m);
    now = system.evaluate(shape_m, loads, TangentKind::kExact);
    constexpr double kDefinite = 20.0;  // N/m
    for (int node = 0; node < system.sheet().node_count; ++node)
      system.tangent().add_diagonal(node, kDefinite);
    definite = system.tangent().values();
  }
};

Inflated& inflated_cuff(std::int64_t edge) {
  static std::map<std::int64_t, std::unique_ptr<Inflated>> cuffs;
  auto& kept = cuffs[edge];
  if (!kept) kept = std::make_unique<Inflated>(0.1 * static_cast<double>(edge));
  return *kept;
}

template <class Piece>
void timed(benchmark::State& state, const Piece& piece) {
  Inflated& cuff = inflated_cuff(state.range(0));
  cuff.system.tangent().set_values(cuff.definite);
  if (!cuff.factorisation.factor_definite(cuff.system.tangent(), Digits::kSingle))
    state.SkipWithError("not definite");
  for (auto _ : state) piece(cuff);
}

void factorise(benchmark::State& state) {
  timed(state, [](Inflated& cuff) {
    benchmark::DoNotOptimize(cuff.factorisation.factor_definite(cuff.system.tangent(), Digits::kSingle));
  });
}
// CHOLMOD's own supernodal factors of the same matrix, in METIS's order, double precision, BLAS of one
// thread: how fast the machine is.
void factorise_by_library(benchmark::State& state) {
  openblas_set_num_threads(1);
  cholmod_common common{};
  cholmod_start(&common);
  common.supernodal = CHOLMOD_SUPERNODAL;
  common.nmethods = 1;
  common.method[0].ordering = CHOLMOD_METIS;
  Inflated& cuff = inflated_cuff(state.range(0));
  const BlockMatrix& tangent = cuff.system.tangent();
  cholmod_sparse matrix = view_of(tangent.column_starts(), tangent.row_indices(), cuff.definite.data());
  cholmod_factor* factor = cholmod_analyze(&matrix, &common);
  for (auto _ : state) {
    cholmod_factorize(&matrix, factor, &common);
    if (common.status != CHOLMOD_OK) state.SkipWithError("not definite");
  }
  state.counters["GFlop/s"] = benchmark::Counter(common.fl, benchmark::Counter::kIsIterationInvariantRate,
                                                 benchmark::Counter::kIs1000);
  cholmod_free_factor(&factor, &common);
  cholmod_finish(&common);
}
void solve(benchmark::State& state) {
  timed(state,
        [](Inflated& cuff) { benchmark::DoNotOptimize(cuff.factorisation.solve(cuff.now.gradient_n)); });
}
// At a shape that differs by a hair each time: what is made for one shape is kept.
void evaluate(benchmark::State& state, TangentKind kind) {
  timed(state, [&](Inflated& cuff) {
    cuff.shape_m.array() += 1e-12;
    benchmark::DoNotOptimize(cuff.system.evaluate(cuff.shape_m, cuff.loads, kind));
  });
}
void evaluate_with_tangent(benchmark::State& state) {
  evaluate(state, TangentKind::kExact);
}
void evaluate_alone(benchmark::State& state) {
  evaluate(state, TangentKind::kNone);
}
// As a rule the shape was evaluated before.
void refresh(benchmark::State& state) {
  timed(state, [](Inflated& cuff) { cuff.system.refresh(cuff.shape_m); });
}

#define WRAPGAUGE_PIECE(name) \
  BENCHMARK(name)->Arg(80)->Arg(40)->Arg(22)->Unit(benchmark::kMillisecond)->UseRealTime()
WRAPGAUGE_PIECE(factorise);
WRAPGAUGE_PIECE(factorise_by_library);
WRAPGAUGE_PIECE(solve);
WRAPGAUGE_PIECE(evaluate_with_tangent);
WRAPGAUGE_PIECE(evaluate_alone);
WRAPGAUGE_PIECE(refresh);

}  // namespace
}  // namespace wrapgauge
