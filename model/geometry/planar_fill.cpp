#include "model/geometry/planar_fill.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <numbers>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {
namespace {

// Shares of the wanted edge length, found by trial on cuffs: closer packing gives a mean edge nearer the
// wanted one, looser packing fewer points and worse angles.
constexpr double kClosestPoint = 0.78;
constexpr double kClosestLine = 0.6;
constexpr double kApexHeight = 0.866;  // of an equilateral triangle

// Square cells that hold point indices, for neighbours within a radius.
class PointGrid {
 public:
  PointGrid(const Bounds2& box, double cell) : low_(box.low), cell_(cell) {
    columns_ = static_cast<int>((box.high - box.low).x() / cell) + 1;
    rows_ = static_cast<int>((box.high - box.low).y() / cell) + 1;
    cells_.resize(static_cast<std::size_t>(columns_) * rows_);
  }
  void add(const Vec2& p, int index) {
    cells_[static_cast<std::size_t>(row(p.y())) * columns_ + column(p.x())].push_back(index);
  }
  template <class Visit>
  bool any_near(const Vec2& p, double radius, const Visit& visit) const {
    for (int y = row(p.y() - radius); y <= row(p.y() + radius); ++y)
      for (int x = column(p.x() - radius); x <= column(p.x() + radius); ++x)
        for (const int i : cells_[static_cast<std::size_t>(y) * columns_ + x])
          if (visit(i)) return true;
    return false;
  }

 private:
  int column(double x) const { return std::clamp(static_cast<int>((x - low_.x()) / cell_), 0, columns_ - 1); }
  int row(double y) const { return std::clamp(static_cast<int>((y - low_.y()) / cell_), 0, rows_ - 1); }
  Vec2 low_;
  double cell_;
  int columns_, rows_;
  std::vector<std::vector<int>> cells_;
};

// The front: points whose surroundings are still to be filled.
class Front {
 public:
  Front(PlanarGraph& graph, const SizeField& size, const std::function<bool(const Vec2&)>& inside)
      : graph_(graph),
        size_(size),
        inside_(inside),
        grid_(bounds(graph.points_m), std::max(size.smallest_m(), 1e-9)),
        lines_of_point_(graph.points_m.size()) {
    for (std::size_t i = 0; i < graph.points_m.size(); ++i) grid_.add(graph.points_m[i], static_cast<int>(i));
    for (const Segment& s : graph.segments)
      for (const int end : s) lines_of_point_[end].push_back(s);
  }

  void run() {
    const std::size_t segments = graph_.segments.size();
    for (std::size_t i = 0; i < segments; ++i) start_from(graph_.segments[i]);
    while (!open_.empty()) {
      const auto [from, direction] = open_.front();
      open_.pop_front();
      for (int k = 0; k < 6; ++k) propose(from, direction + k * std::numbers::pi / 3.0);
    }
  }

 private:
  struct Open {
    Vec2 from;
    double direction;
  };

  void start_from(const Segment& s) {
    const Vec2 a = graph_.points_m[s[0]], b = graph_.points_m[s[1]];
    const Vec2 middle = 0.5 * (a + b), normal = Vec2(a.y() - b.y(), b.x() - a.x()).normalized();
    for (const double side : {1.0, -1.0}) {
      const Vec2 apex = middle + side * kApexHeight * size_.at(middle) * normal;
      accept(apex, std::atan2(side * normal.y(), side * normal.x()) + std::numbers::pi / 6.0);
    }
  }

  void propose(const Vec2& from, double angle) {
    const Vec2 direction(std::cos(angle), std::sin(angle));
    const double here = size_.at(from);
    accept(from + 0.5 * (here + size_.at(from + here * direction)) * direction, angle);
  }

  void accept(const Vec2& p, double direction) {
    const double wanted = size_.at(p);
    const bool crowded = grid_.any_near(p, 1.5 * wanted, [&](int i) { return too_near(p, i, wanted); });
    if (crowded || !inside_(p)) return;
    grid_.add(p, static_cast<int>(graph_.points_m.size()));
    graph_.points_m.push_back(p);
    open_.push_back({p, direction});
  }

  bool too_near(const Vec2& p, int i, double wanted) const {
    if ((graph_.points_m[i] - p).norm() < kClosestPoint * wanted) return true;
    if (static_cast<std::size_t>(i) >= lines_of_point_.size()) return false;
    for (const Segment& s : lines_of_point_[i])
      if (distance_to_segment_m(p, graph_.points_m[s[0]], graph_.points_m[s[1]]) < kClosestLine * wanted)
        return true;
    return false;
  }

