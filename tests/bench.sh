#!/bin/sh
# Writes docs/speed.md: how long the solver takes, medians of five runs.  Usage: sh tests/bench.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
install_missing
build release wrapgauge_bench
rows=$(mktemp)
trap 'rm -f "$rows"' EXIT
for edge in 80 40 30 22; do
  # A process each, so that its peak memory is its own.
  "$root/build/release/tests/bench/wrapgauge_bench" "--benchmark_filter=^inflation_path/$edge\$" \
    --benchmark_repetitions=5 --benchmark_report_aggregates_only=true --benchmark_format=csv 2>/dev/null |
    sed -n "s/^\"inflation_path\/\([0-9]*\)_median\"/\1/p" >> "$rows"
done
machine=$(sed -n 's/^model name[[:space:]]*: //p' /proc/cpuinfo | head -n 1)
{
  echo "# Speed of the solver"
  echo
  echo "Written by \`sh tests/bench.sh\` on: $machine, $(nproc) processors. Medians of five runs. The demo forearm cuff from laid"
  echo "flat, closed, to six pressures up to 6 kPa in both inlets, all seven states recorded (\`inflate\` alone)."
  echo
  echo "| mesh edge, mm | nodes | time, s | factorisations | peak memory of the process, MB |"
  echo "|---|---|---|---|---|"
  awk -F , '{ printf "| %.1f | %d | %.2f | %d | %d |\n", $1 / 10, $12, $3 / 1000, $11, $13 }' "$rows"
} > "$root/docs/speed.md"
