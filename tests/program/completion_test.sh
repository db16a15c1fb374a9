#!/usr/bin/env bash
# The shell completes the commands and options that the help pages show.
#
#   bash completion_test.sh PROGRAM SOURCE_FOLDER
set -eu
program=$1
. "$2/resources/desktop/wrapgauge.bash-completion"

# expect WANTED WORD...: what the last word is completed to.
expect() {
  local wanted=$1
  shift
  COMP_WORDS=("$program" "$@") COMP_CWORD=$#
  _wrapgauge
  [ "${COMPREPLY[*]}" = "$wanted" ] || { echo "FAILED: '$*' is completed to '${COMPREPLY[*]}' and not to '$wanted'"; exit 1; }
}
expect body bo
expect make body m
expect "--no-mesh-error --note" estimate --no
expect --keep-table body repair --keep
expect "--no-mesh-error --note" estimate plan.json --no
cd "$2"
expect README.md look READ
echo "Six words were completed."
