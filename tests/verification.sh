#!/bin/sh
# Writes docs/verification.md from what the published checks measure.  Usage: sh tests/verification.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
build release test_published
{
  echo "# What the mechanics was checked against"
  echo
  echo "Written by \`sh tests/verification.sh\` from the checks in tests/published; the sources stand beside each check."
  echo "Clamped disc and plate: problem of Adkins and Rivlin 1952, reference figures integrated apart from this program."
  echo "Ring cuff: plane balance of Laplace tension and elastic foundation. All are membranes without bending."
  echo
  echo "| what | ours | reference | difference % | accepted % |"
  echo "|---|---|---|---|---|"
  "$root/build/release/tests/test_published" |
    sed -n 's/^  \(.*\): ours \(.*\), reference \(.*\), difference \(.*\) %, accepted \(.*\) %$/| \1 | \2 | \3 | \4 | \5 |/p'
} > "$root/docs/verification.md"
