#pragma once
// Shapes of an ASCII DXF drawing, R12 to 2018 (DXF reference, from memory), at true size.
//
// Read from the section ENTITIES: LINE, LWPOLYLINE, POLYLINE (with bulges), ARC, CIRCLE, ELLIPSE, SPLINE,
// POINT, and INSERT with all its copies; layer, colour (as "colour 5"; a layer's own where the entity has
// none) and the unit from $INSUNITS. What a block holds on layer 0, or in the colour of its block, is on the
// INSERT's layer, or in its colour; the block's name counts as a group. Open pieces of one layer are joined
// end to end. z is dropped. Left out and listed: text, dimensions, hatches, blocks from other files or put
// into themselves, paper space, layers that are off or frozen.
//
// Refused as a whole: what dxf_groups refuses, a unit that is not one of inch, foot, mm, cm, m, mil, yard,
// micrometre and decimetre, more than 100 000 entities, blocks counted as often as they are put in, more than
// 16 blocks within one another, more than 40 000 points, more than 64 MiB of text with its repeats. An entity
// that is drawn wrongly stays in the list with its fault.

#include <string>
#include <string_view>

#include "model/core/result.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// `unit`: of a coordinate, instead of what the file says. A file that says nothing is taken as mm, and a note
// says so.
Result<Drawing> read_dxf(std::string_view bytes, const std::string& name, std::optional<Length> unit = {},
                         Length join = 0.1 * mm);

}  // namespace wrapgauge
