#pragma once
#include "app/desk/views/painted_canvas.hpp"

namespace wrapgauge {

// Draws with the software picture of the command line: the same everywhere, without a graphics system.
class RasterCanvas : public PaintedCanvas {
 public:
  using PaintedCanvas::PaintedCanvas;

 private:
  QImage drawn() override;
};

}  // namespace wrapgauge
