#include "app/desk/views/cut_view.hpp"

#include <QSlider>
#include <set>

#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

struct WithCut : WithShown {
  CutView cut{shown, selection};

  bool open() {
    if (!show_all_states(two_chamber_estimate())) return false;
    cut.resize(420, 320);
    cut.show();
    return wait_until([&] { return cut.section().has_value(); });
  }
};

TEST(CutView, BeginsWhereItPressesMost) {
  WithCut with;
  ASSERT_TRUE(with.open());
  const Estimate& of = *with.shown.estimate();
  const double peak_m = (of.figures.peak_at_m - of.body.axis.origin_m).dot(of.body.axis.direction);
  EXPECT_NEAR(with.cut.section()->station_m, peak_m, 0.3e-3);
}

TEST(CutView, SlidesAlongTheDeviceAndShowsItsRingOnTheBody) {
  WithCut with;
  ASSERT_TRUE(with.open());
  const double before = with.cut.section()->station_m;
  with.cut.slider()->setValue(with.cut.slider()->minimum());
  EXPECT_LT(with.cut.section()->station_m, before);
  EXPECT_EQ(with.selection.cut_m(), with.cut.section()->station_m);
  with.cut.hide();
  EXPECT_FALSE(with.selection.cut_m()) << "a ring of a section that nobody sees";
}

TEST(CutView, FollowsTheFillingAndAPickedPlace) {
  WithCut with;
  ASSERT_TRUE(with.open());
  with.selection.show_state(0);
  const auto deflated = *with.cut.section();
  with.selection.show_state(with.shown.state_count() - 1);
  double before = 0.0, after = 0.0;
  for (const CutSheet& piece : deflated.sheets) before = std::max(before, piece.from_m.norm());
  for (const CutSheet& piece : with.cut.section()->sheets) after = std::max(after, piece.from_m.norm());
  EXPECT_GT(after, before) << "it does not swell";
  with.selection.pick_place(with.shown.body()->axis.origin_m + 0.11 * with.shown.body()->axis.direction);
  EXPECT_NEAR(with.cut.section()->station_m, 0.11, 1e-9);
}

TEST(CutView, ItsPictureShowsSheetsAndArrows) {
  WithCut with;
  ASSERT_TRUE(with.open());
  const QImage picture = with.cut.picture();
  EXPECT_EQ(picture.size(), QSize(1200, 900));
  std::set<QRgb> shades;
  for (int y = 0; y < picture.height(); y += 3)
    for (int x = 0; x < picture.width(); x += 3) shades.insert(picture.pixel(x, y));
  EXPECT_GT(shades.size(), 8u);
  if (const QString folder = qEnvironmentVariable("WRAPGAUGE_PICTURES"); !folder.isEmpty())
    picture.save(folder + QStringLiteral("/cut.png"));
}

}  // namespace
}  // namespace wrapgauge
