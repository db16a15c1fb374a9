#pragma once
// Shapes of an SVG drawing (SVG 1.1 and the static part of 2: W3C recommendations) at true size.
//
// Read: rect, circle, ellipse, line, polyline, polygon, path; g, a, switch, svg, symbol and use; transform,
// viewBox and preserveAspectRatio; transform, sizes of shapes, fill, stroke, stroke-width, fill-rule, display
// and visibility as attributes, in style="" or in a style sheet of the file (svg_style_sheet.hpp). Lengths in
// px (96 an inch), mm, cm, in, pt, pc, q and %. Names: title, labels that drawing programs give layers and
// shapes (an attribute "label" with any prefix, aria-label, data-name), id, class. Text names the shape it
// lies in (drawn_names.hpp). Left out and listed: pictures, what is hidden or clipped away. A shape that a
// clip path or mask cuts has that as its fault (svg_clip.hpp). A stroke has no width where it is not the same
// in all directions. Nothing is fetched.
//
// Refused as a whole: more than 16 MiB, not XML, cut short, entity declarations, nesting beyond 60 levels,
// more than 100 000 elements with those that `use` repeats, more than 40 000 points, more than 64 MiB of text
// with its repeats, more than 500 selectors in style sheets. A `use` inside what it uses is left out and
// listed. A shape that is drawn wrongly stays in the list with its fault.

#include <string>
#include <string_view>

#include "model/core/result.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// `reading.unit`: what a user unit of the page is, instead of what the file says. Lines are joined only when
// `reading.join` is given.
Result<Drawing> read_svg(std::string_view bytes, const std::string& name, const DrawingReading& reading = {});

}  // namespace wrapgauge
