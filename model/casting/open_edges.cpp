#include "model/casting/open_edges.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <queue>

#include "model/casting/casting_words.hpp"
#include "model/layout/layout_lines.hpp"

namespace wrapgauge {
namespace {

// Edges are compared piece by piece; the gaps themselves are exact.
double piece_m(double least_m) {
  return std::max(1e-3, least_m / 6.0);
}

constexpr double kDetour = 3.0;  // way along the edges over the straight one, from which edges are apart

LayoutShapes without_insets(const LayoutShapes& shapes) {
  LayoutShapes without = shapes;
  for (auto& chamber : without.chambers)
    std::erase_if(chamber.insets_m, [&](const Polygon& inset) { return !holds_chamber(shapes, inset); });
  return without;
}

bool open_at(const std::optional<FlatRegion>& side) {
  return side && is_open(*side);
}
bool weld_at(const std::optional<FlatRegion>& side) {
  return side && side->kind == RegionKind::kWeld;
}

ClosestPlaces between_segments(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  ClosestPlaces best{std::numeric_limits<double>::infinity(), a, c};
  const auto on = [](const Vec2& p, const Vec2& from, const Vec2& to) {
    const double length2 = (to - from).squaredNorm();
    const double share = length2 > 0.0 ? std::clamp((p - from).dot(to - from) / length2, 0.0, 1.0) : 0.0;
    return Vec2(from + share * (to - from));
  };
  const auto consider = [&](const Vec2& p, const Vec2& q) {
    if ((p - q).norm() < best.distance_m) best = {(p - q).norm(), p, q};
  };
  for (const Vec2& p : {a, b}) consider(p, on(p, c, d));
  for (const Vec2& q : {c, d}) consider(on(q, a, b), q);
  return best;
}

// Whether a gap leaves both edges on their sides that it is measured on, given as directions of unit length.
// Along a wall, past a mouth in it, it does not.
bool leaves_both(const ClosestPlaces& gap, const Vec2& from_first, const Vec2& from_second) {
  constexpr double kLeast = 0.1;  // sine of 6 degrees
  const Vec2 across = gap.on_second - gap.on_first;
  return across.dot(from_first) >= kLeast * gap.distance_m &&
         -across.dot(from_second) >= kLeast * gap.distance_m;
}

Vec2 to_the_left(const Vec2& along) {
  return Vec2(-along.y(), along.x()).normalized();
}

// Pieces by the square that their middle lies in.
class PieceGrid {
 public:
  explicit PieceGrid(double cell_m) : cell_m_(cell_m) {}
  void add(const Vec2& middle, int piece) { cells_[cell(middle)].push_back(piece); }
  // Those with a middle within one square's width, and some beyond.
  template <class Visit>
  void visit_near(const Vec2& middle, const Visit& visit) const {
    const auto [x, y] = cell(middle);
    for (int dx = -1; dx <= 1; ++dx)
      for (int dy = -1; dy <= 1; ++dy)
        if (const auto found = cells_.find({x + dx, y + dy}); found != cells_.end())
          for (const int piece : found->second) visit(piece);
  }

 private:
  std::pair<int, int> cell(const Vec2& p) const {
    return {static_cast<int>(std::floor(p.x() / cell_m_)), static_cast<int>(std::floor(p.y() / cell_m_))};
  }
  double cell_m_;
  std::map<std::pair<int, int>, std::vector<int>> cells_;
};

// The edges of welds in short pieces, and how far it is from one to another along them.
class WeldEdges {
 public:
  struct Piece {
    Segment ends;
    std::optional<FlatRegion> open;  // none: the outline
    int part;                        // chambers, then channels, then the outline
    Vec2 into_weld;
  };

