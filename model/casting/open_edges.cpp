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

bool weld_between(const LayoutShapes& shapes, const ClosestPlaces& gap) {
  for (const double share : {0.25, 0.5, 0.75})
    if (!weld_at(region_at(shapes, gap.on_first + share * (gap.on_second - gap.on_first)))) return false;
  return true;
}

bool is_detour(double way_m, double straight_m, double least_m) {
  return way_m >= std::max(kDetour * straight_m, least_m);
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

std::optional<ClosestPlaces> narrowest_neck(const Polygon& loop, double least_m) {
  Polygon fine;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 &from = loop[i], &to = loop[(i + 1) % loop.size()];
    const int count = std::max(1, static_cast<int>(std::ceil((to - from).norm() / piece_m(least_m))));
    for (int k = 0; k < count; ++k) fine.emplace_back(from + static_cast<double>(k) / count * (to - from));
  }
  // Length and twice the area from the first point on.
  std::vector<double> way{0.0}, swept{0.0};
  for (std::size_t i = 0; i < fine.size(); ++i) {
    const Vec2 &from = fine[i], &to = fine[(i + 1) % fine.size()];
    way.push_back(way.back() + (to - from).norm());
    swept.push_back(swept.back() + cross(from, to));
  }
  PieceGrid grid(least_m + piece_m(least_m));
  const auto end_of = [&](std::size_t i) { return fine[(i + 1) % fine.size()]; };
  for (std::size_t i = 0; i < fine.size(); ++i) grid.add(0.5 * (fine[i] + end_of(i)), static_cast<int>(i));
  const double inwards = swept.back() > 0.0 ? 1.0 : -1.0;
  const auto inside_of = [&](std::size_t i) { return Vec2(inwards * to_the_left(end_of(i) - fine[i])); };
  const double room_m2 = 0.25 * std::numbers::pi * least_m * least_m;
  std::optional<ClosestPlaces> best;
  for (std::size_t i = 0; i < fine.size(); ++i)
    grid.visit_near(0.5 * (fine[i] + end_of(i)), [&](int other) {
      const auto j = static_cast<std::size_t>(other);
      if (j <= i) return;
      const ClosestPlaces gap = between_segments(fine[i], end_of(i), fine[j], end_of(j));
      if (!falls_short(gap.distance_m, least_m) || (best && best->distance_m <= gap.distance_m)) return;
      if (!leaves_both(gap, inside_of(i), inside_of(j))) return;
      const double between = way[j] - way[i], round = way.back() - between;
      if (!is_detour(std::min(between, round), gap.distance_m, least_m)) return;
      const double cut = 0.5 * std::abs(swept[j] - swept[i] + cross(fine[j], fine[i]));
      const double all = 0.5 * std::abs(swept.back());
      if (std::min(cut, all - cut) < room_m2) return;
      if (contains(loop, 0.5 * (gap.on_first + gap.on_second))) best = gap;
    });
  return best;
}

}  // namespace wrapgauge
