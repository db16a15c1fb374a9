#pragma once
// How well a closing layout meets itself round the body.

#include "model/wrap/laid_map.hpp"

namespace wrapgauge {

// How far the centre line goes from `start_m`, an arc length from the anchor, until it has turned once about
// the line through the section's centre along the axis. Problem: it does not go round.
Result<double> length_once_round_m(const BodySurface& body, const AnchorFrame& anchor,
                                   const SectionLoop& section, double start_m);

// `section`: the closed section through the anchor. The closing length needed is where the centre line,
// followed from x = closing_from_x_m, has turned once about the line through the section's centre along the
// axis; when it meets an open end first, it is continued at the turning rate it had so far. The gaps are arc
// lengths along the section through the laid edge, at the lowest and highest closing vertices. Problem: the
// wrap direction does not go round the body.
Result<ClosureReport> closure_report(const BodySurface& body, const AnchorFrame& anchor,
                                     const SectionLoop& section, const FlatMesh& mesh, const Points3& laid_m,
                                     const Vec2& layout_point_m);

}  // namespace wrapgauge