  WeldEdges(const LayoutShapes& shapes, double piece_m) : piece_m_(piece_m) {
    const LayoutLines lines = layout_lines(shapes, std::nullopt);
    points_m_ = lines.graph.points_m;
    for (std::size_t s = 0; s < lines.sides.size(); ++s) {
      const auto& [left, right] = lines.sides[s];
      if (!weld_at(left) && !weld_at(right)) continue;
      const auto& beyond = weld_at(left) ? right : left;
      const auto [from, to] = lines.graph.segments[s];
      const Vec2 normal = to_the_left(at(to) - at(from));
      add_edge({from, to}, open_at(beyond) ? beyond : std::nullopt, weld_at(left) ? normal : Vec2(-normal),
               shapes);
    }
    ways_.resize(points_m_.size());
    for (const Piece& piece : pieces_) {
      const double length = (at(piece.ends[0]) - at(piece.ends[1])).norm();
      for (const int k : {0, 1}) ways_[piece.ends[k]].emplace_back(piece.ends[1 - k], length);
    }
    way_.assign(points_m_.size(), kFar);
  }

  const std::vector<Piece>& pieces() const { return pieces_; }
  const Vec2& at(int point) const { return points_m_[point]; }
  Vec2 middle(int piece) const { return 0.5 * (at(pieces_[piece].ends[0]) + at(pieces_[piece].ends[1])); }

  // Prepares way_to: ways from a piece's middle, as far as `most_m`.
  void start_at(int piece, double most_m) {
    for (const int point : reached_) way_[point] = kFar;
    reached_.clear();
    using Step = std::pair<double, int>;
    std::priority_queue<Step, std::vector<Step>, std::greater<>> next;
    const auto reach = [&](double way, int point) {
      if (way >= way_[point] || way > most_m) return;
      if (way_[point] == kFar) reached_.push_back(point);
      way_[point] = way;
      next.emplace(way, point);
    };
    for (const int end : pieces_[piece].ends) reach((middle(piece) - at(end)).norm(), end);
    while (!next.empty()) {
      const auto [way, point] = next.top();
      next.pop();
      if (way > way_[point]) continue;
      for (const auto& [other, length] : ways_[point]) reach(way + length, other);
    }
  }
  double way_to(int piece) const {
    const auto [a, b] = pieces_[piece].ends;
    return std::min(way_[a], way_[b]) + 0.5 * (at(a) - at(b)).norm();
  }

 private:
  static constexpr double kFar = std::numeric_limits<double>::infinity();

  void add_edge(const Segment& ends, const std::optional<FlatRegion>& open, const Vec2& into_weld,
                const LayoutShapes& shapes) {
    const auto chambers = static_cast<int>(shapes.chambers.size());
    const int part = !open                                ? std::numeric_limits<int>::max()
                     : open->kind == RegionKind::kChamber ? open->part
                                                          : chambers + open->part;
    const Vec2 from = at(ends[0]), to = at(ends[1]);
    const int count = std::max(1, static_cast<int>(std::ceil((to - from).norm() / piece_m_)));
    int last = ends[0];
    for (int k = 1; k <= count; ++k) {
      int end = ends[1];
      if (k < count) {
        end = static_cast<int>(points_m_.size());
        points_m_.emplace_back(from + static_cast<double>(k) / count * (to - from));
      }
      pieces_.push_back({{last, end}, open, part, into_weld});
      last = end;
    }
  }

  double piece_m_;
  std::vector<Vec2> points_m_;
  std::vector<Piece> pieces_;
  std::vector<std::vector<std::pair<int, double>>> ways_;
  std::vector<double> way_;
  std::vector<int> reached_;
};

bool is_detour(double way_m, double straight_m, double least_m) {
  return way_m >= std::max(kDetour * straight_m, least_m);
}

// A loop's edges in short pieces, with length and twice the area from its first point on.
class LoopPieces {
 public:
  LoopPieces(const Polygon& loop, double piece_m) : loop_(loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const Vec2 &from = loop[i], &to = loop[(i + 1) % loop.size()];
      const int count = std::max(1, static_cast<int>(std::ceil((to - from).norm() / piece_m)));
      for (int k = 0; k < count; ++k)
        points_m_.emplace_back(from + static_cast<double>(k) / count * (to - from));
    }
    for (int i = 0; i < count(); ++i) {
      way_.push_back(way_.back() + (end(i) - start(i)).norm());
      swept_.push_back(swept_.back() + cross(start(i), end(i)));
    }
  }

