#include "app/desk/views/memory_canvas.hpp"

namespace wrapgauge {

MemoryCanvas::MemoryCanvas(QWidget* parent)
    : PaintedCanvas(parent),
      drawing_([this] { return context_.isValid() ? &context_ : nullptr; }, [this] { make_current(); }) {}

MemoryCanvas::~MemoryCanvas() {
  if (!context_.isValid()) return;
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
  make_current();
  drawing_.start();
}

QImage MemoryCanvas::drawn() {
  if (!context_.isValid()) begin();
  make_current();
  const QSize pixels = device_pixels();
  if (!frame_ || frame_->size() != pixels) frame_ = std::make_unique<QOpenGLFramebufferObject>(pixels);
  if (scene_) drawing_.actors().show(*scene_, devicePixelRatioF());
  drawing_.actors().look(view_);
  drawing_.actors().set_background(background_);
  drawing_.draw(pixels, devicePixelRatioF(), frame_->handle());
  QImage image = frame_->toImage().convertToFormat(QImage::Format_RGB32);
  context_.doneCurrent();
  return image;
}

}  // namespace wrapgauge
