#!/bin/sh
# One version everywhere: program, build, citation, packages, pages of the manual, menu entry.
#
#   sh version_test.sh PROGRAM SOURCE_FOLDER
set -eu
said=$("$1" --version)
version=${said#wrapgauge }
cd "$2"
for place in "CMakeLists.txt|project(wrapgauge VERSION $version " "docs/CITATION.cff|version: $version" \
  "docs/changes.md|## $version" "resources/package/changelog|wrapgauge ($version) " \
  "docs/wrapgauge.1|wrapgauge $version" "resources/desktop/wrapgauge-desk.1|wrapgauge $version" \
  "resources/desktop/wrapgauge-desk.metainfo.xml|<release version=\"$version\""; do
  grep -qF -- "${place#*|}" "${place%%|*}" || { echo "FAILED: ${place%%|*} does not say '${place#*|}'"; exit 1; }
done
echo "$version everywhere."
