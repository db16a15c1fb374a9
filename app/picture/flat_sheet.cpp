#include "app/picture/flat_sheet.hpp"

namespace wrapgauge {

LimitContour draw_flat_map(const FlatMesh& flat, const Eigen::VectorXd& pressure_pa,
                           const Eigen::VectorXd& share_of_limit, const FlatSheet& sheet, Raster& raster) {
  const Eigen::Index count = flat.vertices_m.rows();
  SeenSurface seen{Points3(count, 3), Eigen::VectorXd::Ones(count), pressure_pa, share_of_limit};
  for (Eigen::Index v = 0; v < count; ++v) {
    const RasterPoint at = sheet.project(flat.vertices_m.row(v));
    seen.at.row(v) << at.x, at.y, at.z;
  }
  draw_surface(flat.triangles, seen, raster);
  LimitContour contour(flat.triangles, seen);
  contour.draw(raster, kFlatLift);
  return contour;
}

}  // namespace wrapgauge
