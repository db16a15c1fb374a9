#pragma once
// Where on the skin a layout is placed, and which way it faces there.

#include "model/core/result.hpp"
#include "model/wrap/section_loop.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// An anchor point further than this from the skin is taken for a mistake (another unit, another body).
inline constexpr Length kAnchorReach = 20.0 * mm;  // judgement

struct AnchorFrame {
  SurfacePoint place;
  Vec3 wrap, across, outward;  // unit, orthogonal, wrap x across = outward
  // Normal of the sections the layout goes round in: across the wrap direction, the axis where there is no
  // turn and its opposite after half a turn. Turned about a slanting outward direction, the axis itself would
  // come to lie twice the slant off.
  Vec3 section_normal;

  // Else the layout is turned by more than a quarter turn: its y runs towards the distal end.
  bool across_is_proximal(const Vec3& axis) const { return section_normal.dot(axis) >= 0.0; }
};

// Problems: a number that is not finite; the body has no faces; a station beyond the body or without a closed
// section (mm); a point too far from the skin (mm); the skin faces along the axis at the anchor.
Result<AnchorFrame> find_anchor(const BodySurface& body, const Placement& placement);

// The section a closing layout goes round in, through the anchor. Problem: it is not closed (mm from the
// end).
Result<SectionLoop> closed_section(const BodySurface& body, const Vec3& anchor_m, const Vec3& section_normal);

}  // namespace wrapgauge
