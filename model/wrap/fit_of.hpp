#pragma once
// How a layout fits, measured on the wrap.

#include "model/layout/closing_lines.hpp"
#include "model/wrap/laid_map.hpp"

namespace wrapgauge {

// Of a layout that closes. `sections`: those that it was put on in, distal first; `at_anchor`: the one there.
Fit closing_fit(const Layout& layout, const FlatMesh& mesh, const ClosingLines& lines,
                std::vector<GirthSection> sections, const GirthSection& at_anchor, bool across_is_proximal);

// Of a layout that does not close, laid. Edges are held against each other only where the section through the
// anchor is closed, and a slit is one of at most a quarter of the way round: a pad is none.
Fit open_fit(const BodySurface& body, const AnchorFrame& anchor, const FlatMesh& mesh, const Points3& laid_m,
             const Vec2& layout_point_m);

// Where it comes to lie on itself. Only parts that lie half a girth or more apart in the flat are held
// against each other: nearer ones cannot have gone round. A lap narrower than a third of the mesh's edge is
// not seen. `girth`: of the closed section through the anchor.
std::optional<SelfLap> self_lap(const FlatMesh& mesh, const Points3& laid_m, Length girth);

}  // namespace wrapgauge
