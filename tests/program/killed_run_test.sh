#!/bin/sh
# A folder of results whose runs are killed forty times, at moments drawn at random, always holds one whole set: that
# of the plan before or that of the plan now. Half of them are killed with TERM. Kills at every system call of the
# writing: tests/job/result_folder_test.cpp.
#
#   sh killed_run_test.sh PROGRAM
set -u
program=$1
kills=40

. "$(dirname "$0")/../scratch.sh"

# A band on a cylinder, invented, that solves in a blink.
plan() {
  cat >"$scratch/$1.json" <<PLAN
{"wrapgauge-plan": 1, "name": "small band",
 "body": {"form": "cylinder", "part": "forearm"}, "tissue": {"site": "forearm relaxed"},
 "layout": {"wrapgauge-layout": 1, "name": "band",
  "outline": {"rectangle": {"x": 0, "y": 0, "width": 270, "height": 50, "corner_radius": 0}},
  "chambers": [{"name": "pad", "rectangle": {"x": 60, "y": 10, "width": 50, "height": 30, "corner_radius": 8}}],
  "inlets": [{"name": "valve", "point": [85, 25]}],
  "skin_sheet": {"material": "00-30", "thickness": 1.5}, "outer_sheet": {"material": "A10", "thickness": 2},
  "backing": {"along": 1.5, "across": 1}, "closure": {"from_x": 0, "stretch": -0.02}},
 "wear": {"anchor": {"station_mm": 120, "angle_deg": 90}, "layout_point_mm": [85, 25]},
 "inflation": [{"inlet": "valve", "pressure_kpa": $2}], "limits": {"use": "short hold"},
 "mesh": {"edge_mm": 14}, "solver": {"steps": 2}}
PLAN
}
plan a 1
plan b 1.5
estimate() {
  "$program" estimate "$scratch/$1.json" --out "$2" --no-mesh-error >/dev/null 2>&1
  code=$?
  [ "$code" -eq 0 ] || [ "$code" -eq 4 ] || [ "$code" -eq 5 ] || fail "the run left alone ended with $code"
}
# Of every file but the mark: name and hash.
set_of() {
  (cd "$1" && find . -type f ! -name 'OUT-OF-DATE.txt*' | sort | xargs sha256sum) || fail "$1 is not there"
}
now() {
  awk '{print $1}' /proc/uptime
}

mkdir "$scratch/there"
results=$scratch/there/cuff
for name in a b; do
  estimate $name "$scratch/alone-$name"
  set_of "$scratch/alone-$name" >"$scratch/$name.sums"
done
before=$(now)
estimate a "$results"
took=$(awk "BEGIN {print $(now) - $before}")
cmp -s "$scratch/a.sums" "$scratch/b.sums" && fail "the two plans give the same results"

n=0 left=0 whole_b=0 marked=0 ended=0
while [ "$n" -lt "$kills" ]; do
  "$program" estimate "$scratch/b.json" --out "$results" --no-mesh-error >/dev/null 2>&1 &
  pid=$!
  sleep "$(awk "BEGIN {srand($n); print $took * (0.4 + 0.7 * rand())}")"
  signal=$([ $((n % 2)) -eq 0 ] && echo KILL || echo TERM)
  kill -0 "$pid" 2>/dev/null || ended=$((ended + 1))
  kill -"$signal" "$pid" 2>/dev/null
  wait "$pid" 2>/dev/null
  pid=
  set_of "$results" >"$scratch/now.sums"
  if cmp -s "$scratch/now.sums" "$scratch/a.sums"; then
    left=$((left + 1))
    [ -e "$results/OUT-OF-DATE.txt" ] && marked=$((marked + 1))
  elif cmp -s "$scratch/now.sums" "$scratch/b.sums"; then
    whole_b=$((whole_b + 1))
    rm -r "$results"
    cp -r "$scratch/alone-a" "$results"
  else
    diff "$scratch/a.sums" "$scratch/now.sums"
    fail "kill $n left something else than one whole set"
  fi
  [ "$whole_b" -eq 0 ] || rm -f "$results/OUT-OF-DATE.txt"
  n=$((n + 1))
done
[ "$left" -gt 0 ] && [ "$marked" -gt 0 ] || fail "no kill came while a run was under way"
estimate b "$results"
set_of "$results" >"$scratch/now.sums"
cmp "$scratch/now.sums" "$scratch/b.sums" || fail "the last run differs from one left alone"
[ "$(ls -A "$scratch/there")" = cuff ] || fail "litter stays: $(ls -A "$scratch/there")"
[ ! -e "$results/OUT-OF-DATE.txt" ] || fail "the last run is marked as out of date"
echo "Killed $n times ($ended had ended before): $left times the old set whole, $marked of them marked; $whole_b times the new."
