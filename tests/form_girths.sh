#!/bin/sh
# Writes docs/form-girths.md from what the tests of the body forms measure.  Usage: sh tests/form_girths.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
build release test_bodyforms
{
  echo "# Girths of the body forms"
  echo
  echo "Written by \`sh tests/form_girths.sh\`: girths asked for at the 5th, 50th and 95th percentile, mm, and how far those on"
  echo "the mesh are off at most. *Survey*: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), 4082 men, 1986 women, confirmed;"
  echo "soldiers, fitter than the public. *Judgement*: a share of a survey girth. *Tape*: an example; the wearer measures it."
  echo
  echo "| form | girth | | asked P5 / P50 / P95 | off by % | from |"
  echo "|---|---|---|---|---|---|"
  "$root/build/release/tests/test_bodyforms" --gtest_filter='FormGirths.*' |
    sed -n 's/^  girth of \(.*\), girth_\(.*\), \(.*\): asked \(.*\), made .*, difference \(.*\) %, from \(.*\)$/| \1 | \2 | \3 | \4 | \5 | \6 |/p' |
    sed 's/ (an example) |$/ |/'
} > "$root/docs/form-girths.md"
