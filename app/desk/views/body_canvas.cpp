#include "app/desk/views/body_canvas.hpp"

#include <QPainter>

#include "app/desk/views/gl_probe.hpp"
#include "app/desk/views/raster_drawing.hpp"

namespace wrapgauge {

BodyCanvas::BodyCanvas(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  if (why_no_graphics().isEmpty()) vtk_ = std::make_unique<VtkDrawing>();
}

void BodyCanvas::forget() {
  kept_ = {};
  update();
}

void BodyCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  frame_.scene = std::move(scene);
  forget();
}

void BodyCanvas::show_view(const LimbView& view) {
  frame_.view = view;
  forget();
}

void BodyCanvas::show_background(const QColor& colour) {
  frame_.background = colour;
  forget();
}

QImage BodyCanvas::picture() {
  if (size().isEmpty()) return {};
  frame_.pixel_ratio = devicePixelRatioF();
  frame_.pixels = {static_cast<int>(width() * frame_.pixel_ratio),
                   static_cast<int>(height() * frame_.pixel_ratio)};
  if (kept_.isNull() || kept_.size() != frame_.pixels) {
    kept_ = vtk_ ? vtk_->picture(frame_) : raster_picture(frame_);
    kept_.setDevicePixelRatio(frame_.pixel_ratio);
  }
  return kept_;
}

void BodyCanvas::paintEvent(QPaintEvent*) {
  QPainter(this).drawImage(0, 0, picture());
}

}  // namespace wrapgauge