  int count() const { return static_cast<int>(points_m_.size()); }
  Vec2 middle(int i) const { return 0.5 * (start(i) + end(i)); }
  ClosestPlaces gap(int i, int j) const { return between_segments(start(i), end(i), start(j), end(j)); }

  // Whether a gap inside the loop parts it in two, with room on either side as of a circle `least_m` wide.
  bool is_neck(int i, int j, const ClosestPlaces& gap, double least_m) const {
    if (!leaves_both(gap, inside_of(i), inside_of(j))) return false;
    const double between = way_[j] - way_[i], round = way_.back() - between;
    if (!is_detour(std::min(between, round), gap.distance_m, least_m)) return false;
    const double cut = 0.5 * std::abs(swept_[j] - swept_[i] + cross(start(j), start(i)));
    const double room_m2 = 0.25 * std::numbers::pi * least_m * least_m;
    if (std::min(cut, 0.5 * std::abs(swept_.back()) - cut) < room_m2) return false;
    return contains(loop_, 0.5 * (gap.on_first + gap.on_second));
  }

 private:
  const Vec2& start(int i) const { return points_m_[i]; }
  const Vec2& end(int i) const { return points_m_[(i + 1) % count()]; }
  Vec2 inside_of(int i) const { return (swept_.back() > 0.0 ? 1.0 : -1.0) * to_the_left(end(i) - start(i)); }

  const Polygon& loop_;
  std::vector<Vec2> points_m_;
  std::vector<double> way_{0.0}, swept_{0.0};
};

// Pairs of pieces across a neck. Those of one neck lie next to each other, on both its sides.
class NeckPairs {
 public:
  explicit NeckPairs(int count) : count_(count) {}
  void add(int i, int j, const ClosestPlaces& gap) { pairs_.emplace(std::pair(i, j), gap); }

  // Narrowest neck first.
  std::vector<ClosestPlaces> narrowest_of_each() {
    std::vector<ClosestPlaces> necks;
    while (!pairs_.empty()) necks.push_back(take_neck_of(pairs_.begin()->first));
    std::ranges::stable_sort(necks, {}, &ClosestPlaces::distance_m);
    return necks;
  }

 private:
  ClosestPlaces take_neck_of(const std::pair<int, int>& first) {
    constexpr int kNear = 2;  // pieces; a corner may leave one out
    ClosestPlaces narrowest = pairs_.at(first);
    std::vector<std::pair<int, int>> next{first};
    pairs_.erase(first);
    while (!next.empty()) {
      const auto [i, j] = next.back();
      next.pop_back();
      for (int di = -kNear; di <= kNear; ++di)
        for (int dj = -kNear; dj <= kNear; ++dj) {
          const int a = (i + di + count_) % count_, b = (j + dj + count_) % count_;
          const auto found = pairs_.find(std::minmax({a, b}));
          if (found == pairs_.end()) continue;
          if (found->second.distance_m < narrowest.distance_m) narrowest = found->second;
          next.push_back(found->first);
          pairs_.erase(found);
        }
    }
    return narrowest;
  }

  int count_;
  std::map<std::pair<int, int>, ClosestPlaces> pairs_;
};

bool weld_between(const LayoutShapes& shapes, const ClosestPlaces& gap) {
  for (const double share : {0.25, 0.5, 0.75})
    if (!weld_at(region_at(shapes, gap.on_first + share * (gap.on_second - gap.on_first)))) return false;
  return true;
}

}  // namespace

