#pragma once
#include <QImage>
#include <memory>

#include "app/desk/views/body_frame.hpp"

namespace wrapgauge {

// Draws a body by VTK into memory, by the graphics card or in software. Only where why_no_graphics() is
// empty: elsewhere VTK would end the program. What was drawn before is kept for the next frames.
class VtkDrawing {
 public:
  VtkDrawing();
  ~VtkDrawing();

  QImage picture(const BodyFrame& frame);

 private:
  struct Pipeline;
  std::unique_ptr<Pipeline> vtk_;
};

}  // namespace wrapgauge
