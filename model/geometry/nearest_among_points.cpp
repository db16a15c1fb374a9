#include "model/geometry/nearest_among_points.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <nanoflann.hpp>

namespace wrapgauge {
namespace {

// The tree leaves a branch out by a bound that it sums up with rounding and looks at points strictly nearer
// than the bound. Equally near points have to be seen all the same, so the bound is given a little wider.
double widened(double squared_m2) {
  return squared_m2 * (1.0 + 1e-12) + std::numeric_limits<double>::min();
}

struct Found {
  double squared_m2;
  int index;
  bool operator<(const Found& other) const {
    return squared_m2 < other.squared_m2 || (squared_m2 == other.squared_m2 && index < other.index);
  }
};

FoundPoint near_point(const Found& found) {
  return {found.index, std::sqrt(found.squared_m2)};
}

std::vector<FoundPoint> near_points(const std::vector<Found>& found) {
  std::vector<FoundPoint> points;
  points.reserve(found.size());
  for (const Found& each : found) points.push_back(near_point(each));
  return points;
}

// The nearest one, with the interface by which the tree hands over what it finds.
class NearestOne {
 public:
  bool addPoint(double squared_m2, std::uint32_t index) {
    best_ = std::min(best_, Found{squared_m2, static_cast<int>(index)});
    return true;  // go on searching
  }
  double worstDist() const { return widened(best_.squared_m2); }
  std::size_t size() const { return 1; }
  bool full() const { return true; }
  const Found& best() const { return best_; }

 private:
  Found best_{std::numeric_limits<double>::max(), std::numeric_limits<int>::max()};
};

// The few nearest, in order.
class NearestFew {
 public:
  explicit NearestFew(std::size_t count) : count_(count) { found_.reserve(count + 1); }
  bool addPoint(double squared_m2, std::uint32_t index) {
    const Found one{squared_m2, static_cast<int>(index)};
    if (full() && !(one < found_.back())) return true;
    found_.insert(std::upper_bound(found_.begin(), found_.end(), one), one);
    if (found_.size() > count_) found_.pop_back();
    return true;
  }
  double worstDist() const {
    return full() ? widened(found_.back().squared_m2) : std::numeric_limits<double>::max();
  }
  std::size_t size() const { return found_.size(); }
  bool full() const { return found_.size() == count_; }
  const std::vector<Found>& found() const { return found_; }

 private:
  std::size_t count_;
  std::vector<Found> found_;
};

// All within a reach, as they come.
class WithinReach {
 public:
  explicit WithinReach(double squared_m2) : squared_m2_(squared_m2) {}
  bool addPoint(double squared_m2, std::uint32_t index) {
    if (squared_m2 <= squared_m2_) found_.push_back({squared_m2, static_cast<int>(index)});
    return true;
  }
  double worstDist() const { return widened(squared_m2_); }
  std::size_t size() const { return found_.size(); }
  bool full() const { return true; }
  std::vector<Found>& found() { return found_; }

 private:
  double squared_m2_;
  std::vector<Found> found_;
};

// The points as the tree wants to read them.
struct PointSet {
  Points3 points_m;
  std::size_t kdtree_get_point_count() const { return static_cast<std::size_t>(points_m.rows()); }
  double kdtree_get_pt(std::uint32_t index, std::size_t axis) const {
    return points_m(static_cast<Eigen::Index>(index), static_cast<Eigen::Index>(axis));
  }
  template <class Box>
  bool kdtree_get_bbox(Box&) const {
    return false;  // the tree measures it
  }
};

using Index =
    nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, PointSet>, PointSet, 3>;

}  // namespace

struct NearestAmongPoints::Tree {
  explicit Tree(const Points3& points_m) : set{points_m}, index(3, set) {}
  template <class Search>
  void search(Search& search, const Vec3& place_m) const {
    if (set.points_m.rows() > 0) index.findNeighbors(search, place_m.data(), nanoflann::SearchParams());
  }
  PointSet set;
  Index index;
};

NearestAmongPoints::NearestAmongPoints(const Points3& points_m)
    : tree_(std::make_shared<const Tree>(points_m)) {
  assert(points_m.allFinite());
}

std::optional<FoundPoint> NearestAmongPoints::nearest(const Vec3& place_m) const {
  if (tree_->set.points_m.rows() == 0) return std::nullopt;
  NearestOne search;
  tree_->search(search, place_m);
  return near_point(search.best());
}

std::vector<FoundPoint> NearestAmongPoints::nearest(const Vec3& place_m, int count) const {
  if (count < 1) return {};
  NearestFew search(std::min(static_cast<std::size_t>(count), tree_->set.kdtree_get_point_count()));
  tree_->search(search, place_m);
  return near_points(search.found());
}

std::vector<FoundPoint> NearestAmongPoints::within(const Vec3& place_m, double reach_m) const {
  if (!(reach_m >= 0.0)) return {};
  WithinReach search(reach_m * reach_m);
  tree_->search(search, place_m);
  std::sort(search.found().begin(), search.found().end(),
            [](const Found& a, const Found& b) { return a.index < b.index; });
  return near_points(search.found());
}

}  // namespace wrapgauge
