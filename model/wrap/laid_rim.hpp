#pragma once
// The lines of a layout on the skin, quick enough to follow a hand, and of one too that cannot be put on:
// what runs off the body is left out, edges that do not meet are named.

#include <optional>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// Where the layout ends before the line that its first edge is to meet.
struct RimGap {
  Points3 along_m;  // on the skin, from point to point
  Length missing;   // of the flat layout
};

struct LaidRim {
  Points3 ends_m;             // pieces of outline, chambers and straps: rows 2k and 2k + 1
  std::optional<RimGap> gap;  // where it is narrowest; none: the edges meet, or the layout does not close
  bool cut = false;           // part of it lies beyond an end of the body
};

// A closing layout is stretched evenly round the sections of the body, as it is when it is put on; another
// one is laid along straight lines on the skin. Problems: those of find_anchor.
Result<LaidRim> laid_rim(const BodySurface& body, const Layout& layout, const Placement& placement);

}  // namespace wrapgauge
