#pragma once
// Nearest points of a set of points: the nearest, the few nearest, or all within a reach.

#include <memory>
#include <optional>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

struct FoundPoint {
  int index = 0;            // row of the point
  double distance_m = 0.0;  // from the place that was asked for, >= 0
};

// A tree over the points. Building takes O(n log n), a query about a microsecond. Queries are const and may
// run from any number of threads. Copies share the tree. Exact: what is found, and in which order, is what
// measuring the distance to every point would give, so that the answer never depends on the tree.
class NearestAmongPoints {
 public:
  // Every coordinate is finite. The points are copied; there may be none.
  explicit NearestAmongPoints(const Points3& points_m);

  // Of equally near points the one with the lowest index; none when there is no point.
  std::optional<FoundPoint> nearest(const Vec3& place_m) const;
  // The `count` nearest, nearest first, equally near ones by index; all when there are fewer.
  std::vector<FoundPoint> nearest(const Vec3& place_m, int count) const;
  // Every point whose distance is at most `reach_m` >= 0, by index, so that sums over them have one order.
  std::vector<FoundPoint> within(const Vec3& place_m, double reach_m) const;

 private:
  struct Tree;
  std::shared_ptr<const Tree> tree_;
};

}  // namespace wrapgauge
