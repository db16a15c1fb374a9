#pragma once
// Flat point -> skin point: where the layout lies when it is put on, and how well it goes round.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/result.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/wrap/fit.hpp"

namespace wrapgauge {

class BodySurface;

struct AnchorAtPoint {
  Vec3 point_m;  // snapped to the nearest skin point
  bool operator==(const AnchorAtPoint&) const = default;
};
struct AnchorAtStation {
  Length station;          // along the body axis from the distal end
  double angle_deg = 0.0;  // about the middle of the section there (see station_angle.hpp), from the body's
                           // +x, right-handed about the distal->proximal direction
  bool operator==(const AnchorAtStation&) const = default;
};

struct Placement {
  std::variant<AnchorAtPoint, AnchorAtStation> anchor;
  // Flat point that lies on the anchor; none: centre of the outline's bounds.
  std::optional<Vec2> layout_point_m;
  double turn_deg = 0.0;  // 0: x goes round the limb, perpendicular to the axis; right-handed about the
                          // outward normal at the anchor
  bool operator==(const Placement&) const = default;
};

// How the flat layout is distorted by lying on the body, a chamber each (and one for the whole).
struct WrapQuality {
  std::string part;
  double stretch_min = 1.0, stretch_max = 1.0;  // principal stretches, area-weighted 1st and 99th percentile
  double shear_max_deg = 0.0;                   // loss of the right angle between x and y lines
};

struct ClosureReport {
  Length girth_at_anchor;
  Length closing_length_used;
  Length closing_length_needed;     // along the centre line, to have turned once about the axis
  Length gap_distal, gap_proximal;  // laid without stretching: > 0 the two edges stay apart, < 0 they overlap
};

struct Wrap {
  Vec3 anchor_m, wrap_direction, across_direction, outward;  // at the anchor; unit, orthogonal
  Points3 laid_m;  // skin point of each flat vertex, laid along geodesics: centre line first, then across it
  Points3 worn_m;  // start of the mechanics: as laid, but a closing layout is stretched evenly round each
                   // section so that its two edges meet; on the skin
  Points3 outward_at_worn;  // unit outward skin normal at worn_m
  std::vector<WrapQuality> quality;
  std::optional<ClosureReport> closure;
  Fit fit;
};

// The closing length a closure asks for on this body: as given, or from its stretch and girth
// at the anchor.
Result<std::optional<Length>> resolve_closing_length(const Body& body, const Layout& layout,
                                                     const Placement& placement);
Result<std::optional<Length>> resolve_closing_length(const BodySurface& surface, const Layout& layout,
                                                     const Placement& placement);

// Problems: anchor too far from the body (mm) or at a station outside it; the skin there faces along the
// axis; the layout runs off the mesh (how many mm, past which end); for a closing layout also: a section is
// not closed, or the wrap direction does not go round.
Result<Wrap> wrap_layout(const Body& body, const Layout& layout, const FlatMesh& mesh,
                         const Placement& placement);
// On a surface that was prepared before: preparing takes as long as laying.
Result<Wrap> wrap_layout(const BodySurface& surface, const Layout& layout, const FlatMesh& mesh,
                         const Placement& placement);

}  // namespace wrapgauge
