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
  echo "Written by \`sh tests/verification.sh\`: every row is printed by a test while it measures. The tests solve through"
  echo "the same calls as a plan (\`triangulate_layout\`, \`inflate\`). Units mm and kPa; P = pressure x radius (or half"
  echo "width) / (shear modulus x thickness). Membrane references are compared with bending off. Status of each source:"
  echo "confirmed, from memory, judgement or derived."
  # Sections in the order in which they first appear, each with its rows.
  awk -F ' [|] ' '
    !($1 in seen) { seen[$1] = 1; order[++n] = $1 }
    { row[$1] = row[$1] "| " $2 " | " $3 " | " $4 " | " $5 " | " $6 " | " $7 " |\n" }
    END {
      for (i = 1; i <= n; ++i)
        printf "\n## %s\n\n| what | source | reference | ours | difference | accepted |\n|---|---|---|---|---|---|\n%s",
          order[i], row[order[i]]
    }' "$rows"
} > "$root/docs/verification.md"
