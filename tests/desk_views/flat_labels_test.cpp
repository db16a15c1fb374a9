#include "app/desk/views/flat_labels.hpp"

#include <QTest>

#include "app/desk/views/flat_view.hpp"
#include "app/desk/views/flat_words.hpp"
#include "small_estimate.hpp"
#include "tests/geometry/open_ring.hpp"

namespace wrapgauge {
namespace {

struct WithLabels : WithShown {
  FlatView view{shown, selection};

  std::vector<FlatLabel> labels_at(int width, int height) {
    view.resize(width, height);
    view.show();
    wait_until_at_rest(view);
    return view.labels();
  }
  QRectF on_view(const Polygon& loop) const {
    const Bounds2 box = bounds(loop);
    return view.viewportTransform().mapRect(QRectF(on_scene(box.low), on_scene(box.high)).normalized());
  }
};

double area(const QRectF& box) {
  return box.isEmpty() ? 0.0 : box.width() * box.height();
}

std::shared_ptr<const Layout> ring_round_a_pad() {
  auto layout = std::make_shared<Layout>();
  layout->outline_m = box_m(-0.06, -0.06, 0.06, 0.06);
  layout->chambers = {{"pad", box_m(-0.015, -0.015, 0.015, 0.015), {}, {}},
                      {"ring", open_ring(0.025, 0.05, 330.0), {}, {}}};
  return layout;
}

TEST(FlatLabels, StandWithinLargeChambers) {
  WithLabels with;
  with.shown.show_estimate(two_chamber_estimate());
  const auto labels = with.labels_at(700, 600);
  ASSERT_EQ(labels.size(), 2U);
  for (std::size_t c = 0; c < labels.size(); ++c) {
    EXPECT_FALSE(labels[c].points_at);
    EXPECT_TRUE(with.on_view(two_chamber_plan().layout.chambers[c].boundary_m).contains(labels[c].plate));
  }
}

TEST(FlatLabels, LeaveSmallChambersToBeSeenAndPointAtThem) {
  WithLabels with;
  with.shown.show_estimate(two_chamber_estimate());
  with.labels_at(400, 400);
  for (int k = 0; k < 8; ++k) QTest::keyClick(&with.view, Qt::Key_Minus);
  const auto labels = with.view.labels();
  ASSERT_EQ(labels.size(), 2U);
  for (std::size_t c = 0; c < labels.size(); ++c) {
    EXPECT_FALSE(labels[0].plate.intersects(labels[1].plate));
    for (const Chamber& chamber : two_chamber_plan().layout.chambers) {
      const QRectF box = with.on_view(chamber.boundary_m);
      EXPECT_LE(area(labels[c].plate & box), 0.45 * area(box)) << chamber.name << " is hidden";
    }
    ASSERT_TRUE(labels[c].points_at);
    EXPECT_TRUE(
        with.on_view(two_chamber_plan().layout.chambers[c].boundary_m).contains(*labels[c].points_at));
    EXPECT_TRUE(labels[c].lines.last().endsWith("kPa")) << "a number without its unit";
  }
}

TEST(FlatLabels, AreBriefWhereTheyWouldHideMuchOfTheChamber) {
  const QFontMetricsF metrics{QFont()};
  const double wide = metrics.horizontalAdvance("2.1 kPa (16 mmHg)") + 20.0;
  const auto lines_in = [&](const QSizeF& size) {
    LabelledShape shape;
    shape.path.addRect(QRectF({300.0, 300.0}, size));
    shape.inside = shape.path.boundingRect().center();
    shape.words = [&](double width) {
      return chamber_lines("left", 2.1 * kPa, PressureUnit::kKilopascal, metrics, width);
    };
    LabelRoom room{{0.0, 0.0, 900.0, 900.0}, shape.path.boundingRect(), metrics, {}};
    const auto label = place_label(shape, room);
    return label && !label->points_at ? label->lines : QStringList();
  };
  EXPECT_EQ(lines_in({2.0 * wide, 300.0}), (QStringList{"left", "2.1 kPa (16 mmHg)"}));
  EXPECT_EQ(lines_in({wide, 5.0 * metrics.height()}), (QStringList{"left", "2.1 kPa"}));
}

TEST(FlatLabels, ALineIsNotBrokenBetweenANumberAndItsUnit) {
  const QFontMetricsF metrics{QFont()};
  const double width = metrics.horizontalAdvance("lower edge at y 12.0 m");
  EXPECT_EQ(broken_lines("ring\nlower edge at y 12.0 mm", metrics, width),
            (QStringList{"ring", "lower edge at y", QStringLiteral("12.0\u00a0mm")}));
}

TEST(FlatLabels, ARingAndThePadWithinItAreBothNamed) {
  WithLabels with;
  const auto layout = ring_round_a_pad();
  with.shown.show_layout(layout);
  const auto labels = with.labels_at(700, 700);
  ASSERT_EQ(labels.size(), 2U);
  EXPECT_EQ(labels[1].lines, QStringList{"ring"});
  const QTransform back = with.view.viewportTransform().inverted();
  const QPointF at = back.map(labels[1].plate.center());
  EXPECT_TRUE(contains(layout->chambers[1].boundary_m, {1e-3 * at.x(), -1e-3 * at.y()}));
}

}  // namespace
}  // namespace wrapgauge
