#pragma once
// The lines between what is open and what is fused. Chambers and channels that meet are one open space: no
// line crosses a channel's mouth.

#include <functional>

#include "model/geometry/planar_graph.hpp"
#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

// Whether the inset seam of a ring holds a chamber in its hole; one that does not bounds no open space.
bool holds_chamber(const LayoutShapes& shapes, const Polygon& inset);

// Loops round the open spaces, the open side to the left: a space's outer loop runs counter-clockwise, one
// round a weld that it encloses clockwise. Inset seams are left out. The drawing has to pass check_layout.
std::vector<Polygon> open_outlines(const LayoutShapes& shapes);

// A weld between two edges, measured across. Parts: chambers or channels; none: the outline.
struct Weld {
  std::optional<FlatRegion> first, second;
  ClosestPlaces gap;
};

// Of each pair of parts, a part with itself among them, the narrowest weld below `least_m`. A weld's corner,
// such as beside a channel's mouth, is no narrow weld: two edges count only where the way from one to the
// other along the edges is three times as long as the straight one, and `least_m` or longer (judgement: a
// tongue of weld sharper than 39 degrees still counts). `counts` may refuse more.
std::vector<Weld> narrow_welds(const LayoutShapes& shapes, double least_m,
                               const std::function<bool(const Weld&)>& counts);

// Of each stretch of a loop's inside that is narrower than `least_m` its narrowest place, the narrowest
// first. On either side of it is as much room as a circle `least_m` wide has. Corners do not count, as above.
std::vector<ClosestPlaces> narrow_necks(const Polygon& loop, double least_m);

}  // namespace wrapgauge
