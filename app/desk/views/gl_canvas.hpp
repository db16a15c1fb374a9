#pragma once
// A body drawn by VTK inside a Qt widget.

#include <QMetaObject>
#include <QOpenGLWidget>
#include <memory>

#include "app/desk/views/body_canvas.hpp"

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
  struct Pipeline;
  void clean_up();
  void make_current_for_vtk();

  std::unique_ptr<Pipeline> vtk_;
  QMetaObject::Connection cleaning_;
};

}  // namespace wrapgauge
