#!/bin/sh
# Installs what is missing, builds and runs every test.  Usage: sh tests/run.sh [ctest options]
# PRESET=asan sh tests/run.sh runs them under the address and undefined-behaviour sanitizers.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
preset=${PRESET:-release}

# CalculiX solves two of the published checks independently; the program itself does not need it.
install_missing calculix-ccx
build "$preset"
ctest --test-dir "$root/build/$preset" --output-on-failure -j "$(nproc)" "$@"
