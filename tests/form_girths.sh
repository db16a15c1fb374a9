#!/bin/sh
# Writes docs/form-girths.md from what the tests of the body forms measure.  Usage: sh tests/form_girths.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
build release test_bodyforms
# form|girth|sex|asked|off by|from: a row a girth, both sexes in it.
both_sexes() {
  awk -F '|' '
    { key = $1 "|" $2; asked[key, $3] = $4 }
    !(key in from) { order[++n] = key; from[key] = $6; off[key] = $5 }
    $5 > off[key] { off[key] = $5 }
    END {
      for (i = 1; i <= n; ++i) {
        split(order[i], name, "|")
        printf "| %s | %s | %s | %s | %s | %s |\n", name[1], name[2], asked[order[i], "men"], asked[order[i], "women"], off[order[i]], from[order[i]]
      }
    }'
}
{
  echo "# Girths of the body forms"
  echo
  echo "Written by \`sh tests/form_girths.sh\`: girths asked for at the 5th, 50th and 95th percentile, mm, and how far those on"
  echo "the mesh are off at most. *Survey*: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), 4082 men, 1986 women, confirmed;"
  echo "soldiers, fitter than the public. *Judgement*: a share of a survey girth. *Tape*: an example; the wearer measures it."
  echo
  echo "| form | girth | men P5 / P50 / P95 | women | off by % | from |"
  echo "|---|---|---|---|---|---|"
  "$root/build/release/tests/test_bodyforms" --gtest_filter='FormGirths.*' |
    sed -n 's/^  girth of \(.*\), girth_\(.*\), \(.*\): asked \(.*\), made .*, difference \(.*\) %, from \(.*\)$/\1|\2|\3|\4|\5|\6/p' |
    sed 's/ (an example)$//' | both_sexes
} > "$root/docs/form-girths.md"
