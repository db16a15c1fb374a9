#pragma once
// Laying a flat layout on the skin along geodesics: its centre line first, then across it.

#include <optional>
#include <vector>

#include "model/layout/flat_mesh.hpp"
#include "model/wrap/anchor.hpp"

namespace wrapgauge {

// How far the layout reaches beyond the open ends of the body, metres along the skin; 0: it does not.
struct RunOff {
  double distal_m = 0.0, proximal_m = 0.0;

  void include(double missing_m, bool proximal) {
    double& worst_m = proximal ? proximal_m : distal_m;
    worst_m = std::max(worst_m, missing_m);
  }
  bool any() const { return distal_m > 0.0 || proximal_m > 0.0; }
};
Problem run_off_problem(const RunOff& run_off);

// A geodesic through a point, followed both ways; arc lengths are signed.
struct TwoWayPath {
  GeodesicPath forward, backward;

  Vec3 at(double arc_m) const { return arc_m >= 0.0 ? forward.at(arc_m) : backward.at(-arc_m); }
  // How much of `arc_m` the surface was too short for.
  double missing_m(double arc_m) const;
  // Where it ends on that side.
  const Vec3& end_m(bool ahead) const { return (ahead ? forward : backward).points_m.back(); }
};
TwoWayPath two_way_path(const BodySurface& body, const SurfacePoint& from, const Vec3& direction,
                        double back_m, double ahead_m);

// Flat lengths along the centre line y = layout_point.y, and along every line x = constant, are lengths on
// the skin. Every 1.5 mm of centre line one line across is traced; between those the points are interpolated
// and brought back onto the surface. Problem: the layout runs off the surface.
Result<Points3> lay_out(const BodySurface& body, const AnchorFrame& anchor, const Points2& flat_m,
                        const Vec2& layout_point_m);
// The same of as much as there is skin for: none where the layout runs off.
std::vector<std::optional<Vec3>> lay_out_in_part(const BodySurface& body, const AnchorFrame& anchor,
                                                 const Points2& flat_m, const Vec2& layout_point_m);

}  // namespace wrapgauge
