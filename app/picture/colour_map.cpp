#include "app/picture/colour_map.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

// White point D65.
constexpr double kWhiteX = 0.95047, kWhiteZ = 1.08883;

double lab_inverse(double t) {
  constexpr double kDelta = 6.0 / 29.0;
  return t > kDelta ? t * t * t : 3.0 * kDelta * kDelta * (t - 4.0 / 29.0);
}

double encoded(double linear) {
  const double c = std::clamp(linear, 0.0, 1.0);
  return c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1.0 / 2.4) - 0.055;
}

double decoded(double c) {
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

QColor from_lab(double lightness, double a, double b) {
  const double fy = (lightness + 16.0) / 116.0;
  const double x = kWhiteX * lab_inverse(fy + a / 500.0), y = lab_inverse(fy);
  const double z = kWhiteZ * lab_inverse(fy - b / 200.0);
  return QColor::fromRgbF(static_cast<float>(encoded(3.2406 * x - 1.5372 * y - 0.4986 * z)),
                          static_cast<float>(encoded(-0.9689 * x + 1.8758 * y + 0.0415 * z)),
                          static_cast<float>(encoded(0.0557 * x - 0.2040 * y + 1.0570 * z)));
}

}  // namespace

double map_lightness(double share) {
  return 95.0 - 73.0 * std::clamp(share, 0.0, 1.0);
}

QColor map_colour(double share, bool dimmed) {
  const double t = std::clamp(share, 0.0, 1.0);
  const double chroma = 8.0 + 48.0 * std::sin(std::numbers::pi * std::pow(t, 0.8) * 0.75);
  const double hue = (300.0 + 15.0 * t) * std::numbers::pi / 180.0;
  const QColor colour = from_lab(map_lightness(t), chroma * std::cos(hue), chroma * std::sin(hue));
  if (!dimmed) return colour;
  const int grey = (4 * 215 + qGray(colour.rgb())) / 5;
  return {grey, grey, grey};
}

bool map_is_dark(double share) {
  return map_lightness(share) < 60.0;
}

QColor hatch_colour(bool on_dark) {
  return on_dark ? QColor(250, 250, 250) : QColor(25, 20, 30);
}

double lightness_of(const QColor& colour) {
  const double y =
      0.2126 * decoded(colour.redF()) + 0.7152 * decoded(colour.greenF()) + 0.0722 * decoded(colour.blueF());
  return y > 216.0 / 24389.0 ? 116.0 * std::cbrt(y) - 16.0 : y * 24389.0 / 27.0;
}

}  // namespace wrapgauge
