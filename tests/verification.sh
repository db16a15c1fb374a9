#!/bin/sh
# Writes docs/verification.md from what the tests measure.  Usage: sh tests/verification.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
install_missing calculix-ccx
build release test_published
rows=$(mktemp)
trap 'rm -f "$rows" "$rows.said"' EXIT
"$root/build/release/tests/test_published" > "$rows.said"
sed -n 's/^  | \(.*\) |$/\1/p' "$rows.said" > "$rows"
{
  echo "# What the mechanics was checked against"
  echo
  echo "Written by \`sh tests/verification.sh\`: every row is printed by a test while it measures. Devices are triangulated and"
  echo "inflated by the calls that a plan uses; the test places and holds them, without a wrap. Closed forms and rubber data try"
  echo "the laws alone, indenters the tissue layer alone."
  echo
  echo "Units mm and kPa; P = pressure x radius (or half width) / (shear modulus x thickness); membranes without bending. Sources"
  echo "with status, keys in [sources.bib](sources.bib) and the file of tests/published that calculates the reference: a test"
  echo "fails where a figure is not what its file gives. Difference and what is accepted in %, where not said otherwise."
  # Sections in the order in which they first appear; in each, a source and the rows held against it.
  awk -F ' [|] ' '
    function bare(text) { sub(/ %$/, "", text); return text }
    { table = $1 SUBSEP $3 }
    !($1 in named) { named[$1] = 1; section[++sections] = $1 }
    !(table in rows) { source[$1, ++sources[$1]] = $3 }
    { rows[table] = rows[table] "| " $2 " | " $4 " | " $5 " | " bare($6) " | " bare($7) " |\n" }
    END {
      for (i = 1; i <= sections; ++i) {
        printf "\n## %s\n", section[i]
        for (j = 1; j <= sources[section[i]]; ++j)
          printf "\nSource: %s.\n\n| what | reference | ours | difference | accepted |\n|---|---|---|---|---|\n%s",
            source[section[i], j], rows[section[i], source[section[i], j]]
      }
    }' "$rows"
} > "$root/docs/verification.md"
