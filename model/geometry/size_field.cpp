#include "model/geometry/size_field.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {
constexpr int kMostColumns = 600;  // keeps the grid small for a large layout with fine seams
}

SizeField::SizeField(const Bounds2& box, double largest_m, double growth,
                     const std::vector<SizeSource>& sources)
    : low_(box.low), largest_(largest_m), smallest_(largest_m) {
  for (const SizeSource& s : sources) smallest_ = std::min(smallest_, s.size_m);
  const Vec2 extent = box.high - box.low;
  spacing_ = std::max(0.5 * smallest_, extent.maxCoeff() / kMostColumns);
  columns_ = static_cast<int>(std::ceil(extent.x() / spacing_)) + 2;
  rows_ = static_cast<int>(std::ceil(extent.y() / spacing_)) + 2;
  sizes_.assign(static_cast<std::size_t>(columns_) * rows_, largest_m);
  for (const SizeSource& s : sources) {
    // Farther than this the source changes nothing.
    const double reach = s.band_m + (largest_m - s.size_m) / growth + spacing_;
    const Vec2 from = (s.a.cwiseMin(s.b) - low_).array() - reach,
               to = (s.a.cwiseMax(s.b) - low_).array() + reach;
    const int x0 = std::max(0, static_cast<int>(from.x() / spacing_));
    const int y0 = std::max(0, static_cast<int>(from.y() / spacing_));
    const int x1 = std::min(columns_ - 1, static_cast<int>(to.x() / spacing_));
    const int y1 = std::min(rows_ - 1, static_cast<int>(to.y() / spacing_));
    for (int y = y0; y <= y1; ++y)
      for (int x = x0; x <= x1; ++x) {
        const double distance = distance_to_segment_m(low_ + spacing_ * Vec2(x, y), s.a, s.b);
        double& size = sizes_[static_cast<std::size_t>(y) * columns_ + x];
        size = std::min(size, s.size_m + growth * std::max(0.0, distance - s.band_m));
      }
  }
}

double SizeField::at(const Vec2& point) const {
  const double u = std::clamp((point.x() - low_.x()) / spacing_, 0.0, columns_ - 1.001);
  const double v = std::clamp((point.y() - low_.y()) / spacing_, 0.0, rows_ - 1.001);
  const int x = static_cast<int>(u), y = static_cast<int>(v);
  const double fx = u - x, fy = v - y;
  const double* row = &sizes_[static_cast<std::size_t>(y) * columns_ + x];
  return (1 - fy) * ((1 - fx) * row[0] + fx * row[1]) +
         fy * ((1 - fx) * row[columns_] + fx * row[columns_ + 1]);
}

}  // namespace wrapgauge
