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
  echo "inflated by the calls that a plan uses (\`triangulate_layout\`, \`inflate\`); where they lie at first, what holds them and"
  echo "what they press on is set up by the test, without a wrap. The closed forms and the rubber data try the material laws"
  echo "alone, the indenters the tissue layer alone with a solver of the test's own."
  echo
  echo "Units mm and kPa; P = pressure x radius (or half width) / (shear modulus x thickness). Membrane references are"
  echo "compared with bending off. After each source its status (confirmed, from memory, judgement or derived), its keys in"
  echo "[sources.bib](sources.bib), and the file of tests/published that calculates the reference figures: a test fails where"
  echo "a figure is not what its file gives."
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
