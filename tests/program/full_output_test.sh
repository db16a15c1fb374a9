#!/bin/sh
# What cannot be printed is told on standard error, with exit code 2.
#
#   sh full_output_test.sh PROGRAM SOURCE_FOLDER
set -u
program=$1 source=$2
errors=$(mktemp)
trap 'rm -f "$errors"' EXIT
[ -c /dev/full ] || { echo "SKIPPED, NOT TRIED: there is no /dev/full here"; exit 77; }
for command in "--help" "--version" "look $source/resources/plans/forearm-cuff.json" "body make --list"; do
  "$program" $command >/dev/full 2>"$errors"
  code=$?
  [ "$code" -eq 2 ] || { echo "FAILED: $command ended with $code"; exit 1; }
  [ "$(grep -c 'could not be written' "$errors")" -eq 1 ] || { echo "FAILED: $command did not say so:"; cat "$errors"; exit 1; }
  "$program" $command >/dev/null 2>"$errors" || { echo "FAILED: $command cannot do without a full disk"; exit 1; }
done
echo "Four commands told that their words could not be written."
