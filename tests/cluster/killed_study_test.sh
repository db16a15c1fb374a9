#!/bin/sh
# A study that is killed ten times in the middle of its runs ends with the bytes of one that was left alone.
#
#   sh killed_study_test.sh PROGRAM SOURCE_FOLDER
set -u
program=$1 source=$2
study="spread $source/resources/plans/forearm-cuff.json --edge-mm 20 --preview-mm 20 --runs 32"
kills=10

. "$(dirname "$0")/../scratch.sh"

lines="$scratch/killed/runs/part-1-of-1.jsonl"
kept() {
  if [ -f "$lines" ]; then grep -c . "$lines"; else echo 0; fi
}
ended_well() {
  [ "$1" -eq 0 ] || [ "$1" -eq 4 ] || fail "$2 ended with $1"
}

# As soon as one more run is kept, others are being solved.
kill_after_one_more() {
  before=$(kept)
  "$program" $study --out "$scratch/killed" >/dev/null 2>&1 &
  pid=$!
  while [ "$(kept)" -le "$before" ]; do
    kill -0 "$pid" 2>/dev/null || fail "it ended before it was killed, with $(kept) runs kept"
    sleep 0.02
  done
  kill -9 "$pid"
  wait "$pid" 2>/dev/null
  pid=
  [ ! -e "$scratch/killed/spread.json" ] || fail "it had written its results before it was killed"
}

"$program" $study --out "$scratch/alone" >/dev/null 2>&1
ended_well $? "the study left alone"
n=0
while [ "$n" -lt "$kills" ]; do
  kill_after_one_more
  n=$((n + 1))
done
"$program" $study --out "$scratch/killed" >/dev/null 2>&1
ended_well $? "the study that was killed"
for name in spread.json spread.md; do
  cmp "$scratch/alone/$name" "$scratch/killed/$name" || fail "$name differs from that of a study left alone"
done
echo "Killed $kills times, with the bytes of a study left alone."
