#pragma once
// Lines and arcs drawn one by one, put together end to end.

#include "model/core/quantity.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// First, lines that are drawn twice, one upon the other within `tolerance` on one layer, are read once, and a
// note says how many; a shape of several open lines is taken as so many shapes.
// Then joins open shapes of one layer and colour whose ends lie within `tolerance` of one another; a chain
// that comes back to its start is closed. Ends meet in the middle between them. Where three or more ends come
// together nothing is joined, and a note says where. The joined shape takes the place of its first piece.
void join_paths(Drawing& drawing, Length tolerance);

}  // namespace wrapgauge
