#include "model/layout/coarsened_lines.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <set>

namespace wrapgauge {
namespace {

constexpr double kFarthestFromChord = 0.05;  // of a left-out point, as a share of the longest chord
constexpr double kMostTurn = 40.0 * std::numbers::pi / 180.0;  // along one chord, and at one left-out point
constexpr double kLeastGap = 4.0;       // to another line, of how far its chord's points lie from it
constexpr double kLeastGapShare = 0.5;  // of the gap to another part of the same line that a chord must leave
constexpr std::size_t kMostSegments = 32;  // that one chord stands for: bounds the time of dense drawings

// Points one after the other, joined by segments; the last is the first again for a closed loop.
struct Run {
  std::vector<int> points;
  std::vector<int> segments;
};

class Coarsening {
 public:
  Coarsening(const LayoutLines& lines, double longest_m, const std::function<bool(const Vec2&)>& kept)
      : lines_(lines),
        points_(lines.graph.points_m),
        longest_(longest_m),
        segments_of_(points_.size()),
        run_of_(points_.size(), -1),
        by_x_(points_.size()) {
    std::iota(by_x_.begin(), by_x_.end(), 0);
    std::stable_sort(by_x_.begin(), by_x_.end(),
                     [&](int i, int j) { return points_[i].x() < points_[j].x(); });
    for (std::size_t s = 0; s < lines.graph.segments.size(); ++s)
      for (const int end : lines.graph.segments[s]) segments_of_[end].push_back(static_cast<int>(s));
    for (const Segment& s : lines.graph.segments) joined_.insert(std::minmax(s[0], s[1]));
    for (std::size_t i = 0; i < points_.size(); ++i) anchor_.push_back(!may_go(static_cast<int>(i), kept));
  }

  LayoutLines coarsened() {
    std::vector<bool> taken(lines_.graph.segments.size(), false);
    const auto take_run_from = [&](int point) {
      for (const int s : segments_of_[point])
        if (!taken[s]) {
          const Run run = run_from(point, s);
          for (const int t : run.segments) taken[t] = true;
          for (std::size_t i = 1; i + 1 < run.points.size(); ++i) run_of_[run.points[i]] = s;
          replace(run);
        }
    };
    for (std::size_t i = 0; i < points_.size(); ++i)
      if (anchor_[i]) take_run_from(static_cast<int>(i));
    for (std::size_t s = 0; s < taken.size(); ++s)  // what is left are loops without a fixed point
      if (!taken[s]) take_run_from(lowest_point_of_loop(static_cast<int>(s)));
    return used_points_only();
  }

 private:
  int other_end(int segment, int point) const {
    const Segment& s = lines_.graph.segments[segment];
    return s[0] == point ? s[1] : s[0];
  }

  double turn(int before, int at, int after) const {
    const Vec2 a = points_[at] - points_[before], b = points_[after] - points_[at];
    return std::abs(std::atan2(cross(a, b), a.dot(b)));
  }

  bool may_go(int point, const std::function<bool(const Vec2&)>& kept) const {
    const std::vector<int>& at = segments_of_[point];
    return at.size() == 2 && same_pair(lines_.sides[at[0]], lines_.sides[at[1]]) && !kept(points_[point]) &&
           turn(other_end(at[0], point), point, other_end(at[1], point)) <= kMostTurn &&
           std::max(length_m(at[0]), length_m(at[1])) <= longest_;
  }

  double length_m(int segment) const {
    const Segment& s = lines_.graph.segments[segment];
    return (points_[s[1]] - points_[s[0]]).norm();
  }

  Run run_from(int start, int segment) const {
    Run run{{start}, {}};
    for (int s = segment;;) {
      run.segments.push_back(s);
      const int next = other_end(s, run.points.back());
      run.points.push_back(next);
      if (anchor_[next] || next == start) return run;
      s = segments_of_[next][0] == s ? segments_of_[next][1] : segments_of_[next][0];
    }
  }

  int lowest_point_of_loop(int segment) const {
    const Run loop = run_from(lines_.graph.segments[segment][0], segment);
    return *std::min_element(loop.points.begin(), loop.points.end(), [&](int i, int j) {
      return std::pair(points_[i].x(), points_[i].y()) < std::pair(points_[j].x(), points_[j].y());
    });
  }

  // The chord from run.points[from] to [to] may stand for what lies between.
  bool fits(const Run& run, std::size_t from, std::size_t to) const {
    const int a = run.points[from], b = run.points[to];
    if (a == b || joined_.count(std::minmax(a, b))) return false;
    if ((points_[b] - points_[a]).norm() > longest_) return false;
    double turned = 0.0, farthest = 0.0;
    for (std::size_t i = from + 1; i < to; ++i) {
      turned += turn(run.points[i - 1], run.points[i], run.points[i + 1]);
      farthest = std::max(farthest, distance_to_segment_m(points_[run.points[i]], points_[a], points_[b]));
    }
    return turned <= kMostTurn && farthest <= kFarthestFromChord * longest_ &&
           leaves_others_alone(run, from, to, farthest);
  }

