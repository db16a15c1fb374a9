#include "bodyforms/section.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

double radius_at(const std::array<double, 5>& h, double angle) {
  return 1.0 + h[0] * std::sin(2.0 * angle) + h[1] * std::cos(3.0 * angle) + h[2] * std::sin(3.0 * angle) +
         h[3] * std::cos(4.0 * angle) + h[4] * std::sin(4.0 * angle);
}

}  // namespace

std::vector<Vec2> section_outline(const Section& section, int count) {
  std::vector<Vec2> outline;
  Vec2 low = Vec2::Zero(), high = Vec2::Zero();
  for (int i = 0; i < count; ++i) {
    const double angle = kTurn * i / count;
    outline.push_back(radius_at(section.harmonics, angle) * Vec2(std::cos(angle), std::sin(angle)));
    low = low.cwiseMin(outline.back());
    high = high.cwiseMax(outline.back());
  }
  const Vec2 size = high - low;
  for (Vec2& point : outline) point.x() *= section.aspect * size.y() / size.x();
  return outline;
}

std::vector<Vec2> evenly_spaced(const std::vector<Vec2>& outline, int count, double shift) {
  const std::size_t sides = outline.size();
  std::vector<double> arc(sides + 1, 0.0);
  for (std::size_t i = 0; i < sides; ++i)
    arc[i + 1] = arc[i] + (outline[(i + 1) % sides] - outline[i]).norm();
  std::vector<Vec2> points;
  std::size_t side = 0;
  for (int k = 0; k < count; ++k) {
    const double wanted = arc.back() * (k + shift) / count;
    while (side + 1 < sides && arc[side + 1] < wanted) ++side;
    const double share = (wanted - arc[side]) / (arc[side + 1] - arc[side]);
    points.push_back(outline[side] + share * (outline[(side + 1) % sides] - outline[side]));
  }
  return points;
}

double perimeter_of(const std::vector<Vec2>& outline) {
  double sum = 0.0;
  for (std::size_t i = 0; i < outline.size(); ++i)
    sum += (outline[(i + 1) % outline.size()] - outline[i]).norm();
  return sum;
}

}  // namespace wrapgauge
