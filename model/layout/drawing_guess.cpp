#include "model/layout/drawing_guess.hpp"

#include <algorithm>
#include <cmath>

#include "model/geometry/polygon_checks.hpp"
#include "model/layout/drawn_shape_forms.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostLoops = 2000, kMostPoints = 20000;
constexpr double kLargestDot = 2.5e-3;  // m, radius of an inlet's mark (judgement)
constexpr double kNear = 2e-3;          // m: a line that ends this close to a part means it (judgement)
constexpr std::size_t kFewestSpots = 3;

// A closed path with what encloses it.
struct Loop {
  std::size_t shape;
  const Polygon* points_m;
  Bounds2 box;
  std::vector<std::size_t> around;  // loops
};

bool box_within(const Bounds2& inner, const Bounds2& outer) {
  return (inner.low.array() >= outer.low.array()).all() && (inner.high.array() <= outer.high.array()).all();
}

class Guess {
 public:
  Guess(const Drawing& drawing, std::vector<DrawnAs>& parts) : drawing_(drawing), parts_(parts) {
    for (const DrawnAs& as : parts)
      if (as.part && (!as.alone || *as.part == DrawnPart::kOutline))
        said_[static_cast<std::size_t>(*as.part)] = true;
  }

  void guess() {
    if (!gather_loops()) return;
    find_outline();
    if (!outline_) return;
    guess_dots();
    find_surroundings();  // without the dots
    guess_closed();
    guess_spots();
    guess_lines();
  }

 private:
  bool is_said(DrawnPart part) const { return said_[static_cast<std::size_t>(part)]; }

  void take(std::size_t shape, DrawnPart part, Phrase why) {
    if (is_said(part)) return;
    parts_[shape].part = part;
    parts_[shape].why = std::move(why);
    parts_[shape].guessed = true;
  }

  bool usable(std::size_t shape) const {
    const DrawnShape& s = drawing_.shapes[shape];
    return s.fault.empty() && all_closed(s) && !crossing_of(s);
  }

  // Chambers and what lies in or round them; what is left out, or lies on top, encloses nothing.
  bool may_enclose(std::size_t shape) const {
    const auto part = parts_[shape].part;
    return !part || *part == DrawnPart::kOutline || *part == DrawnPart::kChamber ||
           *part == DrawnPart::kInsetSeam;
  }

  // False: there is too much to look through.
  bool gather_loops() {
    std::size_t points = 0;
    for (std::size_t i = 0; i < drawing_.shapes.size(); ++i) {
      if (!may_enclose(i)) continue;
      for (const DrawnPath& path : drawing_.shapes[i].paths) points += path.points_m.size();
      if (points > kMostPoints) return false;
      if (!usable(i)) continue;
      for (const DrawnPath& path : drawing_.shapes[i].paths)
        loops_.push_back({i, &path.points_m, bounds(path.points_m), {}});
    }
    if (loops_.size() > kMostLoops) return false;
    find_surroundings();
    return true;
  }

  bool encloses(const Loop& outer, const Loop& inner) const {
    return &outer != &inner && may_enclose(outer.shape) && box_within(inner.box, outer.box) &&
           contains(*outer.points_m, inner.points_m->front());
  }

  void find_surroundings() {
    for (Loop& inner : loops_) {
      inner.around.clear();
      for (std::size_t k = 0; k < loops_.size(); ++k)
        if (encloses(loops_[k], inner)) inner.around.push_back(k);
    }
  }

  // The said outline, else the one loop that lies in no other and encloses one of another shape.
  void find_outline() {
    for (std::size_t k = 0; k < loops_.size() && is_said(DrawnPart::kOutline); ++k)
      if (parts_[loops_[k].shape].part == DrawnPart::kOutline) outline_ = k;
    if (is_said(DrawnPart::kOutline)) return;
    for (const Loop& inner : loops_)
      for (const std::size_t k : inner.around)
        if (loops_[k].around.empty() && !parts_[loops_[k].shape].part && loops_[k].shape != inner.shape) {
          if (outline_ && *outline_ != k) return outline_.reset();  // two such: nothing is guessed
          outline_ = k;
        }
    if (outline_) take(loops_[*outline_].shape, DrawnPart::kOutline, Phrase::worded("encloses the others"));
  }

  bool lies_in_outline(const Vec2& point) const { return contains(*loops_[*outline_].points_m, point); }

  std::optional<DrawnCircle> circle_of(std::size_t shape) const {
    const DrawnShape& s = drawing_.shapes[shape];
    if (s.circle || s.paths.size() != 1) return s.circle;
    return as_circle(s.paths[0]);
  }

