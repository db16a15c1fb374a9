#pragma once
// Clip paths and masks of an SVG drawing: what of a shape they leave to see. Nothing is cut here: a shape
// that they cut is told from one that they leave whole.

#include <2geom/rect.h>

#include <memory>
#include <string>
#include <vector>

#include "model/io/readers/svg_document.hpp"
#include "model/io/readers/svg_shape.hpp"

namespace wrapgauge {

struct SvgClip {
  std::string what;              // "clip path 'c1'", "mask 'm'"
  std::vector<Polygon> loops_m;  // what lies in one of them is seen
  bool whole = false;            // the loops are all that there is to say of it
  std::size_t points() const;
};
using SvgClips = std::vector<std::shared_ptr<const SvgClip>>;

// The clip path and the mask that an element names (its own; those of groups round it hold too). `to_m`: of
// the element's user units, after its transform. A link that leads nowhere clips nothing (SVG 2, 14.3.5; from
// memory). Loops are read from plain shapes in user units; all else makes a clip that is not whole.
SvgClips svg_clips_of(pugi::xml_node node, const SvgStyle& style, const SvgDocument& document,
                      const SvgStyleSheet& sheet, const Geom::Affine& to_m, const SvgViewport& viewport);

// An inner svg or a symbol shows nothing beyond its own frame, unless its overflow says so (SVG 1.1, 14.3.3;
// from memory). `frame` is in user units that `to_m` takes to metres. Null: it shows all.
std::shared_ptr<const SvgClip> svg_page_clip(pugi::xml_node node, const SvgStyle& style,
                                             const Geom::Rect& frame, const Geom::Affine& to_m);

enum class SvgSeen { kWhole, kInPart, kNothing };
SvgSeen seen_through(const SvgClip& clip, const DrawnShape& shape);

}  // namespace wrapgauge
