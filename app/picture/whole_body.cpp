#include "app/picture/whole_body.hpp"

#include <algorithm>

#include "app/picture/map_scene.hpp"
#include "app/picture/seen_surface.hpp"

namespace wrapgauge {
namespace {

struct SeenBox {
  Vec3 low, high;
};

SeenBox seen_box(const SkinSurface& skin, const Mat3& rows) {
  const Points3 seen = skin.mesh().vertices_m * rows.transpose();
  return {seen.colwise().minCoeff(), seen.colwise().maxCoeff()};
}

// In pixels of the device, a little smaller than `area`.
LimbView view_of_all(const SkinSurface& skin, const Mat3& rows, const QRectF& area, double pixel_ratio) {
  constexpr double kShare = 0.98;
  const SeenBox box = seen_box(skin, rows);
  const Vec3 size = (box.high - box.low).cwiseMax(1e-4);
  LimbView view;
  view.rows = rows;
  view.width = static_cast<int>(pixel_ratio * area.width());
  view.height = static_cast<int>(pixel_ratio * area.height());
  view.centre_m = rows.transpose() * (0.5 * (box.low + box.high));
  view.pixels_per_m = kShare * std::min(view.height / size.y(), view.width / size.x());
  return view;
}

// A rim that would fill a small picture is drawn finer.
double rim_width(const QRectF& area) {
  constexpr double kFinest = 1.5, kBoldest = 3.0, kBoldFrom = 240.0;
  return std::clamp(kBoldest * area.height() / kBoldFrom, kFinest, kBoldest);
}

}  // namespace

QSizeF seen_size_m(const SkinSurface& skin, const Mat3& rows) {
  const SeenBox box = seen_box(skin, rows);
  return {box.high.x() - box.low.x(), box.high.y() - box.low.y()};
}

void draw_whole_body(const SkinSurface& skin, const LaidLayout& worn, const Mat3& rows, double top_pa,
                     const QRectF& area, QPainter& painter) {
  const double ratio = painter.device()->devicePixelRatio();
  const LimbView view = view_of_all(skin, rows, area, ratio);
  Raster raster(view.width, view.height, top_pa, ratio);
  draw_skin(skin.mesh(), skin.normals(), view, raster);
  SeenSurface seen = seen_surface(worn.points_m, worn.normals, view, kLineLift);
  if (worn.pressure_pa.size() > 0) seen.pressure_pa = worn.pressure_pa;
  draw_surface(worn.triangles, seen, raster);
  for (Eigen::Index k = 0; k + 1 < worn.rim_m.rows(); k += 2)
    raster.line(view.project(worn.rim_m.row(k)), view.project(worn.rim_m.row(k + 1)), rim_width(area) * ratio,
                kWornRim, 2.0 * kLineLift);
  QImage image = raster.image();
  image.setDevicePixelRatio(ratio);
  painter.drawImage(area.topLeft(), image);
}

}  // namespace wrapgauge
