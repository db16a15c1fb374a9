#pragma once
// A layout's drawing as closed loops, and what lies at a point of it.

#include <optional>
#include <vector>

#include "model/geometry/polygon_checks.hpp"
#include "model/layout/flat_places.hpp"

namespace wrapgauge {

// Gap below which drawn points and lines are one: finer than anything is cut or cast (judgement).
inline constexpr double kDrawingTolerance = 1e-5;
// Whether a length is less than it should be by more than that: rounding alone is no fault.
inline bool falls_short(double length_m, double least_m) {
  return length_m < least_m - kDrawingTolerance;
}

struct LayoutShapes {
  struct OpenChamber {
    Polygon boundary_m;
    std::vector<Polygon> insets_m;  // spots first, then lines
  };
  Polygon outline_m;
  std::vector<OpenChamber> chambers;
  std::vector<Polygon> channels_m;
  std::vector<Polygon> straps_m;
};

// Spots become polygons with sides no longer than `longest_side_m`.
LayoutShapes layout_shapes(const Layout& layout, double longest_side_m);

// A chamber wins over a channel, an inset seam over its chamber, a chamber or channel in the hole of a ring
// (an inset seam that holds a chamber) over that seam, the outline over a strap. None: outside.
std::optional<FlatRegion> region_at(const LayoutShapes& shapes, const Vec2& point);

// The loops of chambers, then of channels.
struct OpenLoop {
  const Polygon* loop;  // of the shapes
  FlatRegion region;
  ProblemPlace place;
};
std::vector<OpenLoop> open_loops(const LayoutShapes& shapes);

// The weld between a chamber and another that lies whole in one of its inset seams: a ring with a chamber in
// its hole. None: the two do not lie so.
std::optional<ClosestPlaces> seam_in_hole(const LayoutShapes& shapes, const OpenLoop& a, const OpenLoop& b);

bool same(const std::optional<FlatRegion>& a, const std::optional<FlatRegion>& b);

}  // namespace wrapgauge
