#pragma once
// VTK's part of a canvas, in an OpenGL context that Qt owns.

#include <QSize>
#include <functional>
#include <memory>

#include "app/desk/views/scene_actors.hpp"

class QOpenGLContext;

namespace wrapgauge {

class VtkDrawing {
 public:
  // `context`: the canvas's, null before there is one. `make_current`: makes it current; VTK asks for it in
  // the middle of a frame, too.
  VtkDrawing(std::function<QOpenGLContext*()> context, std::function<void()> make_current);
  ~VtkDrawing();

  SceneActors& actors();
  // The context is new and current.
  void start();
  // Before the context goes. Does nothing when it was not started.
  void end();
  // Into a framebuffer of the current context.
  void draw(const QSize& pixels, double pixel_ratio, unsigned framebuffer);

 private:
  struct Pipeline;
  bool is_current() const;
  void make_current_for_vtk();

  std::function<QOpenGLContext*()> context_;
  std::function<void()> make_current_;
  std::unique_ptr<Pipeline> vtk_;
};

}  // namespace wrapgauge
