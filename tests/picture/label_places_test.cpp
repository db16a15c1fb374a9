#include "app/picture/label_places.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

const QPolygonF kSquare({{0, 0}, {100, 0}, {100, 100}, {0, 100}});
// A frame 20 wide round a hole, as one loop that is open at the right.
const QPolygonF kRing({{0, 0},
                       {100, 0},
                       {100, 40},
                       {80, 40},
                       {80, 20},
                       {20, 20},
                       {20, 80},
                       {80, 80},
                       {80, 60},
                       {100, 60},
                       {100, 100},
                       {0, 100}});

QRectF plate(const QPointF& middle, const QSizeF& size) {
  return {middle - QPointF(0.5 * size.width(), 0.5 * size.height()), size};
}

TEST(LabelPlaces, WordsLieInsideTheirPartAndOffWhatIsTaken) {
  const auto middle = place_inside(kSquare, {50, 50}, {40, 20}, {});
  ASSERT_TRUE(middle);
  EXPECT_EQ(*middle, QPointF(50, 50));
  const QRectF dot(43, 43, 14, 14);
  const auto beside = place_inside(kSquare, {50, 50}, {40, 20}, {dot});
  ASSERT_TRUE(beside);
  EXPECT_FALSE(plate(*beside, {40, 20}).intersects(dot));
  EXPECT_TRUE(QRectF(0, 0, 100, 100).contains(plate(*beside, {40, 20})));
}

TEST(LabelPlaces, WordsStayOnTheRingTheyNameAndNeverInItsHole) {
  const auto on = place_inside(kRing, {50, 50}, {16, 12}, {});
  ASSERT_TRUE(on);
  EXPECT_FALSE(plate(*on, {16, 12}).intersects(QRectF(20, 20, 80, 60)));
  EXPECT_FALSE(place_inside(kRing, {50, 50}, {30, 30}, {}));
}

TEST(LabelPlaces, WordsBesideKeepOffEverythingAndTheirLineRunsThroughNoOthers) {
  const QRectF room(-100, -100, 300, 300);
  const QSizeF size(40, 20);
  const auto first = place_beside(room, kSquare, {90, 50}, size, {});
  ASSERT_TRUE(first);
  EXPECT_FALSE(plate(*first, size).intersects(QRectF(0, 0, 100, 100)));
  const auto second = place_beside(room, kSquare, {90, 50}, size, {plate(*first, size)});
  ASSERT_TRUE(second);
  EXPECT_FALSE(plate(*second, size).intersects(plate(*first, size)));
  EXPECT_FALSE(runs_through(QLineF({90, 50}, *second), plate(*first, size)));
  EXPECT_TRUE(room.contains(plate(*second, size)));
  EXPECT_FALSE(place_beside(QRectF(0, 0, 100, 100), kSquare, {50, 50}, size, {}));
}

TEST(LabelPlaces, ALineThatPassesByRunsThroughNothing) {
  EXPECT_TRUE(runs_through({-10, 5, 20, 5}, {0, 0, 10, 10}));
  EXPECT_TRUE(runs_through({5, 5, 6, 6}, {0, 0, 10, 10}));
  EXPECT_FALSE(runs_through({-10, 11, 20, 11}, {0, 0, 10, 10}));
  EXPECT_EQ(line_up_to({-10, 5, 5, 5}, {0, 0, 10, 10}), QLineF(-10, 5, 0, 5));
}

}  // namespace
}  // namespace wrapgauge
