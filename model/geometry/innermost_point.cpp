#include "model/geometry/innermost_point.hpp"

#include <algorithm>
#include <numbers>
#include <queue>

namespace wrapgauge {
namespace {

// A square that may hold the point, and how deep any point of it can lie.
struct Square {
  Vec2 centre_m = Vec2::Zero();
  double half_m = 0.0, depth_m = 0.0;

  Square(const Polygon& polygon, const Vec2& centre, double half) : centre_m(centre), half_m(half) {
    const double away = distance_to_loop_m(polygon, centre);
    depth_m = contains(polygon, centre) ? away : -away;
  }
  double most_m() const { return depth_m + std::numbers::sqrt2 * half_m; }
  bool operator<(const Square& other) const { return most_m() < other.most_m(); }
};

}  // namespace

// Squares are cut in four, the most promising first, until none can hold a point that is notably deeper; a
// thread thinner than the smallest square keeps the middle of its box.
Vec2 innermost_point_m(const Polygon& polygon) {
  if (polygon.size() < 3) return Vec2::Zero();
  constexpr double kNear = 0.01, kSmallest = 5e-4;  // of the longer side
  const Bounds2 box = bounds(polygon);
  const double longest_m = (box.high - box.low).maxCoeff();
  Square best(polygon, 0.5 * (box.low + box.high), 0.5 * longest_m);
  const auto to_beat_m = [&] { return best.depth_m + (best.depth_m > 0.0 ? kNear * longest_m : 0.0); };
  std::priority_queue<Square> open;
  open.push(best);
  while (!open.empty() && open.top().most_m() > std::max(0.0, to_beat_m())) {
    const Square square = open.top();
    open.pop();
    const double half_m = 0.5 * square.half_m;
    if (half_m < kSmallest * longest_m) continue;
    for (const double x : {-half_m, half_m})
      for (const double y : {-half_m, half_m}) {
        const Square quarter(polygon, square.centre_m + Vec2(x, y), half_m);
        if (quarter.depth_m > to_beat_m()) best = quarter;
        open.push(quarter);
      }
  }
  return best.centre_m;
}

}  // namespace wrapgauge
