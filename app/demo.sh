#!/bin/sh
# Installs what is missing, builds, and runs the main job on the demo plans.  Usage: sh app/demo.sh [RESULTS]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
results=${1:-$root/demo-results}

install_missing
build release wrapgauge
wrapgauge=$root/build/release/app/command/wrapgauge

"$wrapgauge" demo "$results/plans"
for plan in forearm-cuff calf-sleeve; do
  say ""
  code=0
  "$wrapgauge" estimate "$results/plans/plans/$plan.json" --out "$results/$plan" --note || code=$?
  # 4 and 5 are honest answers: findings above a limit, and a device that must not be worn as planned.
  case $code in 0 | 4 | 5) ;; *) exit "$code" ;; esac
done
say ""
say "Results, a folder each plan: $results"
say "Start with note.pdf, summary.md, body.png and layout.png; body.vtp opens in any VTK viewer."
