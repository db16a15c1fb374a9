#include "app/desk/views/raster_drawing.hpp"

#include <QPainter>

#include "app/picture/seen_surface.hpp"

namespace wrapgauge {
namespace {

void draw_worn(const WornSurface& worn, const LimbView& view, Raster& raster) {
  constexpr double kLift = 1.0;  // pixels
  SeenSurface seen = seen_surface(worn.points_m, worn.normals, view, kLift + worn.lift_m * view.pixels_per_m);
  if (worn.pressure_pa.size() > 0 && !worn.dimmed) seen.pressure_pa = worn.pressure_pa;
  draw_surface(worn.triangles, seen, raster);
}

void draw_outer(const OuterSheet& outer, const LimbView& view, Raster& raster) {
  constexpr double kLift = 1.0;  // pixels
  const SeenSurface seen =
      seen_surface(outer.points_m, outer.normals, view, kLift + outer.lift_m * view.pixels_per_m);
  draw_surface(outer.triangles, seen, raster);
}

const OuterSheet* outer_of(const BodyScene& scene) {
  for (const auto& part : scene.parts)
    if (part->outer) return &*part->outer;
  return nullptr;
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
  Raster veiled = raster;
  const auto draw_lines = [&](Raster& on) {
    for (const auto& part : frame.scene->parts)
      for (const SceneLines& lines : part->lines)
        for (Eigen::Index k = 0; k + 1 < lines.ends_m.rows(); k += 2)
          on.line(view.project(lines.ends_m.row(k)), view.project(lines.ends_m.row(k + 1)),
                  lines.width * frame.pixel_ratio, lines.colour,
                  kLift * frame.pixel_ratio + lines.lift_m * view.pixels_per_m);
  };
  draw_lines(raster);
  QPainter painter(&image);
  painter.drawImage(0, 0, raster.image());
  const OuterSheet* outer = outer_of(*frame.scene);
  if (!outer) return image;
  draw_outer(*outer, view, veiled);  // a sheet in front of all, of which a share is seen
  draw_lines(veiled);
  painter.setOpacity(kOuterOpacity);
  painter.drawImage(0, 0, veiled.image());
  return image;
}

}  // namespace wrapgauge