bool holds_chamber(const LayoutShapes& shapes, const Polygon& inset) {
  return std::any_of(shapes.chambers.begin(), shapes.chambers.end(),
                     [&](const auto& chamber) { return contains(inset, chamber.boundary_m.front()); });
}

std::vector<Polygon> open_outlines(const LayoutShapes& shapes) {
  const LayoutLines lines = layout_lines(without_insets(shapes), std::nullopt);
  std::map<int, std::vector<int>> from;  // ends of the edges that start at a point
  for (std::size_t s = 0; s < lines.sides.size(); ++s) {
    const auto [a, b] = lines.graph.segments[s];
    const bool left = open_at(lines.sides[s][0]), right = open_at(lines.sides[s][1]);
    if (left != right) from[left ? a : b].push_back(left ? b : a);
  }
  std::vector<Polygon> loops;
  for (auto& [start, ends] : from)
    while (!ends.empty()) {
      Polygon loop;
      for (int point = start;;) {
        loop.push_back(lines.graph.points_m[point]);
        std::vector<int>& next = from[point];
        point = next.back();
        next.pop_back();
        if (point == start) break;
      }
      loops.push_back(std::move(loop));
    }
  return loops;
}

std::vector<Weld> narrow_welds(const LayoutShapes& all_shapes, double least_m,
                               const std::function<bool(const Weld&)>& counts) {
  const LayoutShapes shapes = without_insets(all_shapes);
  WeldEdges edges(shapes, piece_m(least_m));
  PieceGrid grid(least_m + piece_m(least_m));
  const auto count = static_cast<int>(edges.pieces().size());
  for (int i = 0; i < count; ++i) grid.add(edges.middle(i), i);
  std::map<std::pair<int, int>, Weld> narrowest;
  for (int i = 0; i < count; ++i) {
    const WeldEdges::Piece& one = edges.pieces()[i];
    bool started = false;
    grid.visit_near(edges.middle(i), [&](int j) {
      const WeldEdges::Piece& other = edges.pieces()[j];
      if (j == i || other.part < one.part || (other.part == one.part && (j < i || !one.open))) return;
      const ClosestPlaces gap = between_segments(edges.at(one.ends[0]), edges.at(one.ends[1]),
                                                 edges.at(other.ends[0]), edges.at(other.ends[1]));
      const auto known = narrowest.find({one.part, other.part});
      if (!falls_short(gap.distance_m, least_m) ||
          (known != narrowest.end() && known->second.gap.distance_m <= gap.distance_m) ||
          !leaves_both(gap, one.into_weld, other.into_weld))
        return;
      if (!started) edges.start_at(i, kDetour * least_m);
      started = true;
      const Weld weld{one.open, other.open, gap};
      if (!is_detour(edges.way_to(j), gap.distance_m, least_m) || !weld_between(shapes, gap) || !counts(weld))
        return;
      narrowest.insert_or_assign({one.part, other.part}, weld);
    });
  }
  std::vector<Weld> welds;
  for (auto& [parts, weld] : narrowest) welds.push_back(std::move(weld));
  return welds;
}

std::vector<ClosestPlaces> narrow_necks(const Polygon& loop, double least_m) {
  const LoopPieces pieces(loop, piece_m(least_m));
  PieceGrid grid(least_m + piece_m(least_m));
  for (int i = 0; i < pieces.count(); ++i) grid.add(pieces.middle(i), i);
  NeckPairs pairs(pieces.count());
  for (int i = 0; i < pieces.count(); ++i)
    grid.visit_near(pieces.middle(i), [&](int j) {
      if (j <= i) return;
      const ClosestPlaces gap = pieces.gap(i, j);
      if (falls_short(gap.distance_m, least_m) && pieces.is_neck(i, j, gap, least_m)) pairs.add(i, j, gap);
    });
  return pairs.narrowest_of_each();
}

}  // namespace wrapgauge
