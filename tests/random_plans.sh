#!/bin/sh
# Writes docs/random-plans.md: how random plans end. A plan may take SECONDS of processor time and all of them
# TOTAL; what was not begun by then is not counted.  Usage: sh tests/random_plans.sh [FIRST COUNT [SECONDS [TOTAL]]]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
build release random_plans
first=${1:-1} count=${2:-1000} seconds=${3:-120} total=${4:-1000000}
lines=$root/build/random-plans.txt
table=$(nice -n 15 "$root/build/release/tests/random_plans/random_plans" "$first" "$count" "$seconds" "$total" \
  2> "$lines")
others=$(grep -E '^[0-9]+ \| (Problem|stopped|fails)' "$lines" | cut -d '|' -f 1,2,3,5,6 || true)
{
  echo "# Random plans"
  echo
  echo "Written by \`sh tests/random_plans.sh $first $count $seconds $total\`: every form of body and layout, all grades, sheets of"
  echo "0.5 to 4 mm, 0.5 to 30 kPa or 1 to 60 mL an inlet, meshes of 7 to 10 mm; the same seed gives the same plan. At most"
  echo "$seconds s of processor time each. Audit: contact force within 0.1 %, cuts within 10 %. A slice is a test."
  echo
  printf '%s\n' "$table"
  if [ -n "$others" ]; then
    echo
    echo "Those that ended otherwise than at the asked load or a named limit point:"
    echo
    echo "| seed | end | factorisations | plan | message |"
    echo "|---|---|---|---|---|"
    printf '%s\n' "$others" | sed 's/^/| /; s/ *$/ |/; s/The solver stopped after \([0-9]*\) factorisations, which is as far as it goes\. /\1 factorisations. /
      s/No equilibrium was found beyond \(.*\) of the asked inflation; the last one that converged has/Up to \1:/; s/: ask for less, or use a finer mesh//'
  fi
} > "$root/docs/random-plans.md"
