#pragma once
// A body drawn by OpenGL into memory and painted like any other widget. Where OpenGL is software, a widget of
// its own kind would have the whole window put together by it at every blink of a cursor, 30 ms each time.

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFramebufferObject>

#include "app/desk/views/painted_canvas.hpp"
#include "app/desk/views/vtk_drawing.hpp"

namespace wrapgauge {

// Only where why_no_graphics() is empty.
class MemoryCanvas : public PaintedCanvas {
 public:
  explicit MemoryCanvas(QWidget* parent);
  ~MemoryCanvas() override;

 private:
  QImage drawn() override;
  void make_current();
  void begin();

  QOpenGLContext context_;  // valid once begun
  QOffscreenSurface surface_;
  std::unique_ptr<QOpenGLFramebufferObject> frame_;
  VtkDrawing drawing_;
};

}  // namespace wrapgauge
