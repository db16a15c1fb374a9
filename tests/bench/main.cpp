#include <benchmark/benchmark.h>

#include "model/core/freed_memory.hpp"

int main(int count, char** arguments) {
  wrapgauge::keep_freed_memory();  // as the programs do
  benchmark::Initialize(&count, arguments);
  if (benchmark::ReportUnrecognizedArguments(count, arguments)) return 1;
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
