#pragma once
// Shapes of an SVG drawing (SVG 1.1 and the static part of 2: W3C recommendations) at true size.
//
// Read: rect, circle, ellipse, line, polyline, polygon, path; g, a, switch, svg, symbol and use; transform,
// viewBox and preserveAspectRatio; fill, stroke, stroke-width, fill-rule, display and visibility as
// attributes, in style="" or in a style sheet of the file (svg_style_sheet.hpp). Lengths in px (96 an inch),
// mm, cm, in, pt, pc, q and %. Left out and listed: text, pictures, what is hidden. Nothing is fetched.
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

// `unit`: what a user unit of the page is, instead of what the file says.
Result<Drawing> read_svg(std::string_view bytes, const std::string& name, std::optional<Length> unit = {});

}  // namespace wrapgauge
