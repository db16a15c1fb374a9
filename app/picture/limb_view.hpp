#pragma once
// Looking at a limb from the side: orthographic, proximal up.

#include "app/picture/raster.hpp"
#include "model/core/array.hpp"

namespace wrapgauge {

struct LimbView {
  Mat3 rows = Mat3::Identity();  // right, up, towards the eye
  Vec3 centre_m = Vec3::Zero();  // lies in the middle of the picture
  double pixels_per_m = 1.0;
  int width = 1, height = 1;  // of the picture, pixels

  RasterPoint project(const Vec3& point_m) const {
    const Vec3 seen = pixels_per_m * (rows * (point_m - centre_m));
    return {0.5 * width + seen.x(), 0.5 * height - seen.y(), seen.z()};
  }
};

// Rows of a view with `up` (unit) up, seen from `towards_eye`, which is made perpendicular to it.
Mat3 limb_view_rows(const Vec3& up, const Vec3& towards_eye);

double shade_of(const Vec3& seen_normal);  // of a unit normal in the view's rows

}  // namespace wrapgauge
