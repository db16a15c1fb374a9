#!/bin/sh
# Fuzzes what reads files of others, under the address and undefined-behaviour sanitizers.
# Usage: sh tests/fuzz/run.sh SECONDS [TARGET...]     one after the other when none is named:
#   plan layout limits readings people svg dxf obj stl ply glb
# Needs clang with libFuzzer (the preset fuzz names clang++-14). Inputs found go to build/fuzz/<target>/found.
# TIMEOUT: seconds by the clock that one input may take, 25 if not set; more on a machine that is busy.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
seconds=${1:?give the seconds to run each target}
shift
[ $# -gt 0 ] || set -- plan layout limits readings people svg dxf obj stl ply glb
command -v clang++-14 >/dev/null || { echo "SKIPPED, NOT TRIED: clang++-14 is missing: apt-get install clang libclang-rt-14-dev"; exit 77; }

[ -f build/fuzz/build.ninja ] || cmake --preset fuzz >&2
wanted=$(for target in "$@"; do echo "fuzz_$target"; done)
# shellcheck disable=SC2086
cmake --build build/fuzz --target $wanted >&2
for target in "$@"; do
  folder=build/fuzz/$target
  mkdir -p "$folder/corpus" "$folder/found"
  case $target in
    plan | layout) seeds="resources/${target}s/*.json tests/fuzz/seeds/*.$target.json" ;;
    limits) seeds="resources/limits.json" ;;
    readings) seeds="resources/plans/*/readings.csv tests/fuzz/seeds/*.readings.csv" ;;
    people) seeds="tests/fuzz/seeds/*.people.csv" ;;
    *) seeds="tests/data/drawing/*.$target tests/data/mesh/*.$target tests/fuzz/seeds/*.$target" ;;
  esac
  for seed in $seeds; do
    [ ! -f "$seed" ] || cp "$seed" "$folder/corpus/"
  done
  echo "== $target"
  build/fuzz/tests/fuzz/fuzz_"$target" "$folder/corpus" -dict="tests/fuzz/$target.dict" -artifact_prefix="$folder/found/" \
    -max_total_time="$seconds" -max_len=16384 -timeout="${TIMEOUT:-25}" -rss_limit_mb=2048 -print_final_stats=1
done
