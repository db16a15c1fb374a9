#include "app/desk/views/flat_map.hpp"

#include <cmath>

#include "app/desk/views/layout_lines.hpp"

namespace wrapgauge {

FlatMap flat_map(const Estimate& estimate, const StateContact& contact, double top_pa, double pixels_per_mm,
                 double pixel_ratio) {
  const FlatMesh& flat = estimate.setup.flat;
  FlatMap map;
  if (flat.vertices_m.rows() == 0) return map;
  const Vec2 low = flat.vertices_m.colwise().minCoeff(), high = flat.vertices_m.colwise().maxCoeff();
  map.area_mm =
      QRectF(1e3 * low.x(), -1e3 * high.y(), 1e3 * (high.x() - low.x()), 1e3 * (high.y() - low.y()));
  const int width = static_cast<int>(std::ceil(map.area_mm.width() * pixels_per_mm));
  const int height = static_cast<int>(std::ceil(map.area_mm.height() * pixels_per_mm));
  Raster raster(std::max(1, width), std::max(1, height), top_pa, pixel_ratio);
  const Eigen::VectorXd load = load_of(contact.map.on_layout_pa, contact.threshold_pa);
  const double scale = 1e3 * pixels_per_mm;
  const auto vertex = [&](int v) {
    const RasterPoint at{scale * (flat.vertices_m(v, 0) - low.x()),
                         scale * (high.y() - flat.vertices_m(v, 1)), 0.0};
    return RasterVertex{at, 1.0, contact.map.on_layout_pa[v], load[v]};
  };
  LimitContour contour;
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const std::array corner{vertex(flat.triangles(t, 0)), vertex(flat.triangles(t, 1)),
                            vertex(flat.triangles(t, 2))};
    raster.triangle(corner[0], corner[1], corner[2]);
    contour.add(corner);
  }
  contour.draw(raster, 0.5);
  map.image = raster.image();
  return map;
}

}  // namespace wrapgauge
