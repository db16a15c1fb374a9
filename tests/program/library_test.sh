#!/bin/sh
# The example of the docs is built against the installed model, as a project of somebody else, and solves a plan.
#
#   sh library_test.sh BUILD_FOLDER SOURCE_FOLDER
set -eu
build=$1 source=$2
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
[ "$(grep -c . "$source/docs/library-example.cpp")" -le 45 ] || { echo "FAILED: the example is too long to be one"; exit 1; }

cmake --install "$build" --component library --prefix "$scratch/installed" >"$scratch/install.txt"
grep -q "$source" -r "$scratch/installed/lib/"*/cmake "$scratch/installed/lib/cmake" 2>/dev/null && { echo "FAILED: what is installed names the source folder"; exit 1; }
cmake -S "$source/tests/library" -B "$scratch/build" -G Ninja -DCMAKE_BUILD_TYPE=Release \
  -DCMAKE_PREFIX_PATH="$scratch/installed" -DEXAMPLE_SOURCE="$source/docs/library-example.cpp" >"$scratch/configure.txt" 2>&1 ||
  { cat "$scratch/configure.txt"; exit 1; }
cmake --build "$scratch/build" >"$scratch/build.txt" 2>&1 || { cat "$scratch/build.txt"; exit 1; }
sed 's/"mesh": *{[^}]*}/"mesh": {"edge_mm": 14}/' "$source/resources/plans/forearm-cuff.json" >"$scratch/plan.json"
mkdir "$scratch/layouts"
sed -i "s#\.\./layouts#layouts#" "$scratch/plan.json"
cp "$source/resources/layouts/forearm-cuff.json" "$scratch/layouts/"
"$scratch/build/example" "$scratch/plan.json" "$source/resources" >"$scratch/said.txt"
cat "$scratch/said.txt"
[ "$(grep -c 'worst square centimetre' "$scratch/said.txt")" -eq 4 ] || { echo "FAILED: not every chamber was said"; exit 1; }
if "$scratch/build/example" "$scratch/none.json" "$source/resources" 2>"$scratch/error.txt"; then echo "FAILED: a missing plan"; exit 1; fi
grep -q none.json "$scratch/error.txt"
