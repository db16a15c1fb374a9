#pragma once
#include "model/core/array.hpp"

namespace wrapgauge {

// Takes off what hangs loosely at the rims of holes and ends, as scanners leave it: faces that only one edge
// joins to the rest, and, where parts of the rim touch at a vertex, all of its open fans but the one of most
// faces; again and again until nothing hangs. What a tongue or a point contact at a rim would do otherwise:
// a patch would be tied to it twice. Returns how many faces went.
int trim_rims(Triangles& faces);

}  // namespace wrapgauge
