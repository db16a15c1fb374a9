#include "app/desk/views/name_places.hpp"

#include <gtest/gtest.h>

#include "app/desk/views/body_scene.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

std::vector<QPointF> points_in(const QRectF& box, double apart = 4.0) {
  std::vector<QPointF> points;
  for (double x = box.left(); x <= box.right(); x += apart)
    for (double y = box.top(); y <= box.bottom(); y += apart) points.emplace_back(x, y);
  return points;
}

// A chamber 200 pixels wide and high in the middle of a view.
struct WithRoom {
  QRectF chamber{200, 150, 200, 200};
  NamedPlace place{"left", chamber.center(), points_in(chamber)};
  NameRoom room{{0, 0, 600, 500}, QFontMetricsF{QFont()}, {}, place.area, {}};
};

TEST(NamePlaces, ANameStandsWhereItStandsBestWhileNothingIsHatchedThere) {
  WithRoom with;
  with.room.hatched = points_in({200, 150, 60, 200});
  const auto name = place_name(with.place, with.room);
  ASSERT_TRUE(name);
  EXPECT_EQ(name->plate.center(), with.chamber.center());
  EXPECT_FALSE(name->points_at);
}

TEST(NamePlaces, ANameGoesTheShortestWayOverItsChamberToWhereNothingIsHatched) {
  WithRoom with;
  const QRectF hatching(200, 150, 120, 200);  // more to the left
  with.room.hatched = points_in(hatching);
  const auto name = place_name(with.place, with.room);
  ASSERT_TRUE(name);
  EXPECT_FALSE(name->points_at);
  EXPECT_EQ(covered({name->plate}, with.room.hatched), 0);
  EXPECT_TRUE(with.chamber.contains(name->plate.center()));
  EXPECT_LT(name->plate.left() - hatching.right(), 8.0) << "farther away than it must";
}

TEST(NamePlaces, ANameOfAChamberHatchedAllOverStandsBesideAllChambersAndPointsAtIt) {
  WithRoom with;
  with.room.hatched = points_in(with.chamber.adjusted(-30, -30, 30, 30));
  const QRectF other(200, 20, 200, 120);
  const auto of_other = points_in(other);
  with.room.areas.insert(with.room.areas.end(), of_other.begin(), of_other.end());
  const auto name = place_name(with.place, with.room);
  ASSERT_TRUE(name);
  EXPECT_EQ(name->points_at, with.chamber.center());
  EXPECT_FALSE(name->plate.intersects(with.chamber));
  EXPECT_FALSE(name->plate.intersects(other));
  EXPECT_TRUE(with.room.view.contains(name->plate));
}

TEST(NamePlaces, WhereEverythingIsHatchedANameCoversLeast) {
  WithRoom with;
  with.room.view = with.chamber;
  with.room.hatched = points_in(with.chamber, 3.0);
  const QRectF sparse(260, 300, 140, 50);
  std::erase_if(with.room.hatched, [&](const QPointF& point) {
    return sparse.contains(point) && std::fmod(point.x(), 2.0) > 0.5;
  });
  const auto name = place_name(with.place, with.room);
  ASSERT_TRUE(name);
  EXPECT_FALSE(name->points_at);
  EXPECT_GT(name->plate.center().y(), 300.0);
}

TEST(NamePlaces, NamesKeepClearOfEachOther) {
  WithRoom with;
  const auto first = place_name(with.place, with.room), second = place_name(with.place, with.room);
  ASSERT_TRUE(first && second);
  EXPECT_FALSE(first->plate.intersects(second->plate));
}

TEST(NamePlaces, TheSceneTellsWhereEachChamberAndTheHatchingLie) {
  WithShown with;
  ASSERT_TRUE(with.show_all_states(two_chamber_estimate()));
  const int last = with.shown.state_count() - 1;
  const ScenePart part = contact_part(with.shown, last);
  ASSERT_EQ(part.labels.size(), 2U);
  for (const SceneLabel& label : part.labels) {
    ASSERT_GT(label.area.points_m.rows(), 4);
    EXPECT_LT((label.area.points_m.rowwise() - label.point_m.transpose()).rowwise().norm().maxCoeff(), 0.03)
        << "a point of another chamber";
  }
  const StateContact& contact = *with.shown.contact(last);
  const bool above = (contact.share_of_limit.array() > 1.0).any();
  EXPECT_EQ(part.hatched.points_m.rows() > 0, above);
}

}  // namespace
}  // namespace wrapgauge
