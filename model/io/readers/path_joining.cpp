#include "model/io/readers/path_joining.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include "model/core/number_text.hpp"
#include "model/io/readers/path_trace.hpp"

namespace wrapgauge {
namespace {

// End 2 i is the start of shape i, end 2 i + 1 its far end.
using End = std::size_t;
constexpr End kNone = static_cast<End>(-1);

bool joinable(const DrawnShape& shape) {
  return shape.fault.empty() && shape.paths.size() == 1 && !shape.paths[0].closed &&
         shape.paths[0].points_m.size() > 1;
}

const Vec2& place(const Drawing& drawing, End end) {
  const Polyline& points = drawing.shapes[end / 2].paths[0].points_m;
  return end % 2 == 0 ? points.front() : points.back();
}

// Ends by small cells of the plane, for each layer and colour on its own.
class EndFinder {
 public:
  EndFinder(const Drawing& drawing, double tolerance) : drawing_(drawing), tolerance_(tolerance) {
    std::map<std::pair<std::string, std::string>, long long> kinds;
    for (const DrawnShape& shape : drawing.shapes) {
      const std::pair key(shape.groups.empty() ? "" : shape.groups.front(), shape.stroke);
      kind_.push_back(kinds.emplace(key, static_cast<long long>(kinds.size())).first->second);
    }
    for (std::size_t i = 0; i < drawing.shapes.size(); ++i)
      if (joinable(drawing.shapes[i]))
        for (const End end : {2 * i, 2 * i + 1}) cells_[cell_of(end, 0, 0)].push_back(end);
  }

  // The one other end that meets this one; none when there is no other. `crowd`: there are several.
  End partner(End end, bool& crowd) const {
    End found = kNone;
    for (int dx = -2; dx <= 2; ++dx)
      for (int dy = -2; dy <= 2; ++dy) {
        const auto cell = cells_.find(cell_of(end, dx, dy));
        if (cell == cells_.end()) continue;
        // All ends of a cell meet one another, so a few of them show a crowd.
        for (std::size_t i = 0; i < std::min<std::size_t>(cell->second.size(), 4); ++i) {
          const End other = cell->second[i];
          if (other == end || (place(drawing_, other) - place(drawing_, end)).norm() > tolerance_) continue;
          crowd = crowd || found != kNone;
          if (crowd) return kNone;
          found = other;
        }
      }
    return found;
  }

 private:
  using Cell = std::array<long long, 3>;
  Cell cell_of(End end, int dx, int dy) const {
    const Vec2 p = place(drawing_, end) / (0.5 * tolerance_);
    return {kind_[end / 2], static_cast<long long>(std::floor(p.x())) + dx,
            static_cast<long long>(std::floor(p.y())) + dy};
  }

  const Drawing& drawing_;
  double tolerance_;
  std::vector<long long> kind_;
  std::map<Cell, std::vector<End>> cells_;
};

// Adds `next` to the end of `chain`; their ends meet in the middle.
void append(DrawnPath& chain, const DrawnPath& next) {
  const Vec2 from = chain.points_m.back(), to = next.points_m.front();
  chain.swept_m2 += 0.5 * (from.x() * to.y() - from.y() * to.x()) + next.swept_m2;
  chain.length_m += (to - from).norm() + next.length_m;
  chain.points_m.back() = 0.5 * (from + to);
  chain.points_m.insert(chain.points_m.end(), next.points_m.begin() + 1, next.points_m.end());
}

void close(DrawnPath& path) {
  const Vec2 from = path.points_m.back(), to = path.points_m.front();
  if (path.points_m.size() < 4) return;
  path.swept_m2 += 0.5 * (from.x() * to.y() - from.y() * to.x());
  path.length_m += (to - from).norm();
  path.points_m.front() = 0.5 * (from + to);
  path.points_m.pop_back();
  path.closed = true;
}

class Joiner {
 public:
  Joiner(Drawing& drawing, double tolerance)
      : drawing_(drawing), partner_(2 * drawing.shapes.size(), kNone), used_(drawing.shapes.size(), false) {
    const EndFinder finder(drawing, tolerance);
    for (std::size_t i = 0; i < drawing.shapes.size(); ++i) {
      if (!joinable(drawing.shapes[i])) continue;
      for (const End end : {2 * i, 2 * i + 1}) {
        bool crowd = false;
        partner_[end] = finder.partner(end, crowd);
        if (crowd) crowded_.push_back(place(drawing, end));
      }
    }
    for (End end = 0; end < partner_.size(); ++end)  // both must choose one another
      if (partner_[end] != kNone && partner_[partner_[end]] != end) partner_[end] = kNone;
  }

