#pragma once
// A triangulated surface as it is seen in a picture, and the line on it where the limit is met.

#include <array>
#include <vector>

#include "app/picture/limb_view.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// A row or an entry a vertex; what RasterVertex holds of it.
struct SeenSurface {
  Points3 at;
  Eigen::VectorXd shade, pressure_pa, load;
};

// Of bare skin. What faces the eye is brought nearer to it by `lift` pixels.
SeenSurface seen_surface(const Points3& points_m, const Points3& normals, const LimbView& view,
                         double lift = 0.0);

// Its shade, and its colour and hatch where it is pressed.
void draw_surface(const Triangles& triangles, const SeenSurface& seen, Raster& raster);

// `normals`: a vertex each.
void draw_skin(const TriangleMesh& skin, const Points3& normals, const LimbView& view, Raster& raster);

// Where the load crosses 1: the limit's contour line.
class LimitContour {
 public:
  LimitContour(const Triangles& triangles, const SeenSurface& seen);
  void draw(Raster& raster, double lift) const;
  std::vector<RasterPoint> middles() const;  // of its pieces

 private:
  std::vector<std::array<RasterPoint, 2>> pieces_;
};

}  // namespace wrapgauge
