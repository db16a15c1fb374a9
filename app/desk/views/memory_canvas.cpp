#include "app/desk/views/memory_canvas.hpp"

#include <QPainter>

namespace wrapgauge {

MemoryCanvas::MemoryCanvas(QWidget* parent)
    : QWidget(parent), drawing_([this] { return begun_ ? &context_ : nullptr; }, [this] { make_current(); }) {
  setAttribute(Qt::WA_OpaquePaintEvent);
}

MemoryCanvas::~MemoryCanvas() {
  if (!begun_) return;
  make_current();
  frame_.reset();
  drawing_.end();
}

void MemoryCanvas::make_current() {
  context_.makeCurrent(&surface_);
}

void MemoryCanvas::begin() {
  context_.setFormat(QSurfaceFormat::defaultFormat());
  context_.create();
  surface_.setFormat(context_.format());
  surface_.create();
  begun_ = true;
  make_current();
  drawing_.start();
}

QImage MemoryCanvas::drawn() {
  if (!begun_) begin();
  make_current();
  const double ratio = devicePixelRatioF();
  const QSize pixels(static_cast<int>(width() * ratio), static_cast<int>(height() * ratio));
  if (!frame_ || frame_->size() != pixels) frame_ = std::make_unique<QOpenGLFramebufferObject>(pixels);
  drawing_.draw(pixels, ratio, frame_->handle());
  QImage image = frame_->toImage().convertToFormat(QImage::Format_RGB32);
  context_.doneCurrent();
  image.setDevicePixelRatio(ratio);
  return image;
}

QImage MemoryCanvas::picture() {
  if (size().isEmpty()) return {};
  if (shown_.isNull() || shown_.size() != size() * devicePixelRatioF()) shown_ = drawn();
  return shown_;
}

void MemoryCanvas::paintEvent(QPaintEvent*) {
  QPainter(this).drawImage(0, 0, picture());
}

void MemoryCanvas::redraw() {
  shown_ = {};
  update();
}

void MemoryCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  drawing_.actors().show(*scene, devicePixelRatioF());
  redraw();
}

void MemoryCanvas::show_view(const LimbView& view) {
  drawing_.actors().look(view);
  redraw();
}

void MemoryCanvas::show_background(const QColor& colour) {
  drawing_.actors().set_background(colour);
  redraw();
}

}  // namespace wrapgauge
