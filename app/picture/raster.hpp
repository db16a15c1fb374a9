#pragma once
// A small z-buffer rasteriser with 2 x 2 supersampling: no display, no graphics driver, the same bytes
// everywhere.

#include <QColor>
#include <QImage>
#include <array>
#include <vector>

namespace wrapgauge {

// Picture pixels, x right, y down; z grows towards the eye, in pixels too.
struct RasterPoint {
  double x = 0.0, y = 0.0, z = 0.0;
};
struct RasterVertex {
  RasterPoint at;
  double shade = 1.0;     // 0 dark .. 1 lit
  double pressure = 0.0;  // <= 0: bare skin
  double load = 0.0;      // share of the limit of that place: above 1 is hatched
};

inline constexpr double kLineLift = 3.0;  // pixels: lines on the skin are not hidden by it

class Raster {
 public:
  // `top_pressure`: the pressure of the darkest colour. `pixel_ratio`: of a screen; hatch and limit are as
  // much wider.
  Raster(int width, int height, double top_pressure, double pixel_ratio = 1.0);

  double pixel_ratio() const { return pixel_ratio_; }

  void triangle(const RasterVertex& a, const RasterVertex& b, const RasterVertex& c);
  // Drawn where it lies no deeper than `lift` pixels behind what is there already.
  void line(const RasterPoint& from, const RasterPoint& to, double width, const QColor& colour, double lift);
  // Whether nothing drawn lies in front of the point by more than `lift` pixels.
  bool visible(const RasterPoint& point, double lift) const;

  QImage image() const;  // transparent where nothing was drawn

 private:
  QRgb surface_colour(double pressure, double load, double shade, int x, int y) const;

  int width_, height_;  // of the supersampled picture
  double top_pressure_, pixel_ratio_;
  std::vector<float> depth_;
  std::vector<QRgb> pixels_;
  std::array<QRgb, 256> colours_;
};

}  // namespace wrapgauge