  // No other point lies between the chain and its chord. A line that crossed the chord would have to come out
  // again, and being straight it cannot cross the chord twice nor, lines having met at shared points alone,
  // the chain; so it would have to end in between. That keeps lines from crossing. The distance of two
  // lines is that of an end of one from the other, so looking at points also shows how near lines come.
  bool leaves_others_alone(const Run& run, std::size_t from, std::size_t to, double farthest_m) const {
    Polygon chain;
    for (std::size_t i = from; i <= to; ++i) chain.push_back(points_[run.points[i]]);
    const Bounds2 box = bounds(chain);
    const double reach = kLeastGap * farthest_m;
    const auto left_of = [&](int i, double x) { return points_[i].x() < x; };
    auto next = std::lower_bound(by_x_.begin(), by_x_.end(), box.low.x() - reach, left_of);
    for (; next != by_x_.end() && points_[*next].x() <= box.high.x() + reach; ++next) {
      const Vec2& p = points_[*next];
      if (p.y() < box.low.y() - reach || p.y() > box.high.y() + reach) continue;
      const auto first = run.points.begin() + static_cast<std::ptrdiff_t>(from);
      const auto last = run.points.begin() + static_cast<std::ptrdiff_t>(to) + 1;
      if (std::find(first, last, *next) != last) continue;
      const double from_chord = distance_to_segment_m(p, chain.front(), chain.back());
      const bool far = run_of_[*next] == run_of_[run.points[from + 1]]
                           ? from_chord >= kLeastGapShare * gap_m(chain, p)
                           : from_chord >= reach;
      if (!far || contains(chain, p)) return false;
    }
    return true;
  }

  static double gap_m(const Polygon& chain, const Vec2& p) {
    double gap = std::numeric_limits<double>::infinity();
    for (std::size_t k = 0; k + 1 < chain.size(); ++k)
      gap = std::min(gap, distance_to_segment_m(p, chain[k], chain[k + 1]));
    return gap;
  }

  // Where the chords that end at each point of the run may begin, the nearest first.
  std::vector<std::vector<std::size_t>> chords_of(const Run& run) const {
    std::vector<std::vector<std::size_t>> starts(run.points.size());
    for (std::size_t to = 1; to < run.points.size(); ++to)
      for (std::size_t from = to; from-- > 0 && to - from <= kMostSegments;)
        if (from + 1 == to || fits(run, from, to)) starts[to].push_back(from);
    return starts;
  }

  static std::size_t fewest_chords(const std::vector<std::vector<std::size_t>>& starts) {
    std::vector<std::size_t> fewest(starts.size(), 0);
    for (std::size_t to = 1; to < starts.size(); ++to) {
      fewest[to] = to;
      for (const std::size_t from : starts[to]) fewest[to] = std::min(fewest[to], fewest[from] + 1);
    }
    return fewest.back();
  }

  // Fewest chords; of those ways the one whose stops lie nearest to even ones along the run, so that a
  // symmetric run is split symmetrically where it can be.
  std::vector<std::size_t> best_split(const Run& run) const {
    const std::size_t count = run.points.size();
    const auto starts = chords_of(run);
    const std::size_t chords = fewest_chords(starts);
    std::vector<double> along(count, 0.0);
    for (std::size_t i = 1; i < count; ++i) along[i] = along[i - 1] + length_m(run.segments[i - 1]);
    constexpr double kNone = std::numeric_limits<double>::infinity();
    std::vector<double> off(count, kNone);  // sum of squares up to a stop, by so many chords
    off[0] = 0.0;
    std::vector<std::vector<std::size_t>> came_from(chords, std::vector<std::size_t>(count, 0));
    for (std::size_t k = 0; k < chords; ++k) {
      std::vector<double> next(count, kNone);
      const double even = along.back() * static_cast<double>(k + 1) / static_cast<double>(chords);
      for (std::size_t to = 1; to < count; ++to)
        for (const std::size_t from : starts[to]) {
          const double here = off[from] + (along[to] - even) * (along[to] - even);
          if (here < next[to]) next[to] = here, came_from[k][to] = from;
        }
      off = std::move(next);
    }
    std::vector<std::size_t> stops{count - 1};
    for (std::size_t k = chords; k-- > 0;) stops.push_back(came_from[k][stops.back()]);
    std::reverse(stops.begin(), stops.end());
    return stops;
  }

  void replace(const Run& run) {
    const std::vector<std::size_t> stops = best_split(run);
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
      const Segment chord{run.points[stops[i]], run.points[stops[i + 1]]};
      out_.graph.segments.push_back(chord);
      out_.sides.push_back(sides_along(run, stops[i]));
      joined_.insert(std::minmax(chord[0], chord[1]));
    }
  }

  // Of a segment of the run, seen along the run.
  RegionSides sides_along(const Run& run, std::size_t i) const {
    const auto& [left, right] = lines_.sides[run.segments[i]];
    const bool along = lines_.graph.segments[run.segments[i]][0] == run.points[i];
    return along ? RegionSides{left, right} : RegionSides{right, left};
  }

  LayoutLines used_points_only() {
    std::vector<int> renumbered(points_.size(), -1);
    for (const Segment& s : out_.graph.segments)
      for (const int end : s) renumbered[end] = 0;
    for (std::size_t i = 0; i < points_.size(); ++i) {
      if (renumbered[i] < 0) continue;
      renumbered[i] = static_cast<int>(out_.graph.points_m.size());
      out_.graph.points_m.push_back(points_[i]);
    }
    for (Segment& s : out_.graph.segments)
      for (int& end : s) end = renumbered[end];
    return std::move(out_);
  }

  const LayoutLines& lines_;
  const std::vector<Vec2>& points_;
  double longest_;
  std::vector<std::vector<int>> segments_of_;
  std::vector<bool> anchor_;              // points that stay
  std::vector<int> run_of_;               // of points that may go: a segment of their run; -1: not yet met
  std::vector<int> by_x_;                 // points from left to right
  std::set<std::pair<int, int>> joined_;  // pairs of points with a line between them
  LayoutLines out_;
};

}  // namespace

LayoutLines coarsened_lines(const LayoutLines& lines, double longest_m,
                            const std::function<bool(const Vec2&)>& kept) {
  return Coarsening(lines, longest_m, kept).coarsened();
}

}  // namespace wrapgauge