  std::vector<DrawnShape> joined() {
    std::vector<DrawnShape> out;
    for (std::size_t i = 0; i < drawing_.shapes.size(); ++i)
      if (!used_[i])
        out.push_back(joinable(drawing_.shapes[i]) ? chain_of(i) : std::move(drawing_.shapes[i]));
    return out;
  }

  const std::vector<Vec2>& crowded_m() const { return crowded_; }

 private:
  // The end where the chain that holds this piece starts; its own start when the chain is a ring.
  End chain_start(std::size_t piece) const {
    End end = 2 * piece;
    while (partner_[end] != kNone && partner_[end] / 2 != piece) end = partner_[end] ^ 1;
    return partner_[end] == kNone ? end : 2 * piece;
  }

  DrawnShape chain_of(std::size_t piece) {
    DrawnShape shape = drawing_.shapes[piece];
    const End start = chain_start(piece);
    int pieces = 0;
    End end = start;
    for (;;) {
      used_[end / 2] = true;
      const DrawnPath& path = drawing_.shapes[end / 2].paths[0];
      DrawnPath next = end % 2 == 0 ? path : reversed(path);
      if (pieces++ == 0)
        shape.paths[0] = std::move(next);
      else
        append(shape.paths[0], next);
      const End onwards = partner_[end ^ 1];
      if (onwards == start) close(shape.paths[0]);
      if (onwards == kNone || used_[onwards / 2]) break;
      end = onwards;
    }
    if (pieces > 1) shape.kind = std::to_string(pieces) + " joined lines";
    return shape;
  }

