#!/bin/sh
# Writes docs/speed.md: how long the solver takes and where the time goes.  Usage: sh tests/bench.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
install_missing calculix-ccx
build release wrapgauge_bench
rows=$(mktemp)
page=$(mktemp)
trap 'rm -f "$rows" "$page"' EXIT

# measure FILTER [OPTION...]: prints rows `name,value,value...`; columns after the time are the
# counters in alphabetical order.
measure() {
  filter=$1
  shift
  "$root/build/release/tests/bench/wrapgauge_bench" "--benchmark_filter=$filter" --benchmark_format=csv "$@" 2>/dev/null |
    sed -n 's/^"\([a-z_]*\/[0-9].*\)"/\1/p'
}
medians() { measure "$1" --benchmark_repetitions=3 --benchmark_report_aggregates_only=true | grep _median; }

machine=$(sed -n 's/^model name[[:space:]]*: //p' /proc/cpuinfo | head -n 1)
{
  echo "# Speed of the solver"
  echo
  echo "Written by \`sh tests/bench.sh\` on: $machine, $(nproc) processors."
  echo
  echo "## Closed and inflated"
  echo
  echo "The demo forearm cuff from laid flat, closed, to six pressures up to 6 kPa in both inlets, all seven states recorded"
  echo "(\`inflate\` alone). Medians of three runs."
  echo
  echo "| mesh edge, mm | nodes | time, s | factorisations | peak memory of the process, MB |"
  echo "|---|---|---|---|---|"
  for edge in 80 40 30 22; do
    medians "^inflation_path/$edge\$" >> "$rows" # a process each, so that its peak memory is its own
  done
  awk -F '[,/_]' '{ edge = $3; n = split($0, c, ","); printf "| %.1f | %d | %.2f | %d | %d |\n", edge / 10, c[12], c[3] / 1000, c[11], c[13] }' "$rows"
  awk -F ',' '{ nodes[NR] = $12; time[NR] = $3 }
    END { printf "\nFrom the second row to the last, time grows like nodes to the power %.2f.\n", log(time[NR] / time[2]) / log(nodes[NR] / nodes[2]) }' "$rows"
  measure "^small_step/" > "$rows"
  awk -F ',' '{ split($1, name, "/"); printf "%s a small step (one of 120 to 6 kPa) from the last shape on a mesh of %d mm takes %.0f ms", (NR > 1 ? ";" : "\nGoing on"), name[2] / 10, 1000 * $12 } END { print "." }' "$rows"
  echo
  echo "## Where the time goes"
  echo
  echo "One of each piece at the shape at 6 kPa, ms. A step of the solver takes one factorisation (more where the sheet is about"
  echo "to buckle), one or two solves, an evaluation with tangent, one or more without, and bringing areas and normals up to date."
  echo "Factorise by library: CHOLMOD's own factors of the same matrix in double precision, by which machines can be told apart."
  echo
  echo "| piece | 8 mm | 4 mm | 2.2 mm |"
  echo "|---|---|---|---|"
  medians "^(factorise|solve|evaluate_with_tangent|evaluate_alone|refresh)/" > "$rows"
  medians "^factorise_by_library/" >> "$rows" # apart: it counts what no other does
  awk -F ',' '{ split($1, name, "/"); if (!(name[1] in seen)) { order[++count] = name[1]; seen[name[1]] = 1 }
                row[name[1]] = row[name[1]] sprintf(" %.2f |", $3) }
    END { for (k = 1; k <= count; ++k) { words = order[k]; gsub("_", " ", words); print "| " words " |" row[order[k]] } }' "$rows"
  echo
  echo "## A mesh that is finer beside seams"
  echo
  echo "The demo plan from plan to contact map; how far the chambers' figures are from those of 2 mm everywhere, at most."
  echo
  echo "| edge, mm | beside seams, mm | as far from them as, mm | nodes | time, s | means apart, % | peaks over 1 cm2 apart, % |"
  echo "|---|---|---|---|---|---|---|"
  measure "^forearm_cuff/" > "$rows"
  awk -F ',' '{ split($1, name, "/"); printf "| %.1f | %.1f | %s | %d | %.2f | %.2f | %.2f |\n", name[2] / 10, name[3] / 10, name[2] == name[3] ? "" : name[4] / 10, $13, $3 / 1000, $12, $14 }' "$rows"
  echo
  echo "## Reading a body"
  echo
  echo "From a file of 2.5 million triangles to a checked body, as \`wrapgauge body check\` does it, a process each. At most 10 s"
  echo "and 700 MB are wanted. Time of the processor; files are in the system's cache."
  echo
  echo "| format | time, s | peak memory of the process, MB |"
  echo "|---|---|---|"
  for format in stl text_stl obj ply text_ply glb; do
    measure "^read_$format/2500/" # a process each, so that its peak memory is its own
  done > "$rows"
  awk -F ',' '{ split($1, name, "[_/]"); printf "| %s | %.1f | %d |\n", name[2] == "text" ? toupper(name[3]) ", text" : toupper(name[2]), $4 / 1000, $11 }' "$rows"
  echo
  echo "## Beside a general-purpose program"
  echo
  echo "A clamped square of 60 x 60 x 1.5 mm, shear modulus 30 kPa, at 2 kPa. CalculiX (20-node bricks, one thread) solves a quarter"
  echo "of it as a solid, ours the whole of it twice (two sheets). Apart: rise of the middle against that of the solid's finest mesh."
  echo
  echo "| program | mesh | time, ms | rise, mm | apart, % |"
  echo "|---|---|---|---|---|"
  measure "^square_s" > "$rows"
  awk -F ',' '{ split($1, name, "/"); kind[NR] = name[1]; size[NR] = name[2]; time[NR] = $3; rise[NR] = $12 }
    END { for (k = 1; k <= NR; ++k) {
            apart = 100 * (rise[k] / rise[NR] - 1)
            ours = kind[k] == "square_sheet"
            printf "| %s | %s | %.1f | %.3f | %.2f |\n", ours ? "this one" : "CalculiX", ours ? sprintf("%.1f mm", size[k] / 10) : sprintf("%d x %d cells", size[k], size[k]), time[k], rise[k], apart
            off[k] = apart < 0 ? -apart : apart
          }
          print "\nBeside each of our meshes the mesh of CalculiX that is nearest to as far off, but for the finest, which the others are"
          print "measured against:\n\n| ours | apart, % | CalculiX | apart, % | takes times as long |\n|---|---|---|---|---|"
          for (k = 1; k < NR; ++k) {
            if (kind[k] != "square_sheet") continue
            like = 0
            for (j = 1; j < NR; ++j)
              if (kind[j] == "square_solid" && (!like || (off[j] - off[k]) ^ 2 < (off[like] - off[k]) ^ 2)) like = j
            printf "| %.1f mm | %.2f | %d x %d cells | %.2f | %.0f |\n", size[k] / 10, off[k], size[like], size[like], off[like], time[like] / time[k] }
          print "\nFiner meshes of ours end lower: bending by hinges is stiff beside a clamp (docs/verification.md)." }' "$rows"
} > "$page"
mv "$page" "$root/docs/speed.md"
