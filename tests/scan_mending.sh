#!/bin/sh
# Writes docs/scan-mending.md from what the tests of mended scans measure; needs the folder ../shared.
# Usage: sh tests/scan_mending.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
[ -d "$root/../shared/data/scans" ] || { say "There are no scans in ../shared/data/scans: nothing was written."; exit 2; }
build release test_io
rows=$("$root/build/release/tests/test_io" --gtest_filter='*SharedScan*' |
  sed -n 's/^  mended \(.*\)\.[a-z]* (\(.*\)), noise \(.*\) mm, \(.*\): crumbs \(.*\), holes \(.*\), distance \(.*\), girths \(.*\), smoothing \(.*\)$/| \1, \2 | \3 | \4 | \5 | \6 | \7 | \8 | \9/p')
[ -n "$rows" ] || { say "The tests of mended scans gave no figures: nothing was written."; exit 2; }
{
  echo "# Mended scans against their clean shapes"
  echo
  echo "Written by \`sh tests/scan_mending.sh\` from tests/io/shared_scan_test.cpp, which holds these figures to bounds."
  echo "The scans are synthetic (no scanner's): clean limbs of an open base mesh (mpfb, CC0) and of an open reference skin"
  echo "(hubmap, CC BY 4.0, Browne et al.) with noise on every vertex, holes, crumbs and another pose; *given*: made apart"
  echo "from this program, with ragged ends; *made*: by the test. They are mended with the default steps and laid over the"
  echo "clean shape by rigid motion. Distances are mean / 95th percentile from the mended to the clean surface. Girths:"
  echo "largest difference at 81 stations from 10 to 90 % of the length. Smoothing: largest change of girth. Axis: angle"
  echo "between the one found on the scan and on the clean shape. Decimation: mean / 95th percentile / largest, the last at"
  echo "ragged rims."
  echo
  echo "| limb | noise mm | table | crumbs dropped | holes filled | distance mm | girths % | smoothing % | axis ° | decimation mm |"
  echo "|---|---|---|---|---|---|---|---|---|---|"
  printf '%s\n' "$rows" | sed 's/, axis \(.*\), decimation \(.*\)$/ | \1 | \2 |/'
} > "$root/docs/scan-mending.md"
