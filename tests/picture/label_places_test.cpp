#include "app/picture/label_places.hpp"

#include <gtest/gtest.h>

#include <QPainter>

#include "app/picture/legend.hpp"
#include "app/picture/picture_program.hpp"

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

// Over another part it would seem to be that one's name.
TEST(LabelPlaces, ANameStandsWithinItsRoomAndOverNoOtherPartOrNotAtAll) {
  ASSERT_TRUE(start_picture_program().ok());
  QImage paper(400, 200, QImage::Format_RGB32);
  QPainter painter(&paper);
  const QRectF room(0, 0, 200, 200), other(0, 60, 200, 80);
  const auto put = [&](const std::vector<QPointF>& places) {
    paper.fill(Qt::black);
    const bool stands = MapLabels(painter).put_over(room, {other}, places, {"pad"}, 20);
    bool seen = false;
    for (int x = 0; x < 400; ++x)
      for (int y = 0; y < 200; ++y) {
        if (paper.pixelColor(x, y) == QColor(Qt::black)) continue;
        seen = true;
        EXPECT_TRUE(room.contains(x, y) && !other.contains(x, y)) << x << ", " << y;
      }
    EXPECT_EQ(seen, stands);
    return stands;
  };
  EXPECT_FALSE(put({{100, 100}, {100, 55}}));  // on the other part, and across its edge
  EXPECT_FALSE(put({{195, 30}}));              // across the edge of its room
  EXPECT_TRUE(put({{100, 100}, {195, 30}, {100, 30}}));
}

}  // namespace
}  // namespace wrapgauge
