#include "model/layout/corner_move.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace wrapgauge {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
// Judgement: a curve drawn as a polygon turns by less at a point, and its edges are of about one length.
constexpr double kMostPointTurn = 50.0 * kDegree, kLonger = 1.6;
constexpr double kLeastBend = 15.0 * kDegree, kMostBend = 150.0 * kDegree;

// One point, or the points of a rounding; `at_m` is where the edges beside it meet.
struct Corner {
  std::size_t first = 0, count = 1;
  Vec2 at_m = Vec2::Zero();
};

class Ring {
 public:
  explicit Ring(const Polygon& loop) : loop_(loop) {}
  std::size_t size() const { return loop_.size(); }
  const Vec2& point(std::size_t i) const { return loop_[i % size()]; }
  Vec2 edge(std::size_t i) const { return point(i + 1) - point(i); }  // from point i on
  double turn(std::size_t i) const {
    const Vec2 before = edge(i + size() - 1), after = edge(i);
    return std::atan2(cross(before, after), before.dot(after));
  }
  bool is_straight(std::size_t i) const {
    return edge(i).norm() > kLonger * std::min(edge(i + size() - 1).norm(), edge(i + 1).norm());
  }

 private:
  const Polygon& loop_;
};

// Where the edge before `first` and the one after `last` meet if both go on.
std::optional<Vec2> meeting_m(const Ring& ring, std::size_t first, std::size_t last) {
  const Vec2 in = ring.edge(first + ring.size() - 1).normalized(), out = ring.edge(last).normalized();
  const double sine = cross(in, out);
  if (std::abs(sine) < 1e-9) return std::nullopt;
  const Vec2 across = ring.point(last) - ring.point(first);
  const double ahead = cross(across, out) / sine;
  if (ahead <= 0.0 || cross(in, across) / sine <= 0.0) return std::nullopt;
  return Vec2(ring.point(first) + ahead * in);
}

// The rounding that begins at `first`, the end of a straight edge; none if there is no such.
std::optional<Corner> rounding_from(const Ring& ring, std::size_t first) {
  std::size_t last = first;
  while (!ring.is_straight(last) && last - first < ring.size()) ++last;
  if (last - first < 2 || last - first >= ring.size()) return std::nullopt;
  double bend = 0.0;
  for (std::size_t i = first; i <= last; ++i) {
    const double turn = ring.turn(i);
    if (std::abs(turn) > kMostPointTurn || turn * ring.turn(first + 1) < 0.0) return std::nullopt;
    bend += std::abs(turn);
  }
  if (bend < kLeastBend || bend > kMostBend) return std::nullopt;
  const auto meeting = meeting_m(ring, first, last);
  if (!meeting) return std::nullopt;
  return Corner{first, last - first + 1, *meeting};
}

// In order round the loop; empty without a straight edge to begin at.
std::vector<Corner> corners_of(const Ring& ring) {
  std::size_t start = 0;
  while (start < ring.size() && !ring.is_straight(start)) ++start;
  if (start == ring.size()) return {};
  std::vector<Corner> corners;
  for (std::size_t i = start + 1; i <= start + ring.size();) {
    const bool after_straight = ring.is_straight(i + ring.size() - 1);
    const auto rounding = after_straight ? rounding_from(ring, i) : std::nullopt;
    corners.push_back(rounding.value_or(Corner{i, 1, ring.point(i)}));
    i += corners.back().count;
  }
  return corners;
}

double first_leg_m(const Ring& ring, const Corner& corner) {
  return (ring.point(corner.first) - corner.at_m).norm();
}
double last_leg_m(const Ring& ring, const Corner& corner) {
  return (ring.point(corner.first + corner.count - 1) - corner.at_m).norm();
}

// The part of an edge of length `edge_m` that two roundings wanting this much of it may each have.
double share(double edge_m, double wanted_m) {
  return wanted_m > edge_m ? 0.99 * edge_m / wanted_m : 1.0;
}

// The points of corner `k` where it and its neighbours lie `now_m`: the rounding in the frame of its two
// edges is carried to the frame of the edges as they are now, so it touches them as before.
void draw_corner(const Ring& ring, const std::vector<Corner>& corners, const std::vector<Vec2>& now_m,
                 std::size_t k, Polygon& loop) {
  const std::size_t before = (k + corners.size() - 1) % corners.size(), after = (k + 1) % corners.size();
  const Corner& corner = corners[k];
  if (corner.count == 1) {
    loop[corner.first % loop.size()] = now_m[k];
    return;
  }
  const Vec2 in = now_m[before] - now_m[k], out = now_m[after] - now_m[k];
  const double in_leg = first_leg_m(ring, corner), out_leg = last_leg_m(ring, corner);
  const Vec2 was_in = ring.point(corner.first) - corner.at_m,
             was_out = ring.point(corner.first + corner.count - 1) - corner.at_m;
  const Vec2 is_in = in.normalized() * in_leg * share(in.norm(), in_leg + last_leg_m(ring, corners[before]));
  const Vec2 is_out =
      out.normalized() * out_leg * share(out.norm(), out_leg + first_leg_m(ring, corners[after]));
  for (std::size_t i = corner.first; i < corner.first + corner.count; ++i) {
    const Vec2 at = ring.point(i) - corner.at_m;
    loop[i % loop.size()] =
        now_m[k] + (cross(at, was_out) * is_in + cross(was_in, at) * is_out) / cross(was_in, was_out);
  }
}

}  // namespace

Polygon with_corner_moved(Polygon loop, std::size_t point, const Vec2& by_m) {
  const Polygon before = loop;
  const Ring ring(before);
  const std::vector<Corner> corners = ring.size() < 3 ? std::vector<Corner>{} : corners_of(ring);
  const auto holds_point = [&](const Corner& corner) {
    return (point + ring.size() - corner.first % ring.size()) % ring.size() < corner.count;
  };
  const auto moved = std::find_if(corners.begin(), corners.end(), holds_point);
  if (corners.size() < 3 || moved == corners.end()) {
    loop[point] += by_m;
    return loop;
  }
  const auto k = static_cast<std::size_t>(moved - corners.begin());
  std::vector<Vec2> now_m;
  for (const Corner& corner : corners) now_m.push_back(corner.at_m);
  now_m[k] += by_m;
  const std::size_t count = corners.size();
  for (const std::size_t drawn : {(k + count - 1) % count, k, (k + 1) % count})
    draw_corner(ring, corners, now_m, drawn, loop);
  return loop;
}

}  // namespace wrapgauge
