#pragma once
// A body drawn by the graphics system inside a Qt widget.

#include <QMetaObject>
#include <QOpenGLWidget>

#include "app/desk/views/body_canvas.hpp"
#include "app/desk/views/vtk_drawing.hpp"

namespace wrapgauge {

// Only where why_no_graphics() is empty.
class GlCanvas : public QOpenGLWidget, public BodyCanvas {
 public:
  explicit GlCanvas(QWidget* parent);
  ~GlCanvas() override;

  QWidget* widget() override { return this; }
  void show_scene(std::shared_ptr<const BodyScene> scene) override;
  void show_view(const LimbView& view) override;
  void show_background(const QColor& colour) override;
  QImage picture() override { return grabFramebuffer(); }

 protected:
  void initializeGL() override;
  void paintGL() override;

 private:
  VtkDrawing drawing_;
  QMetaObject::Connection cleaning_;
};

}  // namespace wrapgauge
