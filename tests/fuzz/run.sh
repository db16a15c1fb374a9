#!/bin/sh
# Fuzzes the readers of drawings and of meshes under the address and undefined-behaviour sanitizers.
# Usage: sh tests/fuzz/run.sh SECONDS [svg|dxf|obj|stl|ply|glb]     one after the other when none is named
# Needs clang with libFuzzer (CXX, clang++-14 if not set). Inputs found go to build/fuzz/<reader>/found.
# TIMEOUT: seconds by the clock that one input may take, 25 if not set; more on a machine that is busy.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
seconds=${1:?give the seconds to run each reader}
readers=${2:-svg dxf obj stl ply glb}
: "${CXX:=clang++-14}"
out=build/fuzz
mkdir -p "$out/objects"

# The readers and the mapping are built with the sanitizers; geometry, body and layout checks come from the release
# build.
sources="model/layout/drawing.cpp model/layout/drawing_colour.cpp model/layout/drawing_map.cpp
  model/layout/drawing_parts.cpp model/layout/drawn_layout.cpp model/layout/drawn_shape_forms.cpp
  model/io/readers/dxf_entity.cpp model/io/readers/dxf_fit_spline.cpp model/io/readers/dxf_groups.cpp model/io/readers/dxf_insert.cpp
  model/io/readers/dxf_reader.cpp model/io/readers/dxf_spline.cpp
  model/io/readers/mesh_reader_text.cpp model/io/readers/path_joining.cpp model/io/readers/path_trace.cpp model/io/readers/svg_document.cpp
  model/io/readers/svg_page.cpp model/io/readers/svg_reader.cpp model/io/readers/svg_shape.cpp model/io/readers/svg_sink.cpp
  model/io/readers/svg_style.cpp model/io/readers/svg_style_sheet.cpp model/io/readers/svg_text.cpp
  model/io/readers/byte_source.cpp model/io/readers/gltf_buffers.cpp model/io/readers/gltf_reader.cpp
  model/io/readers/obj_reader.cpp model/io/readers/ply_header.cpp model/io/readers/ply_reader.cpp
  model/io/readers/polygon_cut.cpp model/io/readers/stl_reader.cpp"
flags="-std=c++20 -O1 -g1 -fno-omit-frame-pointer -fsanitize=address,undefined -fno-sanitize-recover=undefined
  -frounding-math -I. $(pkg-config --cflags eigen3 2geom pugixml dxflib) -isystem /usr/include/vtk-9.1"
release=build/release/model
libraries="$release/layout/libwg_layout.a $release/body/libwg_body.a $release/geometry/libwg_geometry.a $release/core/libwg_core.a
  $(pkg-config --libs 2geom pugixml dxflib) -lvtkIOCore-9.1 -lvtkCommonDataModel-9.1
  -lvtkCommonCore-9.1 -ltbb -lgmpxx -lgmp -lmpfr"
[ -f build/release/build.ninja ] || cmake --preset release >&2
cmake --build build/release --target wg_layout wg_body >&2
# Vectors that cross from one build to the other are not marked alike.
export ASAN_OPTIONS=detect_container_overflow=0

compile="$CXX $(echo "$flags" | tr '\n' ' ')-fsanitize=fuzzer-no-link"
# The matrix and standard headers are read once.
common=$out/common.hpp
if [ ! -f "$common.pch" ]; then
  for header in Eigen/Dense algorithm array charconv cmath functional map optional sstream string vector; do
    echo "#include <$header>"
  done >"$common"
  $compile -x c++-header "$common" -o "$common.pch"
fi
# shellcheck disable=SC2086
for source in $sources; do
  object=$out/objects/$(echo "$source" | tr / _).o
  [ "$object" -nt "$source" ] || printf '%s %s\n' "$source" "$object"
done | xargs -r -P "$(nproc)" -n 2 sh -c "$compile -include-pch $common.pch -c \"\$0\" -o \"\$1\""

for reader in $readers; do
  folder=$out/$reader
  mkdir -p "$folder/corpus" "$folder/found"
  # shellcheck disable=SC2086
  "$CXX" $flags -fsanitize=fuzzer "tests/fuzz/${reader}_reader_fuzz.cpp" "$out"/objects/*.o $libraries -o "$folder/fuzz"
  for seed in tests/data/drawing/*."$reader" tests/data/mesh/*."$reader" tests/fuzz/seeds/*."$reader"; do
    [ ! -f "$seed" ] || cp "$seed" "$folder/corpus/"
  done
  "$folder/fuzz" "$folder/corpus" -dict="tests/fuzz/$reader.dict" -artifact_prefix="$folder/found/" \
    -max_total_time="$seconds" -max_len=8192 -timeout="${TIMEOUT:-25}" -rss_limit_mb=2048 -print_final_stats=1
done
