#pragma once
// A body drawn by OpenGL into memory and painted like any other widget. Where OpenGL is software, a widget of
// its own kind would have the whole window put together by it at every blink of a cursor, 30 ms each time.

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFramebufferObject>

#include "app/desk/views/body_canvas.hpp"
#include "app/desk/views/vtk_drawing.hpp"

namespace wrapgauge {

// Only where why_no_graphics() is empty.
class MemoryCanvas : public QWidget, public BodyCanvas {
 public:
  explicit MemoryCanvas(QWidget* parent);
  ~MemoryCanvas() override;

  QWidget* widget() override { return this; }
  void show_scene(std::shared_ptr<const BodyScene> scene) override;
  void show_view(const LimbView& view) override;
  void show_background(const QColor& colour) override;
  QImage picture() override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void make_current();
  void begin();
  QImage drawn();
  void redraw();

  QOpenGLContext context_;
  QOffscreenSurface surface_;
  std::unique_ptr<QOpenGLFramebufferObject> frame_;
  VtkDrawing drawing_;
  bool begun_ = false;
  QImage shown_;  // null: to be drawn
};

}  // namespace wrapgauge
