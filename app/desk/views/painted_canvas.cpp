#include "app/desk/views/painted_canvas.hpp"

#include <QPainter>

namespace wrapgauge {

PaintedCanvas::PaintedCanvas(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_OpaquePaintEvent);
}

void PaintedCanvas::forget() {
  kept_ = {};
  update();
}

void PaintedCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  scene_ = std::move(scene);
  forget();
}

void PaintedCanvas::show_view(const LimbView& view) {
  view_ = view;
  forget();
}

void PaintedCanvas::show_background(const QColor& colour) {
  background_ = colour;
  forget();
}

QSize PaintedCanvas::device_pixels() const {
  const double ratio = devicePixelRatioF();
  return {static_cast<int>(width() * ratio), static_cast<int>(height() * ratio)};
}

QImage PaintedCanvas::picture() {
  if (size().isEmpty()) return {};
  if (kept_.isNull() || kept_.size() != device_pixels()) {
    kept_ = drawn();
    kept_.setDevicePixelRatio(devicePixelRatioF());
  }
  return kept_;
}

void PaintedCanvas::paintEvent(QPaintEvent*) {
  QPainter(this).drawImage(0, 0, picture());
}

}  // namespace wrapgauge
