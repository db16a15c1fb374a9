#include "app/desk/views/gl_canvas.hpp"

#include <QOpenGLContext>

namespace wrapgauge {

GlCanvas::GlCanvas(QWidget* parent)
    : QOpenGLWidget(parent), drawing_([this] { return context(); }, [this] { makeCurrent(); }) {}

GlCanvas::~GlCanvas() {
  QObject::disconnect(cleaning_);
  drawing_.end();
}

void GlCanvas::initializeGL() {
  QObject::disconnect(cleaning_);
  cleaning_ = connect(context(), &QOpenGLContext::aboutToBeDestroyed, this, [this] { drawing_.end(); });
  drawing_.start();
}

void GlCanvas::paintGL() {
  const double ratio = devicePixelRatioF();
  drawing_.draw({static_cast<int>(width() * ratio), static_cast<int>(height() * ratio)}, ratio,
                defaultFramebufferObject());
}

void GlCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  drawing_.actors().show(*scene, devicePixelRatioF());
  update();
}

void GlCanvas::show_view(const LimbView& view) {
  drawing_.actors().look(view);
  update();
}

void GlCanvas::show_background(const QColor& colour) {
  drawing_.actors().set_background(colour);
  update();
}

}  // namespace wrapgauge
