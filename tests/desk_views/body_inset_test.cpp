#include "app/desk/views/body_inset.hpp"

#include <gtest/gtest.h>

#include <QPainter>
#include <QTest>

#include "app/desk/views/body_overlay.hpp"
#include "app/desk/views/body_view.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/wrap/laid_rim.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

const QSizeF kBody(0.1, 0.3), kWords(80, 16);
const InsetRoom kEmpty{{8, 8, 600, 400}, {}, {}, {}};

TEST(BodyInset, StandsLowOnTheRightAndElseOnTheLeftAndKeepsTheShapeOfTheBody) {
  const auto right = place_inset(kBody, kWords, kEmpty);
  ASSERT_TRUE(right);
  EXPECT_EQ(right->bottomRight(), kEmpty.view.bottomRight());
  const QRectF body = body_in_inset(*right, kWords);
  EXPECT_GE(body.width() / body.height(), kBody.width() / kBody.height() - 1e-9) << "cut off";
  InsetRoom room = kEmpty;
  room.taken = {{500, 8, 108, 400}};
  const auto left = place_inset(kBody, kWords, room);
  ASSERT_TRUE(left);
  EXPECT_EQ(left->bottomLeft(), kEmpty.view.bottomLeft());
}

TEST(BodyInset, CoversNeitherPlatesNorLinesNorWhatIsDrawnAndIsSmallerBeforeItIsLeftOut) {
  InsetRoom room = kEmpty;
  const QSizeF alone = place_inset(kBody, kWords, room)->size();
  room.taken = {{8, 200, 600, 30}, {8, 300, 600, 108}};
  room.lines = {{{500, 100}, {600, 100}}};
  room.drawn = {{60, 8, 440, 400}, {500, 8, 60, 400}};
  EXPECT_FALSE(place_inset(kBody, kWords, room)) << "no strip is wide enough for the words";
  room.drawn.pop_back();
  const auto squeezed = place_inset(kBody, kWords, room);
  ASSERT_TRUE(squeezed);
  EXPECT_LT(squeezed->height(), alone.height());
  for (const QRectF& plate : room.taken) EXPECT_FALSE(squeezed->intersects(plate));
  for (const QRectF& piece : room.drawn) EXPECT_FALSE(squeezed->intersects(piece));
  EXPECT_FALSE(squeezed->contains(QPointF(550.0, 100.0)));
}

struct WithOverlay : WithShown {
  BodyView view{shown, selection};

  void open(const QSize& size) {
    view.resize(size);
    view.show();
    ASSERT_TRUE(show_all_states(two_chamber_estimate()));
  }
  OverlayPlaces places() {
    QImage paper(view.size(), QImage::Format_RGB32);
    QPainter painter(&paper);
    return view.findChild<BodyOverlay*>()->draw(painter);
  }
  QPointF pixel_of(const Vec3& point_m) const {
    const RasterPoint at = view.turntable().view().project(point_m);
    return {at.x, at.y};
  }
};

TEST(BodyInset, CoversNeitherNamesNorTheLayoutWithItsHottestPlace) {
  WithOverlay with;
  with.open({700, 500});
  for (const ViewSide side : {ViewSide::kFront, ViewSide::kBack}) {
    with.view.look_from(side);
    const OverlayPlaces places = with.places();
    ASSERT_TRUE(places.whole_body);
    for (const QRectF& name : places.names) EXPECT_FALSE(places.whole_body->intersects(name));
    const Points3& worn = with.shown.contact(with.selection.state())->on_skin.points_m;
    for (Eigen::Index v = 0; v < worn.rows(); ++v)
      EXPECT_FALSE(places.whole_body->contains(with.pixel_of(worn.row(v))));
    for (const ChamberFigures& chamber : with.shown.estimate()->figures.chambers)
      EXPECT_FALSE(places.whole_body->contains(with.pixel_of(chamber.peak_at_m)));
  }
}

// As it is put on, and while only its lines stand for it.
TEST(BodyInset, StandsThereBeforeAnEstimateToo) {
  const auto job = complete_job(two_chamber_plan());
  ASSERT_TRUE(job.ok());
  const auto body = std::make_shared<const Body>(*body_of_plan(job->plan, job->body));
  const auto worn = prepare(job->plan, *body, job->resources, mesh_of_plan(job->plan));
  ASSERT_TRUE(worn.ok()) << worn.problem().message;
  const auto rim = laid_rim(BodySurface(*body), job->plan.layout, job->plan.placement);
  ASSERT_TRUE(rim.ok()) << rim.problem().message;
  WithOverlay with;
  with.view.resize(700, 500);
  with.view.show();
  with.shown.show_body(body);
  EXPECT_FALSE(with.places().whole_body) << "nothing lies on it";
  with.shown.show_worn(std::make_shared<const Prepared>(*worn));
  EXPECT_TRUE(with.places().whole_body);
  with.shown.show_rim(std::make_shared<const LaidRim>(*rim));
  EXPECT_TRUE(with.places().whole_body);
}

TEST(BodyInset, IsLeftOutWhereItWouldCoverTheLayoutAndWhereAllOfTheBodyIsSeen) {
  WithOverlay with;
  with.open({700, 500});
  for (int k = 0; k < 14; ++k) QTest::keyClick(&with.view, Qt::Key_Plus);
  EXPECT_FALSE(with.places().whole_body) << "the layout fills the view";
  for (int k = 0; k < 26; ++k) QTest::keyClick(&with.view, Qt::Key_Minus);
  EXPECT_FALSE(with.places().whole_body) << "the view shows the whole body itself";
}

}  // namespace
}  // namespace wrapgauge
