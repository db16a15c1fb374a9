#pragma once
// How large an SVG page is, and how its coordinates become metres.

#include <2geom/rect.h>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/io/readers/svg_shape.hpp"
#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

struct SvgPage {
  Geom::Affine to_m;  // user units of its children to metres (a page), or to the user units outside (inner)
  SvgViewport viewport;
  DrawnNote note;      // on the size
  Geom::Rect frame{};  // of an inner page, in the user units outside: what lies beyond it is not drawn
};

// The outermost svg, with its width and height as attributes or in its style="". A page without a size in the
// file, or in %, has 1 px a unit, and the note says so.
Result<SvgPage> svg_page(pugi::xml_node root, const std::string& name, const DrawingReading& reading);

// An inner svg, or a symbol: `node` has the viewBox; `sized` has x, y, width and height. A symbol's x and y
// are those of its `use`, which the caller applies.
std::optional<SvgPage> svg_inner_page(pugi::xml_node node, pugi::xml_node sized, const SvgViewport& outside);

}  // namespace wrapgauge
