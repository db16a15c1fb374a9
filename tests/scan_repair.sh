#!/bin/sh
# Writes docs/scan-repair.md from what the tests of repaired scans measure; needs the folder ../shared.
# Usage: sh tests/scan_repair.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
[ -d "$root/../shared/data/scans" ] || { say "There are no scans in ../shared/data/scans: nothing was written."; exit 2; }
build release test_io
rows=$("$root/build/release/tests/test_io" --gtest_filter='*SharedScan*' |
  sed -n 's/^  mended \(.*\)\.[a-z]* (\(.*\)), noise \(.*\) mm, \(.*\): crumbs \(.*\), holes \(.*\), distance \(.*\), girths \(.*\), smoothing \(.*\)$/| \1, \2 | \3 | \4 | \5 | \6 | \7 | \8 | \9/p')
[ -n "$rows" ] || { say "The tests of repaired scans gave no figures: nothing was written."; exit 2; }
{
  echo "# Repaired scans against their clean shapes"
  echo
  echo "Written by \`sh tests/scan_repair.sh\`; a test holds these figures to bounds. Synthetic scans, no scanner's: clean limbs of an"
  echo "open base mesh (mpfb, CC0) and an open reference skin (hubmap, CC BY 4.0, Browne et al.) with noise, holes, crumbs, another"
  echo "pose; *given*: made apart from this program, ragged ends; *made*: by the test. Repaired with the default steps, laid over"
  echo "the clean shape. Distance: mean / 95th percentile; girths: largest difference at 81 stations; smoothing: largest change of"
  echo "a girth; axis: angle between both; decimation: mean / 95th percentile / largest, the last at ragged rims."
  echo
  echo "| limb | noise mm | table | crumbs dropped | holes filled | distance mm | girths % | smoothing % | axis ° | decimation mm |"
  echo "|---|---|---|---|---|---|---|---|---|---|"
  printf '%s\n' "$rows" | sed 's/, axis \(.*\), decimation \(.*\)$/ | \1 | \2 |/'
} > "$root/docs/scan-repair.md"
