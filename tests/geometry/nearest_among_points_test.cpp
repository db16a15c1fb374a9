#include "model/geometry/nearest_among_points.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace wrapgauge {
namespace {

Points3 scattered(int count, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> spread(-0.1, 0.1);
  Points3 points(count, 3);
  for (int i = 0; i < count; ++i) points.row(i) << spread(random), spread(random), spread(random);
  return points;
}

// Whole steps, so that very many distances are exactly equal; every point is there twice.
Points3 doubled_lattice(int side) {
  const int half = side * side * side;
  Points3 points(2 * half, 3);
  for (int i = 0; i < half; ++i)
    points.row(i) = points.row(2 * half - 1 - i) =
        Vec3(i % side, i / side % side, i / (side * side)).transpose();
  return points;
}

// Every distance measured, nearest first and equally near ones by index.
std::vector<FoundPoint> measured(const Points3& points, const Vec3& place) {
  std::vector<FoundPoint> all;
  for (int i = 0; i < points.rows(); ++i) {
    const double x = place.x() - points(i, 0), y = place.y() - points(i, 1), z = place.z() - points(i, 2);
    all.push_back({i, std::sqrt(x * x + y * y + z * z)});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const FoundPoint& a, const FoundPoint& b) { return a.distance_m < b.distance_m; });
  return all;
}

void expect_same(const std::vector<FoundPoint>& found, const std::vector<FoundPoint>& expected) {
  ASSERT_EQ(found.size(), expected.size());
  for (std::size_t k = 0; k < found.size(); ++k) {
    EXPECT_EQ(found[k].index, expected[k].index) << k;
    EXPECT_EQ(found[k].distance_m, expected[k].distance_m) << k;
  }
}

void expect_as_measured(const Points3& points, const Points3& places, const std::vector<double>& reaches) {
  const NearestAmongPoints tree(points);
  for (Eigen::Index p = 0; p < places.rows(); ++p) {
    const Vec3 place = places.row(p).transpose();
    const std::vector<FoundPoint> all = measured(points, place);
    const auto one = tree.nearest(place);
    ASSERT_TRUE(one);
    expect_same({*one}, {all.front()});
    for (const std::size_t count : {std::size_t{1}, std::size_t{7}, std::size_t{40}, all.size()})
      expect_same(tree.nearest(place, static_cast<int>(count)), {all.begin(), all.begin() + count});
    for (const double reach : reaches) {
      std::vector<FoundPoint> within;
      std::copy_if(all.begin(), all.end(), std::back_inserter(within),
                   [&](const FoundPoint& each) { return each.distance_m <= reach; });
      std::sort(within.begin(), within.end(),
                [](const FoundPoint& a, const FoundPoint& b) { return a.index < b.index; });
      expect_same(tree.within(place, reach), within);
    }
  }
}

TEST(NearestAmongPoints, AgreesWithMeasuringEveryDistance) {
  const Points3 points = scattered(3000, 5);
  expect_as_measured(points, 1.5 * scattered(60, 6), {0.0, 0.01, 0.05, 0.5});
  expect_as_measured(points, points.topRows(20), {0.0, 0.02});
}

TEST(NearestAmongPoints, EquallyNearPointsComeByIndex) {
  const Points3 points = doubled_lattice(6);
  Points3 places(4, 3);
  places << 2.5, 2.5, 2.5, 3.0, 3.0, 3.0, 2.5, 3.0, 1.0, -1.0, 2.5, 7.0;
  expect_as_measured(points, places, {0.0, 1.0, 1.5, 2.0});
}

TEST(NearestAmongPoints, PointsThatLieOnEachOtherAreAllFound) {
  const Points3 points = Vec3(0.1, -0.2, 0.3).transpose().replicate(50, 1);
  expect_as_measured(points, points.topRows(1), {0.0});
}

TEST(NearestAmongPoints, FindsWhatThereIs) {
  const NearestAmongPoints none(Points3(0, 3));
  EXPECT_FALSE(none.nearest(Vec3::Zero()));
  EXPECT_TRUE(none.nearest(Vec3::Zero(), 3).empty());
  EXPECT_TRUE(none.within(Vec3::Zero(), 1.0).empty());
  const NearestAmongPoints two(Points3(scattered(2, 1)));
  EXPECT_EQ(two.nearest(Vec3::Zero(), 5).size(), 2u);
  EXPECT_TRUE(two.nearest(Vec3::Zero(), 0).empty());
}

}  // namespace
}  // namespace wrapgauge
