#!/bin/sh
# Takes the pictures of docs/11-first-use.md anew, on a screen that is not there.  Usage: sh docs/window_pictures.sh
# With a folder, every picture of the window's tests goes there instead, at 1400 x 900, 1024 x 700 and 200 %, light and
# dark, English and German, to be looked at:  sh docs/window_pictures.sh FOLDER
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/app/setup.sh"
install_missing
build release test_desk_window

# take FOLDER SIZE SCALE LOOK TESTS [LANGUAGE]
take() {
  WRAPGAUGE_PICTURES=$1 WRAPGAUGE_TEST_SIZE=$2 QT_SCALE_FACTOR=$3 WRAPGAUGE_TEST_LOOK=$4 WRAPGAUGE_TEST_LANGUAGE=${6-} \
    xvfb-run -a -s "-screen 0 2900x1900x24" "$root/build/release/tests/test_desk_window" "--gtest_filter=$5" >&2
}

if [ $# -eq 0 ]; then
  take "$root/docs/pictures" 1400x900 1 light 'ScanJob.*'
  rm -f "$root/docs/pictures/walk-0-new.png"  # the empty window: no page shows it
else
  for look in light dark; do
    take "$1/1400x900-$look" 1400x900 1 "$look" 'ScanJob.*:GirthsJob.*:PadJob.*:WindowTest.*:BadFile.*'
    take "$1/1024x700-$look" 1024x700 1 "$look" 'ScanJob.*:WindowTest.TheFirst*'
    take "$1/200-$look" 1400x900 2 "$look" 'ScanJob.*:WindowTest.TheFirst*'
    take "$1/1400x900-$look-de" 1400x900 1 "$look" 'WindowTest.TheFirst*:GermanDialogs.*' de
    take "$1/1024x700-$look-de" 1024x700 1 "$look" 'WindowTest.TheFirst*' de
    take "$1/200-$look-de" 1400x900 2 "$look" 'WindowTest.TheFirst*:GermanDialogs.*' de
  done
fi
