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

RasterCanvas::RasterCanvas(QWidget* parent) : QWidget(parent) {}

void RasterCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  scene_ = std::move(scene);
  cached_ = {};
  update();
}

void RasterCanvas::show_view(const LimbView& view) {
  view_ = view;
  cached_ = {};
  update();
}

void RasterCanvas::show_background(const QColor& colour) {
  background_ = colour;
  update();
}

QImage RasterCanvas::drawn() const {
  constexpr double kLift = 2.0;
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
                    lines.width * ratio, lines.colour, kLift * ratio);
  QImage image = raster.image();
  image.setDevicePixelRatio(ratio);
  return image;
}

QImage RasterCanvas::picture() {
  QImage image(size() * devicePixelRatioF(), QImage::Format_RGB32);
  image.setDevicePixelRatio(devicePixelRatioF());
  image.fill(background_);
  if (!scene_ || !scene_->skin) return image;
  if (cached_.isNull()) cached_ = drawn();
  QPainter(&image).drawImage(0, 0, cached_);
  return image;
}

void RasterCanvas::paintEvent(QPaintEvent*) {
  QPainter(this).drawImage(0, 0, picture());
}

}  // namespace wrapgauge
