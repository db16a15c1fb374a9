#include "app/desk/views/flat_map.hpp"

#include <algorithm>
#include <cmath>

#include "app/picture/flat_sheet.hpp"

namespace wrapgauge {

FlatMap flat_map(const Estimate& estimate, const StateContact& contact, double top_pa, double pixels_per_mm,
                 double pixel_ratio) {
  const FlatMesh& flat = estimate.setup.flat;
  FlatMap map;
  if (flat.vertices_m.rows() == 0) return map;
  const Vec2 low = flat.vertices_m.colwise().minCoeff(), high = flat.vertices_m.colwise().maxCoeff();
  const FlatSheet sheet{low, high - low, 1e3 * pixels_per_mm};
  const Vec2 size_mm = 1e3 * sheet.size_m;
  map.area_mm = QRectF(1e3 * low.x(), -1e3 * high.y(), size_mm.x(), size_mm.y());
  const auto pixels = [&](double length_mm) {
    return std::max(1, static_cast<int>(std::ceil(length_mm * pixels_per_mm)));
  };
  Raster raster(pixels(size_mm.x()), pixels(size_mm.y()), top_pa, pixel_ratio);
  draw_flat_map(flat, contact.map.on_layout_pa, contact.share_of_limit, sheet, raster);
  map.image = raster.image();
  return map;
}

}  // namespace wrapgauge
