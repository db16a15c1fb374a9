#!/usr/bin/env bash
# Puts plausible slips into the code, one at a time, and says which named test catches each.
#   bash tests/slips/run.sh            all of them
#   bash tests/slips/run.sh 03 tube    those whose name holds one of these words
# Works in a copy under build/slips; the tree itself is never changed. Each patch begins with the rule that it breaks,
# the test program that has to notice and, for programs that solve much, the tests of it to run. By hand, not in .ci:
# a slip costs a compiled file and a test program, all of them some tens of minutes on an idle machine.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
place=$root/build/slips
copy=$place/tree
build=$place/build
results=$place/results
most_seconds=${MOST_SECONDS:-900}
mkdir -p "$copy" "$results"

# What a patch says about itself: "# Program: test_limits".
said() { sed -n "s/^# $1: //p" "$2"; }

# Files that are as they were keep their time, so that nothing is compiled for it.
bring_copy_up_to_date() {
  local file
  git -C "$root" ls-files -z --cached --others --exclude-standard >"$place/files"
  while IFS= read -r -d '' file; do
    [ -f "$root/$file" ] || continue
    cmp -s "$root/$file" "$copy/$file" && continue
    mkdir -p "$copy/$(dirname "$file")"
    cp "$root/$file" "$copy/$file"
  done <"$place/files"
  (cd "$copy" && find . -type f -printf '%P\0') | while IFS= read -r -d '' file; do
    [ -f "$root/$file" ] || rm "$copy/$file"
  done
}

configure() {
  local launcher=()
  if command -v ccache >/dev/null; then
    launcher=(-DCMAKE_C_COMPILER_LAUNCHER=ccache -DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
  fi
  cmake -S "$copy" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE= -DCMAKE_CXX_FLAGS="-O1 -DNDEBUG" \
    -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=12 -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=gold \
    -DCMAKE_PROJECT_INCLUDE="$copy/tests/slips/apart.cmake" "${launcher[@]}" >"$place/configure.txt" 2>&1 ||
    { cat "$place/configure.txt"; exit 1; }
}

make_program() { cmake --build "$build" --target "$1" -j "${JOBS:-2}" >"$2" 2>&1; }

# Runs the tests a patch names; their output goes to a file.
try_tests() {
  local code=0
  (cd "$copy" && QT_QPA_PLATFORM=offscreen timeout "$most_seconds" "$build/tests/$1" --gtest_filter="${2:-*}") \
    >"$3" 2>&1 || code=$?
  return "$code"
}

# The tests that failed; or the one that was running when the program ended.
failed_tests() {
  local failed
  failed=$(sed -n 's/^\[  FAILED  \] \([A-Za-z_][A-Za-z_0-9/]*\.[A-Za-z_0-9/]*\).*/\1/p' "$1" | sort -u | paste -sd ' ')
  if [ -n "$failed" ]; then
    echo "$failed"
  else
    echo "CRASHED in $(sed -n 's/^\[ RUN      \] //p' "$1" | tail -1)"
  fi
}

# A test that fails without a slip catches nothing.
check_clean() {
  local program=$1 filter=$2 name
  name=$(printf '%s %s' "$program" "$filter" | tr -c 'A-Za-z0-9\n' '_')
  [ -f "$results/clean-$name.ok" ] && return
  make_program "$program" "$results/clean-$name.build" ||
    { tail -30 "$results/clean-$name.build"; echo "$program does not build without a slip" >&2; exit 1; }
  if ! try_tests "$program" "$filter" "$results/clean-$name.txt"; then
    echo "$program fails without a slip: $(failed_tests "$results/clean-$name.txt")" >&2
    exit 1
  fi
  if ! grep -q '^\[       OK \]' "$results/clean-$name.txt"; then
    echo "$program has no test like $filter" >&2
    exit 1
  fi
  touch "$results/clean-$name.ok"
}

put_in() { patch -p1 -F3 -s -f --no-backup-if-mismatch -d "$copy" <"$1"; }

# The originals come back with a new time: what was compiled from the slip is older.
take_out() {
  local file
  sed -n 's|^+++ b/\([^[:space:]]*\).*|\1|p' "$1" | while read -r file; do
    cp "$root/$file" "$copy/$file"
    touch "$copy/$file"
  done
}

answer_of() {
  local patch=$1 name=$2 program=$3 filter=$4
  if ! put_in "$patch" >"$results/$name.build" 2>&1; then
    echo "DOES NOT APPLY"
  elif ! make_program "$program" "$results/$name.build"; then
    echo "DOES NOT BUILD"
  elif try_tests "$program" "$filter" "$results/$name.txt"; then
    echo "LIVED"
  else
    failed_tests "$results/$name.txt"
  fi
}

wanted() {
  [ $# -eq 1 ] && return 0
  local word
  for word in "${@:2}"; do case $1 in *"$word"*) return 0 ;; esac; done
  return 1
}

bring_copy_up_to_date
configure
rm -f "$results"/clean-*.ok
caught=0 tried=0
: >"$place/table.txt"
for patch in "$root"/tests/slips/*.patch; do
  name=$(basename "$patch" .patch)
  wanted "$name" "$@" || continue
  program=$(said Program "$patch") filter=$(said Tests "$patch")
  check_clean "$program" "$filter"
  answer=$(answer_of "$patch" "$name" "$program" "$filter")
  take_out "$patch"
  tried=$((tried + 1))
  case $answer in LIVED | DOES* | CRASHED*) ;; *) caught=$((caught + 1)) ;; esac
  printf '%s | %s | %s | %s\n' "$name" "$(said Rule "$patch")" "$program" "$answer" | tee -a "$place/table.txt"
done
echo "$caught of $tried slips caught by a test; the table is in $place/table.txt"
