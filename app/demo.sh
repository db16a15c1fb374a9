#!/bin/sh
# Installs what is missing, builds, and runs the main job on the demo plans.  Usage: sh app/demo.sh [RESULTS]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
results=${1:-$root/demo-results}

install_missing
build release wrapgauge
wrapgauge=$root/build/release/app/command/wrapgauge

# 4 and 5 are honest answers: findings above a limit, and a device that must not be worn as planned.
answered() {
  code=0
  "$@" || code=$?
  case $code in 0 | 4 | 5) ;; *) exit "$code" ;; esac
}

plans=$results/plans/plans
"$wrapgauge" demo "$results/plans"
say ""
ceiling=$results/forearm-cuff-ceiling.json
answered "$wrapgauge" ceiling "$plans/forearm-cuff.json" --together --out "$ceiling"
say ""
answered "$wrapgauge" estimate "$plans/forearm-cuff.json" --out "$results/forearm-cuff" --note --ceiling "$ceiling"
say ""
answered "$wrapgauge" estimate "$plans/calf-sleeve.json" --out "$results/calf-sleeve" --note
say ""
say "Results, a folder each plan: $results"
say "Start with note.pdf, summary.md, body.png and layout.png; body.vtp opens in any VTK viewer."
