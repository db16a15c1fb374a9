#include "app/picture/raster.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "app/picture/colour_map.hpp"

namespace wrapgauge {
namespace {

constexpr int kSuper = 2;

QRgb shaded(QRgb colour, double shade) {
  const auto part = [&](int c) { return static_cast<int>(std::clamp(c * shade, 0.0, 255.0)); };
  return qRgb(part(qRed(colour)), part(qGreen(colour)), part(qBlue(colour)));
}

double doubled_area(const RasterPoint& a, const RasterPoint& b, double x, double y) {
  return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
}

RasterPoint super(const RasterPoint& p) {
  return {p.x * kSuper, p.y * kSuper, p.z};
}

struct PixelBox {
  int x0, y0, x1, y1;
};

PixelBox box_of(std::initializer_list<RasterPoint> points, double margin, int width, int height) {
  double x0 = 1e9, y0 = 1e9, x1 = -1e9, y1 = -1e9;
  for (const RasterPoint& p : points) {
    x0 = std::min(x0, p.x), x1 = std::max(x1, p.x);
    y0 = std::min(y0, p.y), y1 = std::max(y1, p.y);
  }
  const auto pixel = [](double v, int size) { return static_cast<int>(std::clamp(v, 0.0, size - 1.0)); };
  return {pixel(std::floor(x0 - margin), width), pixel(std::floor(y0 - margin), height),
          pixel(std::ceil(x1 + margin), width), pixel(std::ceil(y1 + margin), height)};
}

}  // namespace

Raster::Raster(int width, int height, double top_pressure, double pixel_ratio)
    : width_(width * kSuper),
      height_(height * kSuper),
      top_pressure_(top_pressure),
      pixel_ratio_(pixel_ratio),
      depth_(static_cast<std::size_t>(width_) * height_, -std::numeric_limits<float>::infinity()),
      pixels_(static_cast<std::size_t>(width_) * height_, qRgba(0, 0, 0, 0)) {
  for (int i = 0; i < 256; ++i) colours_[i] = map_colour(i / 255.0).rgb();
}

QRgb Raster::surface_colour(double pressure, double load, double shade, int x, int y) const {
  const int hatch_period = static_cast<int>(20.0 * pixel_ratio_),
            hatch_width = static_cast<int>(4.0 * pixel_ratio_);
  const double share = std::clamp(pressure / top_pressure_, 0.0, 1.0);
  // The mean over 1 cm2 may lie above a limit a little beside what touches.
  if (load > 1.0 && (x + y) % hatch_period < hatch_width) return hatch_colour(map_is_dark(share)).rgb();
  if (pressure <= 0.0) return shaded(kBareSkin.rgb(), shade);
  return shaded(colours_[static_cast<std::size_t>(std::lround(255.0 * share))], shade);
}

void Raster::triangle(const RasterVertex& a, const RasterVertex& b, const RasterVertex& c) {
  const RasterPoint pa = super(a.at), pb = super(b.at), pc = super(c.at);
  const double area = doubled_area(pa, pb, pc.x, pc.y);
  if (std::abs(area) < 1e-12) return;
  const PixelBox box = box_of({pa, pb, pc}, 0.0, width_, height_);
  for (int y = box.y0; y <= box.y1; ++y)
    for (int x = box.x0; x <= box.x1; ++x) {
      const double u = doubled_area(pb, pc, x + 0.5, y + 0.5) / area;
      const double v = doubled_area(pc, pa, x + 0.5, y + 0.5) / area;
      const double w = 1.0 - u - v;
      if (u < -1e-9 || v < -1e-9 || w < -1e-9) continue;
      const auto mix = [&](double ofa, double ofb, double ofc) { return u * ofa + v * ofb + w * ofc; };
      const auto at = static_cast<std::size_t>(y) * width_ + x;
      const auto depth = static_cast<float>(mix(pa.z, pb.z, pc.z));
      if (depth <= depth_[at]) continue;
      depth_[at] = depth;
      pixels_[at] = surface_colour(mix(a.pressure, b.pressure, c.pressure), mix(a.load, b.load, c.load),
                                   mix(a.shade, b.shade, c.shade), x, y);
    }
}

void Raster::line(const RasterPoint& from, const RasterPoint& to, double width, const QColor& colour,
                  double lift) {
  const RasterPoint a = super(from), b = super(to);
  const double dx = b.x - a.x, dy = b.y - a.y, length2 = dx * dx + dy * dy, half = 0.5 * width * kSuper;
  const PixelBox box = box_of({a, b}, half, width_, height_);
  for (int y = box.y0; y <= box.y1; ++y)
    for (int x = box.x0; x <= box.x1; ++x) {
      const double px = x + 0.5 - a.x, py = y + 0.5 - a.y;
      const double t = length2 > 0.0 ? std::clamp((px * dx + py * dy) / length2, 0.0, 1.0) : 0.0;
      if (std::hypot(px - t * dx, py - t * dy) > half) continue;
      const auto at = static_cast<std::size_t>(y) * width_ + x;
      if (a.z + t * (b.z - a.z) + lift < depth_[at]) continue;
      pixels_[at] = colour.rgb();
    }
}

bool Raster::visible(const RasterPoint& point, double lift) const {
  const RasterPoint p = super(point);
  if (p.x < 0.0 || p.y < 0.0 || p.x >= width_ || p.y >= height_) return false;
  return p.z + lift >= depth_[static_cast<std::size_t>(p.y) * width_ + static_cast<std::size_t>(p.x)];
}

QImage Raster::image() const {
  QImage image(width_ / kSuper, height_ / kSuper, QImage::Format_ARGB32_Premultiplied);
  for (int y = 0; y < image.height(); ++y) {
    auto* row = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < image.width(); ++x) {
      int sum[4] = {0, 0, 0, 0};
      for (int k = 0; k < kSuper * kSuper; ++k) {
        const auto at = static_cast<std::size_t>(y * kSuper + k / kSuper) * width_ + x * kSuper + k % kSuper;
        const QRgb pixel = pixels_[at];
        sum[0] += qRed(pixel), sum[1] += qGreen(pixel), sum[2] += qBlue(pixel), sum[3] += qAlpha(pixel);
      }
      constexpr int kCount = kSuper * kSuper;
      row[x] = qRgba(sum[0] / kCount, sum[1] / kCount, sum[2] / kCount, sum[3] / kCount);
    }
  }
  return image;
}

}  // namespace wrapgauge
