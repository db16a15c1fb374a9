#!/bin/sh
# Prints how many files and lines each folder of the checkout has, and its longest file.  Usage: sh tests/lines.sh [DEPTH]
set -eu
cd "$(dirname "$0")/.."
git ls-files -z '*.cpp' '*.hpp' '*.txt' '*.sh' | xargs -0 wc -l | awk -v depth="${1:-2}" '
  $2 == "total" { next }
  {
    parts = split($2, part, "/")
    folder = parts > 1 ? part[1] : "."
    for (k = 2; k < parts && k <= depth; ++k) folder = folder "/" part[k]
    files[folder]++
    lines[folder] += $1
    if ($1 > most[folder]) { most[folder] = $1; longest[folder] = part[parts] }
    all_files++
    all_lines += $1
  }
  END {
    printf "| folder | files | lines | longest file |\n|---|---|---|---|\n"
    for (folder in files)
      printf "| %s | %d | %d | %s, %d |\n", folder, files[folder], lines[folder], longest[folder], most[folder] | "sort"
    close("sort")
    printf "| in all | %d | %d | |\n", all_files, all_lines
  }'
