#include "model/geometry/planar_graph.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <optional>
#include <set>

namespace wrapgauge {
namespace {

// Points that are one when closer than the tolerance, found through square cells of that size.
class PointPool {
 public:
  explicit PointPool(double tolerance) : tolerance_(tolerance) {}

  int find_or_add(const Vec2& p) {
    const auto [cx, cy] = cell(p);
    for (std::int64_t x = cx - 1; x <= cx + 1; ++x)
      for (std::int64_t y = cy - 1; y <= cy + 1; ++y)
        if (const auto found = cells_.find({x, y}); found != cells_.end())
          for (const int i : found->second)
            if ((points_[i] - p).norm() <= tolerance_) return i;
    points_.push_back(p);
    const int index = static_cast<int>(points_.size()) - 1;
    cells_[{cx, cy}].push_back(index);
    return index;
  }
  const std::vector<Vec2>& points() const { return points_; }

 private:
  std::pair<std::int64_t, std::int64_t> cell(const Vec2& p) const {
    return {static_cast<std::int64_t>(std::floor(p.x() / tolerance_)),
            static_cast<std::int64_t>(std::floor(p.y() / tolerance_))};
  }
  double tolerance_;
  std::vector<Vec2> points_;
  std::map<std::pair<std::int64_t, std::int64_t>, std::vector<int>> cells_;
};

// Where two lines cross strictly inside both; touching ends are found later as points on lines.
std::optional<Vec2> crossing(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  const Vec2 ab = b - a, cd = d - c;
  const double denominator = cross(ab, cd);
  if (std::abs(denominator) <= 1e-12 * ab.norm() * cd.norm()) return std::nullopt;
  const double s = cross(c - a, cd) / denominator, t = cross(c - a, ab) / denominator;
  if (s <= 0.0 || s >= 1.0 || t <= 0.0 || t >= 1.0) return std::nullopt;
  return Vec2(a + s * ab);
}

// An end of one lies on the other, so that they meet there.
bool touch(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d, double tolerance) {
  return distance_to_segment_m(a, c, d) <= tolerance || distance_to_segment_m(b, c, d) <= tolerance ||
         distance_to_segment_m(c, a, b) <= tolerance || distance_to_segment_m(d, a, b) <= tolerance;
}

// Points of the pool on the line, its own ends first and last, in order along it.
std::vector<int> points_along(const std::vector<Vec2>& points, const std::vector<int>& by_x,
                              const Segment& line, double tolerance) {
  const Vec2 a = points[line[0]], b = points[line[1]];
  const Vec2 direction = (b - a).normalized();
  const double low = std::min(a.x(), b.x()) - tolerance, high = std::max(a.x(), b.x()) + tolerance;
  auto it =
      std::lower_bound(by_x.begin(), by_x.end(), low, [&](int i, double x) { return points[i].x() < x; });
  std::vector<std::pair<double, int>> on;
  for (; it != by_x.end() && points[*it].x() <= high; ++it) {
    const double along = (points[*it] - a).dot(direction);
    if (*it == line[0] || *it == line[1]) continue;
    if (along <= 0.0 || along >= (b - a).norm()) continue;
    if (distance_to_segment_m(points[*it], a, b) <= tolerance) on.emplace_back(along, *it);
  }
  std::sort(on.begin(), on.end());
  std::vector<int> chain{line[0]};
  for (const auto& [along, index] : on) chain.push_back(index);
  chain.push_back(line[1]);
  return chain;
}

}  // namespace

PlanarGraph noded_graph(const std::vector<std::pair<Vec2, Vec2>>& lines, double tolerance_m) {
  PointPool pool(tolerance_m);
  std::vector<Segment> drawn;
  for (const auto& [a, b] : lines) {
    const int i = pool.find_or_add(a), j = pool.find_or_add(b);
    if (i != j) drawn.push_back({i, j});
  }
  const std::vector<Vec2> ends = pool.points();
  for (std::size_t i = 0; i < drawn.size(); ++i)
    for (std::size_t j = i + 1; j < drawn.size(); ++j) {
      const Vec2 &a = ends[drawn[i][0]], &b = ends[drawn[i][1]], &c = ends[drawn[j][0]],
                 &d = ends[drawn[j][1]];
      if (boxes_apart(a, b, c, d)) continue;
      if (!touch(a, b, c, d, tolerance_m))
        if (const auto p = crossing(a, b, c, d)) pool.find_or_add(*p);
    }
  const std::vector<Vec2>& points = pool.points();
  std::vector<int> by_x(points.size());
  for (std::size_t i = 0; i < by_x.size(); ++i) by_x[i] = static_cast<int>(i);
  std::stable_sort(by_x.begin(), by_x.end(), [&](int i, int j) { return points[i].x() < points[j].x(); });
  std::set<Segment> unique;
  for (const Segment& line : drawn) {
    const std::vector<int> chain = points_along(points, by_x, line, tolerance_m);
    for (std::size_t k = 1; k < chain.size(); ++k)
      unique.insert({std::min(chain[k - 1], chain[k]), std::max(chain[k - 1], chain[k])});
  }
  return {points, {unique.begin(), unique.end()}};
}

}  // namespace wrapgauge
