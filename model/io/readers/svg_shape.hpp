#pragma once
// One SVG shape element as traced paths.

#include <2geom/affine.h>

#include <pugixml.hpp>

#include "model/io/readers/svg_style.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

struct SvgViewport {
  double width = 0.0, height = 0.0;  // user units; what percentages are of
};

// A circle stays round under the map, and a line as wide in every direction.
bool keeps_angles(const Geom::Affine& map);

bool is_svg_shape(std::string_view element);  // rect, circle, ellipse, line, polyline, polygon, path

// The basic shapes of SVG 1.1, chapters 8 and 9 (from memory). `to_m`: user units to metres. Fills paths,
// circle and, when something is wrong with the element, fault. An element that SVG does not draw (a size of
// 0) comes back without paths and without fault.
// `style`: the element's; sizes in it (width: 3mm) go before its attributes, as in SVG 2.
void trace_svg_shape(pugi::xml_node node, const SvgStyle& style, const Geom::Affine& to_m,
                     const SvgViewport& viewport, DrawnShape& shape);

}  // namespace wrapgauge