  void guess_dots() {
    if (is_said(DrawnPart::kInlet)) return;
    for (std::size_t i = 0; i < drawing_.shapes.size(); ++i) {
      const DrawnShape& s = drawing_.shapes[i];
      if (parts_[i].part || !s.fault.empty() || s.paths.size() != 1) continue;
      const auto circle = circle_of(i);
      const bool point = s.paths[0].points_m.size() == 1;
      if ((point || (circle && circle->radius_m <= kLargestDot)) && lies_in_outline(middle_m(s)))
        take(i, DrawnPart::kInlet, point ? Phrase::worded("a point") : Phrase::worded("a small circle"));
    }
  }

  // How deep a loop lies below the outline; none: outside it.
  std::optional<std::size_t> depth_of(const Loop& loop) const {
    if (std::find(loop.around.begin(), loop.around.end(), *outline_) == loop.around.end())
      return std::nullopt;
    return loop.around.size();
  }

  void guess_closed() {
    for (const Loop& loop : loops_) {
      const auto depth = depth_of(loop);
      if (parts_[loop.shape].part || !depth) continue;
      const DrawnShape& shape = drawing_.shapes[loop.shape];
      if (*depth % 2 == 1)
        take(loop.shape, DrawnPart::kChamber,
             *depth == 1 ? Phrase::worded("closed, inside the outline") : Phrase::worded("inside a hole"));
      else if (shape.paths.size() == 1 && (circle_of(loop.shape) || as_strip(shape.paths[0])))
        take(loop.shape, DrawnPart::kInsetSeam, Phrase::worded("inside a chamber"));
    }
  }

  // The innermost chamber at a point or within reach of it.
  std::optional<std::size_t> chamber_near(const Vec2& point, double reach) const {
    std::optional<std::size_t> found;
    std::size_t depth = 0;
    for (const Loop& loop : loops_) {
      if (parts_[loop.shape].part != DrawnPart::kChamber) continue;
      if (!contains(*loop.points_m, point) && distance_to_loop_m(*loop.points_m, point) > reach) continue;
      if (found && loop.around.size() < depth) continue;
      found = loop.shape;
      depth = loop.around.size();
    }
    return found;
  }

  // Circles that were taken for inlets but come in numbers.
  void guess_spots() {
    if (is_said(DrawnPart::kInsetSeam)) return;
    struct Spot {
      std::size_t shape;
      std::optional<std::size_t> chamber;
      double radius_m;
    };
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (const auto circle =
              parts_[i].guessed && parts_[i].part == DrawnPart::kInlet ? circle_of(i) : std::nullopt)
        spots.push_back({i, chamber_near(circle->centre_m, 0.0), circle->radius_m});
    for (const Spot& one : spots) {
      const auto alike = std::count_if(spots.begin(), spots.end(), [&](const Spot& other) {
        return other.chamber == one.chamber && std::abs(other.radius_m - one.radius_m) < 1e-6;
      });
      if (one.chamber && static_cast<std::size_t>(alike) >= kFewestSpots)
        take(one.shape, DrawnPart::kInsetSeam, Phrase::worded("one of several circles alike in a chamber"));
    }
  }

  bool ends_at_inlet(const Vec2& point) const {
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (parts_[i].part == DrawnPart::kInlet && !drawing_.shapes[i].paths.empty() &&
          (middle_m(drawing_.shapes[i]) - point).norm() <= kNear)
        return true;
    return false;
  }

  void guess_lines() {
    for (std::size_t i = 0; i < drawing_.shapes.size(); ++i) {
      const DrawnShape& shape = drawing_.shapes[i];
      if (parts_[i].part || !shape.fault.empty() || shape.paths.size() != 1) continue;
      const DrawnPath& path = shape.paths[0];
      if (path.closed || path.points_m.size() < 2) continue;
      const Vec2 &from = path.points_m.front(), &to = path.points_m.back();
      const auto one = chamber_near(from, kNear), other = chamber_near(to, kNear);
      if (one && other && *one == *other)
        take(i, DrawnPart::kInsetSeam, Phrase::worded("a line inside a chamber"));
      else if ((one || ends_at_inlet(from)) && (other || ends_at_inlet(to)))
        take(i, DrawnPart::kChannel, Phrase::worded("a line from part to part"));
    }
  }

  const Drawing& drawing_;
  std::vector<DrawnAs>& parts_;
  std::array<bool, 7> said_{};
  std::vector<Loop> loops_;
  std::optional<std::size_t> outline_;  // loop
};

}  // namespace

void guess_parts(const Drawing& drawing, std::vector<DrawnAs>& parts) {
  Guess(drawing, parts).guess();
}

}  // namespace wrapgauge
