#include "app/desk/views/raster_drawing.hpp"

#include <QPainter>

#include "app/picture/seen_surface.hpp"

namespace wrapgauge {
namespace {

void draw_worn(const WornSurface& worn, const LimbView& view, Raster& raster) {
  constexpr double kLift = 1.0;  // pixels
  SeenSurface seen = seen_surface(worn.points_m, worn.normals, view, kLift);
  if (worn.pressure_pa.size() > 0 && !worn.dimmed) seen.pressure_pa = worn.pressure_pa;
  draw_surface(worn.triangles, seen, raster);
}

LimbView in_pixels_of_screen(const BodyFrame& frame) {
  LimbView view = frame.view;
  view.width = static_cast<int>(view.width * frame.pixel_ratio);
  view.height = static_cast<int>(view.height * frame.pixel_ratio);
  view.pixels_per_m *= frame.pixel_ratio;
  return view;
}

}  // namespace

QImage raster_picture(const BodyFrame& frame) {
  constexpr double kLift = 2.0;  // pixels of the widget
  QImage image(frame.pixels, QImage::Format_RGB32);
  image.fill(frame.background);
  if (!frame.scene || !frame.scene->skin) return image;
  const LimbView view = in_pixels_of_screen(frame);
  const WornSurface* worn = frame.scene->worn();
  Raster raster(view.width, view.height, worn ? worn->top_pa : 1.0);
  draw_skin(frame.scene->skin->mesh(), frame.scene->skin->normals(), view, raster);
  if (worn) draw_worn(*worn, view, raster);
  for (const auto& part : frame.scene->parts)
    for (const SceneLines& lines : part->lines)
      for (Eigen::Index k = 0; k + 1 < lines.ends_m.rows(); k += 2)
        raster.line(view.project(lines.ends_m.row(k)), view.project(lines.ends_m.row(k + 1)),
                    lines.width * frame.pixel_ratio, lines.colour,
                    kLift * frame.pixel_ratio + lines.lift_m * view.pixels_per_m);
  QPainter(&image).drawImage(0, 0, raster.image());
  return image;
}

}  // namespace wrapgauge
