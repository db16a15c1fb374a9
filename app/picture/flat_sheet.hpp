#pragma once
// Contact pressure on the flat layout as it is drawn, proximal up.

#include "app/picture/seen_surface.hpp"
#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

// Where the layout lies on a picture.
struct FlatSheet {
  Vec2 low_m = Vec2::Zero(), size_m = Vec2::Zero();
  double pixels_per_m = 1.0, left = 0.0, top = 0.0;

  RasterPoint project(const Vec2& point_m) const {
    return {left + pixels_per_m * (point_m.x() - low_m.x()),
            top + pixels_per_m * (size_m.y() - point_m.y() + low_m.y()), 0.0};
  }
};

// Colours of the contact pressure; hatch and contour of the share that each place takes of its limit. Both a
// vertex each.
LimitContour draw_flat_map(const FlatMesh& flat, const Eigen::VectorXd& pressure_pa,
                           const Eigen::VectorXd& share_of_limit, const FlatSheet& sheet, Raster& raster);

inline constexpr double kFlatLift = 0.5;  // pixels, of lines on the map

}  // namespace wrapgauge
