#pragma once
// What every drawing goes through, whatever its bytes: reading, listing, mapping, checking.

#include <cstdlib>

#include "model/layout/drawing_parts.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/layout/layout_check.hpp"

namespace wrapgauge::fuzz {

inline void require(bool holds) {
  if (!holds) std::abort();
}

inline void take_drawing(const Result<Drawing>& drawing) {
  if (!drawing) return require(drawing.problem().message.ends_with('.'));
  for (const DrawnShape& shape : drawing->shapes) {
    if (shape.cut)  // by a clip or mask: a fault, and its paths are there uncut
      require(!shape.fault.empty() && !shape.paths.empty());
    else
      require(shape.paths.empty() != shape.fault.empty());
    for (const DrawnPath& path : shape.paths)
      for (const Vec2& p : path.points_m) require(p.allFinite());
    if (const auto area = area_m2(shape)) require(*area >= 0.0);
  }
  DrawingMap map;
  map.details.skin_sheet = map.details.outer_sheet = Sheet{"00-30", 1.5 * mm};
  map.details.strap_stiffness = 20.0 * N_per_mm;
  map.details.strap_thickness = 1.0 * mm;
  map.channel_width = map.inset_width = 4.0 * mm;
  overlap_sentences(*drawing, drawn_parts(*drawing, map));
  const auto layout = layout_from_drawing(*drawing, map);
  if (layout) check_layout(*layout);
}

}  // namespace wrapgauge::fuzz
