#include "app/desk/views/body_canvas.hpp"

#include "app/desk/views/gl_canvas.hpp"
#include "app/desk/views/gl_probe.hpp"
#include "app/desk/views/memory_canvas.hpp"
#include "app/desk/views/raster_canvas.hpp"
#include "app/picture/colour_map.hpp"

namespace wrapgauge {

BodyCanvas* make_body_canvas(QWidget* parent, QString& why_software) {
  why_software = why_no_graphics();
  if (!why_software.isEmpty()) return new RasterCanvas(parent);
  if (graphics_are_software()) return new MemoryCanvas(parent);
  return new GlCanvas(parent);
}

QColor surface_colour(double share, bool dimmed) {
  const QColor colour = map_colour(share);
  if (!dimmed) return colour;
  const int grey = (4 * 215 + qGray(colour.rgb())) / 5;
  return {grey, grey, grey};
}

}  // namespace wrapgauge
