#include "app/desk/views/raster_canvas.hpp"

#include <QPainter>

namespace wrapgauge {
namespace {

void draw_worn(const WornSurface& worn, const LimbView& view, Raster& raster) {
  constexpr double kLift = 1.0;  // pixels
  const auto vertex = [&](int v) {
    const Vec3 normal = view.rows * worn.normals.row(v).transpose();
    const double pressure = worn.pressure_pa.size() > 0 && !worn.dimmed ? worn.pressure_pa[v] : 0.0;
    RasterVertex shown{view.project(worn.points_m.row(v)), shade_of(normal), pressure, 0.0};
    shown.at.z += normal.z() > 0.0 ? kLift : 0.0;
    return shown;
  };
  for (Eigen::Index t = 0; t < worn.triangles.rows(); ++t)
    raster.triangle(vertex(worn.triangles(t, 0)), vertex(worn.triangles(t, 1)), vertex(worn.triangles(t, 2)));
}

}  // namespace

QImage RasterCanvas::drawn() {
  constexpr double kLift = 2.0;
  QImage image(device_pixels(), QImage::Format_RGB32);
  image.fill(background_);
  if (!scene_ || !scene_->skin) return image;
  const double ratio = devicePixelRatioF();
  LimbView view = view_;
  view.width = static_cast<int>(view.width * ratio);
  view.height = static_cast<int>(view.height * ratio);
  view.pixels_per_m *= ratio;
  const WornSurface* worn = scene_->worn();
  Raster raster(view.width, view.height, worn ? worn->top_pa : 1.0);
  draw_skin(scene_->skin->mesh(), scene_->skin->normals(), view, raster);
  if (worn) draw_worn(*worn, view, raster);
  for (const auto& part : scene_->parts)
    for (const SceneLines& lines : part->lines)
      for (Eigen::Index k = 0; k + 1 < lines.ends_m.rows(); k += 2)
        raster.line(view.project(lines.ends_m.row(k)), view.project(lines.ends_m.row(k + 1)),
                    lines.width * ratio, lines.colour, kLift * ratio + lines.lift_m * view.pixels_per_m);
  QPainter(&image).drawImage(0, 0, raster.image());
  return image;
}

}  // namespace wrapgauge
