#!/bin/sh
# Writes docs/form-girths.md from what the tests of the body forms measure.  Usage: sh tests/form_girths.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
build release test_bodyforms
{
  echo "# Girths of the body forms"
  echo
  echo "Written by \`sh tests/form_girths.sh\` from the tests in tests/bodyforms: girths asked for and measured on the mesh,"
  echo "mm, at the 5th, 50th and 95th percentile. *Survey*: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), 4082 men,"
  echo "1986 women, confirmed; soldiers, fitter than the public. *Judgement*: a share of a survey girth, not measured there."
  echo "*Tape*: not in the table, so the wearer measures it. Another test holds the survey rows against figures typed in"
  echo "apart from the program's table."
  echo
  echo "| form | girth | | asked P5 / P50 / P95 | made | largest difference % | from |"
  echo "|---|---|---|---|---|---|---|"
  "$root/build/release/tests/test_bodyforms" --gtest_filter='FormGirths.*' |
    sed -n 's/^  girth of \(.*\), girth_\(.*\), \(.*\): asked \(.*\), made \(.*\), difference \(.*\) %, from \(.*\)$/| \1 | \2 | \3 | \4 | \5 | \6 | \7 |/p'
} > "$root/docs/form-girths.md"
