#pragma once
#include <optional>
#include <pugixml.hpp>
#include <string>

#include "model/io/readers/svg_style_sheet.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// What an element hands on to those inside it.
struct SvgStyle {
  std::string fill, stroke;            // empty: nobody said
  std::optional<double> stroke_width;  // user units of whatever is drawn with it
  FillRule fill_rule = FillRule::kNonZero;
  bool visible = true;  // `visibility`
  bool display = true;  // `display`: false holds for all inside
  SvgDeclarations own;  // what style sheet and style="" say of the element itself; not handed on
};

// A property of the element itself: what its style says, else its attribute. Empty: neither.
std::string svg_own(pugi::xml_node node, const SvgStyle& style, const char* name);

// Where the element's transform puts it. A transform in its style goes before the attribute. None, and why in
// half a sentence: it is no transform, or turns about a place that is not read.
std::optional<Geom::Affine> svg_own_transform(pugi::xml_node node, const SvgStyle& style, std::string& why);

// An attribute gives way to the style sheet, that to style="", but for what is !important (CSS 2.1, 6.4).
SvgStyle svg_style_of(pugi::xml_node node, const SvgStyleSheet& sheet, SvgStyle inherited);

}  // namespace wrapgauge
