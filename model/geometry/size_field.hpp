#pragma once
// The wanted edge length at each place of a flat mesh.

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// A line beside which edges are to be short.
struct SizeSource {
  Vec2 a, b;
  double size_m;  // wanted edge length within `band_m` of the line
  double band_m;
};

// Wanted length = smallest over the sources of size + growth x (distance - band), and never above
// `largest_m`. Kept on a square grid and interpolated, so reading it is quick.
class SizeField {
 public:
  SizeField(const Bounds2& box, double largest_m, double growth, const std::vector<SizeSource>& sources);
  double at(const Vec2& point) const;
  double smallest_m() const { return smallest_; }

 private:
  Vec2 low_;
  double spacing_, largest_, smallest_;
  int columns_ = 1, rows_ = 1;
  std::vector<double> sizes_;
};

}  // namespace wrapgauge
