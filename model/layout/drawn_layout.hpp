#pragma once
// A drawing and what a person says about it -> a layout.
//
// Frame: the lower left corner of the outline becomes (0, 0); what is up on the drawing's page is up in the
// layout, so the drawing shows the layout with the outer sheet towards you.

#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/drawn_fault.hpp"

namespace wrapgauge {

// Outline, chambers and straps: closed paths, each its own part. A circle or rectangle that is a hole in a
// chamber is an inset seam; other holes are refused. Channels and inset lines: open lines with a width, or
// closed rectangles, which run along their longer side. Inset seams are also round spots; each belongs to the
// innermost chamber it lies in. Inlets: any shape; its middle counts. Parts are called by the shape's title,
// label or id or by a text inside it, else "chamber 1" and so on; copies with one name are numbered. Where
// parts are guessed, the layout's name ends in "(parts guessed)".
//
// Problems, all of a drawing in one message: a shape with a part and a fault, no outline or several, a path
// that is open, crosses itself or has a hole where that cannot be, a missing width, an inset seam in no
// chamber, sheets or strap cloth not said, more than 20 000 points, coordinates beyond 10 000 mm. Whether the
// layout makes sense is for check_layout.
Result<Layout> layout_from_drawing(const Drawing& drawing, const DrawingMap& map);

// The same, each fault for itself; none: it becomes a layout.
std::vector<DrawnFault> drawn_faults(const Drawing& drawing, const DrawingMap& map);

}  // namespace wrapgauge