  PlanarGraph& graph_;
  const SizeField& size_;
  const std::function<bool(const Vec2&)>& inside_;
  PointGrid grid_;
  std::vector<std::vector<Segment>> lines_of_point_;
  std::deque<Open> open_;
};

// Each free point's wanted place: the middles of its triangles, weighted so that a well graded mesh stays.
std::vector<Vec2> wanted_places(const PlanarTriangulation& mesh, const SizeField& size) {
  std::vector<Vec2> sum(mesh.points_m.size(), Vec2::Zero());
  std::vector<double> weight(mesh.points_m.size(), 0.0);
  for (const auto& t : mesh.triangles) {
    const Vec2 &a = mesh.points_m[t[0]], &b = mesh.points_m[t[1]], &c = mesh.points_m[t[2]];
    const Vec2 middle = (a + b + c) / 3.0;
    const double h = size.at(middle);
    const double w = cross(b - a, c - a) / (h * h * h);
    for (const int corner : t) {
      sum[corner] += w * middle;
      weight[corner] += w;
    }
  }
  for (std::size_t i = 0; i < sum.size(); ++i)
    sum[i] = weight[i] > 0.0 ? Vec2(sum[i] / weight[i]) : mesh.points_m[i];
  return sum;
}

// Places strictly between a and b that part the way into about the wanted lengths.
std::vector<Vec2> places_along(const Vec2& a, const Vec2& b, int least_parts,
                               const std::function<double(const Vec2&)>& size) {
  constexpr int kProbes = 64;  // to add up the wanted number of parts
  std::vector<double> parts(kProbes + 1, 0.0);
  for (int k = 0; k < kProbes; ++k)
    parts[k + 1] = parts[k] + (b - a).norm() / kProbes / size(a + (k + 0.5) / kProbes * (b - a));
  const int count = std::max(least_parts, static_cast<int>(std::lround(parts.back())));
  std::vector<Vec2> places;
  for (int k = 1, probe = 0; k < count; ++k) {
    const double target = parts.back() * k / count;
    while (probe + 1 < kProbes && parts[probe + 1] < target) ++probe;
    const double within = (target - parts[probe]) / (parts[probe + 1] - parts[probe]);
    places.push_back(a + (probe + within) / kProbes * (b - a));
  }
  return places;
}

bool star_stays_upright(const PlanarTriangulation& mesh, const std::vector<int>& star, int moved,
                        const Vec2& to) {
  for (const int t : star) {
    Vec2 p[3];
    for (int k = 0; k < 3; ++k)
      p[k] = mesh.triangles[t][k] == moved ? to : mesh.points_m[mesh.triangles[t][k]];
    const double longest2 = std::max((p[1] - p[0]).squaredNorm(), (p[2] - p[0]).squaredNorm());
    if (cross(p[1] - p[0], p[2] - p[0]) < 0.1 * longest2) return false;
  }
  return true;
}

}  // namespace

SampledGraph sampled_graph(const PlanarGraph& graph, const std::vector<int>& least_parts,
                           const std::function<double(const Vec2&)>& size) {
  SampledGraph out{{graph.points_m, {}}, {}};
  for (std::size_t i = 0; i < graph.segments.size(); ++i) {
    const Segment& s = graph.segments[i];
    int previous = s[0];
    const auto end_part_at = [&](int point) {
      out.graph.segments.push_back({previous, point});
      out.segment_of_part.push_back(static_cast<int>(i));
      previous = point;
    };
    for (const Vec2& p : places_along(graph.points_m[s[0]], graph.points_m[s[1]], least_parts[i], size)) {
      out.graph.points_m.push_back(p);
      end_part_at(static_cast<int>(out.graph.points_m.size()) - 1);
    }
    end_part_at(s[1]);
  }
  return out;
}

void fill_with_points(PlanarGraph& graph, const SizeField& size,
                      const std::function<bool(const Vec2&)>& inside) {
  if (!graph.points_m.empty()) Front(graph, size, inside).run();
}

void smooth_free_points(PlanarGraph& graph, const SizeField& size, int rounds) {
  std::vector<bool> free(graph.points_m.size(), true);
  for (const Segment& s : graph.segments)
    for (const int end : s) free[end] = false;
  for (int round = 0; round < rounds; ++round) {
    PlanarTriangulation mesh = constrained_delaunay(graph);
    const std::vector<Vec2> wanted = wanted_places(mesh, size);
    std::vector<std::vector<int>> stars(mesh.points_m.size());
    for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
      for (const int corner : mesh.triangles[t]) stars[corner].push_back(static_cast<int>(t));
    for (std::size_t i = 0; i < graph.points_m.size(); ++i)
      if (free[i] && star_stays_upright(mesh, stars[i], static_cast<int>(i), wanted[i]))
        graph.points_m[i] = mesh.points_m[i] = wanted[i];
  }
}

}  // namespace wrapgauge
