#!/bin/sh
# Fuzzes the SVG and the DXF reader under the address and undefined-behaviour sanitizers.
# Usage: sh tests/fuzz/run.sh SECONDS [svg|dxf]     both one after the other when none is named
# Needs clang with libFuzzer (CXX, clang++-14 if not set). Inputs found go to build/fuzz/<reader>/found.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
seconds=${1:?give the seconds to run each reader}
readers=${2:-svg dxf}
: "${CXX:=clang++-14}"
out=build/fuzz
mkdir -p "$out/objects"

# Only what the readers and the mapping need, so that it builds in minutes.
sources="model/core/number_text.cpp model/geometry/polygon.cpp model/geometry/polygon_checks.cpp
  model/geometry/planar_graph.cpp model/geometry/planar_triangulation.cpp model/geometry/stroke.cpp
  model/layout/air_groups.cpp model/layout/drawing.cpp model/layout/drawing_colour.cpp model/layout/drawing_map.cpp
  model/layout/drawing_parts.cpp model/layout/drawn_layout.cpp model/layout/drawn_shape_forms.cpp
  model/layout/layout_check.cpp model/layout/layout_check_parts.cpp model/layout/layout_shapes.cpp
  model/layout/mesh_request.cpp model/layout/region_map.cpp model/io/dxf_entity.cpp model/io/dxf_groups.cpp model/io/dxf_reader.cpp
  model/io/dxf_spline.cpp model/io/mesh_reader_text.cpp model/io/path_joining.cpp model/io/path_trace.cpp
  model/io/svg_document.cpp model/io/svg_page.cpp model/io/svg_reader.cpp model/io/svg_shape.cpp
  model/io/svg_sink.cpp model/io/svg_style.cpp model/io/svg_text.cpp"
flags="-std=c++20 -O1 -g1 -fno-omit-frame-pointer -fsanitize=address,undefined -fno-sanitize-recover=undefined
  -frounding-math -I. $(pkg-config --cflags eigen3 2geom pugixml dxflib)"
libraries="$(pkg-config --libs 2geom pugixml dxflib) -lgmp -lmpfr"

# shellcheck disable=SC2086
for source in $sources; do
  object=$out/objects/$(echo "$source" | tr / _).o
  [ "$object" -nt "$source" ] || printf '%s %s\n' "$source" "$object"
done | xargs -P 2 -n 2 sh -c "\"\$0\" $(echo "$flags" | tr '\n' ' ') -fsanitize=fuzzer-no-link -c \"\$1\" -o \"\$2\"" "$CXX"

for reader in $readers; do
  folder=$out/$reader
  mkdir -p "$folder/corpus" "$folder/found"
  # shellcheck disable=SC2086
  "$CXX" $flags -fsanitize=fuzzer "tests/fuzz/${reader}_reader_fuzz.cpp" "$out"/objects/*.o $libraries -o "$folder/fuzz"
  cp tests/data/drawing/*."$reader" "$folder/corpus/"
  "$folder/fuzz" "$folder/corpus" -dict="tests/fuzz/$reader.dict" -artifact_prefix="$folder/found/" \
    -max_total_time="$seconds" -max_len=8192 -timeout=25 -rss_limit_mb=2048 -print_final_stats=1
done
