#pragma once
// Shapes of an ASCII DXF drawing, R12 to 2018 (DXF reference, from memory), at true size.
//
// Read from the section ENTITIES: LINE, LWPOLYLINE, POLYLINE (with bulges), ARC, CIRCLE, ELLIPSE, SPLINE,
// POINT, and INSERT with all its copies; a polyline's width; layer, colour (as "colour 5"; a layer's own
// where the entity has none) and the unit from $INSUNITS. What a block holds on layer 0, or in the colour of
// its block, is on the INSERT's layer, or in its colour; the block's name counts as a group. Lines drawn
// twice are read once, and open pieces of one layer are joined end to end. A shape is called by what our own
// drawings say of it (extended data of WRAPGAUGE), else by the text inside it, else by a block or layer that
// is its alone. z is dropped. Paper space is read only when nothing is drawn in model space, and a note says
// so. Left out and listed: dimensions, hatches, blocks from other files or put into themselves, layers that
// are off or frozen.
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

// `reading.unit`: of a coordinate, instead of what the file says. A file that says nothing is taken as mm,
// and a note says so.
Result<Drawing> read_dxf(std::string_view bytes, const std::string& name, const DrawingReading& reading = {});

}  // namespace wrapgauge
