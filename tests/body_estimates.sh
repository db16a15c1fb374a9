#!/bin/sh
# Writes docs/body-estimates.md: estimates on three repaired scans and six forms, with the program as a user runs it.
# Needs the folder ../shared; takes some minutes.  Usage: sh tests/body_estimates.sh [RESULTS]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
shared=$root/../shared/data
[ -d "$shared/scans" ] || { say "There are no scans in ../shared/data/scans: nothing was written."; exit 2; }
build release wrapgauge make_scan
wrapgauge=$root/build/release/app/command/wrapgauge
make_scan=$root/build/release/tests/scans/make_scan
results=${1:-$root/build/body-estimates}
mkdir -p "$results"
rows=$results/rows
: > "$rows"

# scan NAME PART SCAN REPAIR_OPTIONS: repaired and cut out, as a body file, a picture and the body of a plan.
scan() {
  name=$1 part=$2 file=$3
  shift 3
  "$wrapgauge" body repair "$file" --unit mm --out "$results/$name.obj" --picture "$results/$name.png" "$@" \
    > "$results/$name-repair.txt"
  body="{\"file\": \"$file\", \"unit\": \"mm\", \"part\": \"$part\", $(sed -n 's/^for a plan: //p' "$results/$name-repair.txt")}"
}

# form NAME OPTIONS: the same for a form.
form() {
  name=$1
  shift
  "$wrapgauge" body make "$name" --out "$results/$name.obj" --picture "$results/$name.png" "$@" > "$results/$name-make.txt"
  body=$(sed -n 's/^for a plan: "body": //p' "$results/$name-make.txt")
}

# estimate NAME WORDS TISSUE STATION ANGLE INFLATION LAYOUT [OPTIONS]: a starting layout for the body's girths, worn with
# its middle at the station; one row of the table, of the chamber that presses hardest.
estimate() {
  name=$1 words=$2 tissue=$3 station=$4 angle=$5 inflation=$6 layout=$7
  shift 7
  "$wrapgauge" layout make "$layout" --body "$results/$name.obj" --station "$station" --out "$results/$name-layout.json" \
    "$@" > "$results/$name-layout.txt"
  cat > "$results/$name.json" <<PLAN
{"wrapgauge-plan": 1, "name": "$name", "body": $body, $tissue "layout": {"file": "$name-layout.json"},
 "wear": {"anchor": {"station_mm": $station, "angle_deg": $angle}}, "inflation": [$inflation],
 "limits": {"use": "short hold"}, "mesh": {"edge_mm": 6}}
PLAN
  code=0
  "$wrapgauge" estimate "$results/$name.json" --out "$results/$name" > "$results/$name.txt" || code=$?
  case $code in 0 | 4 | 5) ;; *) say "$name: exit code $code"; exit "$code" ;; esac
  chamber=$(tail -n +2 "$results/$name/chambers.csv" | sort -t , -k 7,7 -g -r | head -n 1)
  field() { printf '%s' "$chamber" | cut -d , -f "$1"; }
  figure() { sed -n "s/^ *\"$1\": \([-0-9.e]*\),*$/\1/p" "$results/$name/summary.json" | head -n 1; }
  error=$(figure peak_difference_kPa)
  printf '| %s | %s | %s | %.1f | %.1f | %.1f | %.2f | %.5f | %s | %s |\n' "$words" "$layout" "$(field 1 | tr -d '"')" \
    "$(field 2)" "$(field 5)" "$(field 7)" "$(field 13)" "$(figure largest_residual_N)" "${error:-unknown}" "$code" >> "$rows"
}

row1='{"inlet": "row 1", "pressure_kpa": 3}'
bands='{"inlet": "band 1", "pressure_kpa": 2.5}, {"inlet": "band 2", "pressure_kpa": 2}'
pads='{"inlet": "middle", "pressure_kpa": 2}, {"inlet": "ring 1", "pressure_kpa": 1.5}'

scan scan-calf "lower leg" "$shared/scans/scanlike_calf.ply" --cut 20 350
estimate scan-calf "scan of a calf, given" '"tissue": {"site": "calf"},' 190 270 "$bands" sleeve

"$make_scan" "$shared/bodies/mpfb_mA_forearm.obj" "$results/forearm-scan.ply" 0.5 table
scan scan-forearm forearm "$results/forearm-scan.ply" --cut 10 215
estimate scan-forearm "scan of a forearm on a table, made" '"tissue": {"site": "forearm relaxed"},' 120 90 "$row1" cuff --height 70

"$make_scan" "$shared/bodies/mpfb_mA_thigh.obj" "$results/thigh-scan.ply" 0.6 table
scan scan-thigh thigh "$results/thigh-scan.ply" --cut 15 260
estimate scan-thigh "scan of a thigh on a table, made" '"tissue": {"site": "thigh"},' 120 90 "$row1" cuff

form wrist --sex female --percentile 5
estimate wrist "form wrist, woman, P5" '' 40 90 "$row1" cuff --height 50 --chambers 3
form forearm --sex male --percentile 50 --side left
estimate forearm "form forearm, man, P50, left" '' 150 90 "$row1" cuff
form upper-arm --sex male --percentile 50 --girths middle=315
estimate upper-arm "form upper-arm, man, P50, tape 315 mm" '' 105 30 "$row1" cuff
form thigh --sex male --percentile 95
estimate thigh "form thigh, man, P95" '' 150 90 "$row1" cuff
form calf --sex female --percentile 50
estimate calf "form calf, woman, P50" '' 180 270 "$bands" sleeve
form torso --sex female --percentile 50
estimate torso "form torso, woman, P50" '' 185 90 "$pads" round-pad

{
  echo "# Estimates on repaired scans and on forms"
  echo
  echo "Written by \`sh tests/body_estimates.sh\`: \`body repair\` with a cut or \`body make\`, \`layout make\` for the girths, \`estimate\` at"
  echo "6 mm, and 9.6 mm for the mesh error. Where less is inside than was asked for (3 kPa in cuffs) the chambers run away above it."
  echo "The chamber with the highest peak of each. Nobody designed these devices: they show that the whole way runs, and no more. On"
  echo "scans nobody marked the sites, so tissue is as thin everywhere as over the shallowest. Scans: [repaired](scan-repair.md)."
  echo
  echo "| body | layout | chamber | inside kPa | mean kPa | peak over 1 cm² kPa | of it in contact | largest residual N | mesh error of the peak kPa | exit code |"
  echo "|---|---|---|---|---|---|---|---|---|---|"
  cat "$rows"
} > "$root/docs/body-estimates.md"
