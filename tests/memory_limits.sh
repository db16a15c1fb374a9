#!/bin/bash
# Every command with less and less address space (ulimit -v): it either does all that it does without a limit, with
# the same exit code and the same bytes, or ends with exit code 2 and one sentence, having written no half of a file.
# Prints a table; exit code 1 where a command did anything else.
# Usage: bash tests/memory_limits.sh [PROGRAM [FROM_MB TO_MB STEP_MB [COMMAND...]]]
set -u
root=$(cd "$(dirname "$0")/.." && pwd)
program=$(realpath "${1:-$root/build/release/app/command/wrapgauge}")
from=${2:-200} to=${3:-1000} step=${4:-25}
shift $(($# < 4 ? $# : 4))
longest=${LONGEST:-600} # s; a command that takes longer turns for ever
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

"$program" demo demo > /dev/null
"$program" body make forearm --sex female --set edge=1.2 --out scan.stl > /dev/null
"$program" layout read demo/layouts/forearm-cuff.json --out drawing.svg > /dev/null
plan=$work/demo/plans/forearm-cuff.json
declare -A words=(
  [demo]="demo out"
  [look]="look $plan"
  [estimate]="estimate $plan --out out --note"
  [estimate-coarse]="estimate $plan --out out --edge-mm 8 --no-mesh-error"
  [note]="note $plan --out out --edge-mm 8"
  [ceiling]="ceiling $plan --edge-mm 8 --together --out ceiling.json"
  [aim]="aim $plan --edge-mm 8 --target left_front=2.0 --out aim.json"
  [spread]="spread $plan --out out --runs 8 --preview-mm 10 --edge-mm 10"
  [body-make]="body make calf --sex male --out calf.obj --picture calf.png"
  [body-check]="body check $work/scan.stl --unit mm"
  [body-repair]="body repair $work/scan.stl --unit mm --keep-table --hole-mm 0 --out repaired.vtp --picture repaired.png"
  [body-girths]="body girths $work/scan.stl --unit mm --every 20 --out checked.ply --picture girths.png"
  [layout-make]="layout make cuff --girth 260 --chambers 4 --out made.json"
  [layout-check]="layout check $work/demo/layouts/forearm-cuff.json --plan $plan"
  [layout-read]="layout read $work/drawing.svg --skin 00-30 2 --outer 00-30 2 --strap 20 1 --stretch 0.02 --out read.json"
  [layout-template]="layout template $plan --out template.pdf"
  [layout-template-svg]="layout template $plan --out template.svg"
)
order="demo look estimate estimate-coarse note ceiling aim spread body-make body-check body-repair body-girths layout-make
  layout-check layout-read layout-template layout-template-svg"
[ $# -gt 0 ] && order=$*

# run FOLDER LIMIT_KB COMMAND...: leaves exit, stdout, stderr and files of the command in FOLDER.
run() {
  local folder=$1 limit=$2
  shift 2
  rm -rf "$folder" && mkdir -p "$folder/files"
  (
    cd "$folder/files" || exit
    ulimit -c 0
    timeout -k 1 "$longest" bash -c 'ulimit -v "$0"; exec "$@"' "$limit" "$program" "$@" > ../stdout 2> ../stderr
    echo $? > ../exit
  )
}

# Every file that is there is whole: as it is without a limit. (A spread keeps finished runs to go on from.)
only_whole_files() {
  (cd "$1/files" && find . -type f) | while read -r file; do
    cmp -s "$1/files/$file" "$2/files/$file" || { echo "$file"; break; }
  done
}

# verdict FOLDER REFERENCE
verdict() {
  local code part
  code=$(cat "$1/exit")
  part=$(only_whole_files "$1" "$2")
  if [ "$code" = "$(cat "$2/exit")" ] && diff -rq "$1/files" "$2/files" > /dev/null && cmp -s "$1/stdout" "$2/stdout" &&
    cmp -s "$1/stderr" "$2/stderr"; then
    echo works
  elif [ "$code" = 2 ] && [ "$(wc -l < "$1/stderr")" = 1 ] && [ -z "$part" ] && ! grep -qi written "$1/stdout"; then
    echo refuses
  else
    echo "FAILS: exit $code, $(wc -l < "$1/stderr") lines on stderr${part:+, half of $part}"
    { echo "-- $3 with $4 MB: exit $code"; head -c 600 "$1/stderr"; diff -rq "$1/files" "$2/files"; } >&2
  fi
}

# 200 225 250 300 as "200 to 250, 300".
ranges() {
  local first="" last="" text=""
  for limit in "$@" end; do
    if [ -n "$last" ] && { [ "$limit" = end ] || [ "$limit" != $((last + step)) ]; }; then
      text="$text${text:+, }$first$([ "$first" = "$last" ] || echo " to $last")"
      first=""
    fi
    first=${first:-$limit} last=$limit
  done
  echo "$text"
}

failed=0
echo "Address space in MB, from $from to $to in steps of $step."
echo
echo "| command | does its work | refuses with one sentence | fails |"
echo "|---|---|---|---|"
for name in $order; do
  read -ra command <<< "${words[$name]}"
  command=("${command[@]/left_front/left front}")
  run reference unlimited "${command[@]}"
  works="" refuses="" fails=""
  for ((limit = from; limit <= to; limit += step)); do
    run limited $((1024 * limit)) "${command[@]}"
    case $(verdict limited reference "$name" "$limit") in
      works) works="$works $limit" ;;
      refuses) refuses="$refuses $limit" ;;
      *) fails="$fails $limit" failed=1 ;;
    esac
  done
  echo "| $name | $(ranges $works) | $(ranges $refuses) | $(ranges $fails) |"
done
exit $failed