  Drawing& drawing_;
  std::vector<End> partner_;
  std::vector<bool> used_;
  std::vector<Vec2> crowded_;
};

// A drawing program that exports a loop as one path of many pieces: each piece on its own can be joined.
void part_open_paths(Drawing& drawing) {
  std::vector<DrawnShape> out;
  for (DrawnShape& shape : drawing.shapes) {
    const bool open = shape.paths.size() > 1 && std::none_of(shape.paths.begin(), shape.paths.end(),
                                                             [](const DrawnPath& p) { return p.closed; });
    if (!open) {
      out.push_back(std::move(shape));
      continue;
    }
    for (DrawnPath& path : shape.paths) {
      DrawnShape piece = shape;
      piece.paths = {std::move(path)};
      out.push_back(std::move(piece));
    }
  }
  drawing.shapes = std::move(out);
}

// Farthest that a point of one line lies from the other line.
double farthest_m(const DrawnPath& from, const DrawnPath& to) {
  double farthest = 0.0;
  for (const Vec2& p : from.points_m) {
    double nearest = std::numeric_limits<double>::infinity();
    const std::size_t sides = to.points_m.size() - (to.closed ? 0 : 1);
    for (std::size_t i = 0; i < sides; ++i)
      nearest = std::min(nearest,
                         distance_to_segment_m(p, to.points_m[i], to.points_m[(i + 1) % to.points_m.size()]));
    farthest = std::max(farthest, nearest);
  }
  return farthest;
}

bool one_upon_the_other(const DrawnShape& a, const DrawnShape& b, double tolerance) {
  const DrawnPath &one = a.paths[0], &other = b.paths[0];
  if (one.closed != other.closed || std::abs(one.length_m - other.length_m) > 4.0 * tolerance) return false;
  const Bounds2 box = bounds(one.points_m), its_box = bounds(other.points_m);
  if (((box.low - its_box.low).cwiseAbs().array() > tolerance).any() ||
      ((box.high - its_box.high).cwiseAbs().array() > tolerance).any())
    return false;
  return farthest_m(one, other) <= tolerance && farthest_m(other, one) <= tolerance;
}

// Lines with their left ends, in order of these; doubles are neighbours there, or nearly so.
std::vector<std::pair<double, std::size_t>> lines_in_order(const Drawing& drawing, double tolerance) {
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i) {
    const DrawnShape& shape = drawing.shapes[i];
    // Shorter pieces of a fine curve lie as near to one another as doubles do.
    if (shape.fault.empty() && shape.paths.size() == 1 && shape.paths[0].points_m.size() > 1 &&
        shape.paths[0].length_m > 10.0 * tolerance)
      order.emplace_back(bounds(shape.paths[0].points_m).low.x(), i);
  }
  std::sort(order.begin(), order.end());
  return order;
}

void drop_doubles(Drawing& drawing, double tolerance) {
  constexpr std::size_t kMostLooks = 5'000'000;
  const auto order = lines_in_order(drawing, tolerance);
  std::vector<bool> doubled(drawing.shapes.size(), false);
  std::size_t looks = 0;
  for (std::size_t a = 0; a < order.size(); ++a)
    for (std::size_t b = a + 1; b < order.size() && ++looks < kMostLooks; ++b) {
      const auto [left, first] = order[a];
      const auto [its_left, second] = order[b];
      if (its_left - left > tolerance) break;
      if (doubled[first] || doubled[second]) continue;
      const DrawnShape &one = drawing.shapes[first], &other = drawing.shapes[second];
      if (one.groups != other.groups || one.names != other.names || one.name != other.name) continue;
      if (one_upon_the_other(one, other, tolerance)) doubled[std::max(first, second)] = true;
    }
  const auto count = std::count(doubled.begin(), doubled.end(), true);
  if (count == 0) return;
  const auto first = std::find(doubled.begin(), doubled.end(), true) - doubled.begin();
  const std::vector<Phrase> figures{figures_of(static_cast<int>(count)),
                                    figures_of(drawing.shapes[static_cast<std::size_t>(first)].line)};
  drawing.notes.push_back(
      {count == 1
           ? Phrase::worded("%1 line is drawn twice, one upon the other (at line %2 of the file): read once.",
                            figures)
           : Phrase::worded(
                 "%1 lines are drawn twice, one upon the other (first at line %2 of the file): read once.",
                 figures)});
  std::vector<DrawnShape> out;
  for (std::size_t i = 0; i < doubled.size(); ++i)
    if (!doubled[i]) out.push_back(std::move(drawing.shapes[i]));
  drawing.shapes = std::move(out);
}

}  // namespace

void join_paths(Drawing& drawing, Length tolerance) {
  if (!(tolerance.si() > 0.0)) return;
  part_open_paths(drawing);
  drop_doubles(drawing, tolerance.si());
  // Ends that truly coincide first, so that a short piece's two ends are not taken for one another.
  constexpr double kSame = 1e-6;  // m
  std::vector<Vec2> crowded_m;
  for (const double within : {std::min(kSame, tolerance.si()), tolerance.si()}) {
    Joiner joiner(drawing, within);
    drawing.shapes = joiner.joined();
    crowded_m = joiner.crowded_m();
  }
  if (crowded_m.empty()) return;
  const Vec2& p = crowded_m.front();
  drawing.notes.push_back(
      {Phrase::worded("%1 line ends meet more than one other end, first at (%2, %3) mm; nothing was joined "
                      "there: remove what is drawn twice or does not belong to the line.",
                      {figures_of(static_cast<int>(crowded_m.size())),
                       figures_of(fixed_text(p.x() / 1e-3, 2)), figures_of(fixed_text(p.y() / 1e-3, 2))})});
}

}  // namespace wrapgauge
