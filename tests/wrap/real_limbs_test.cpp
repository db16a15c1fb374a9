#include <gtest/gtest.h>

#include <filesystem>
#include <string>

#include "flat_rectangle.hpp"
#include "limb_file.hpp"
#include "model/geometry/nearest_point.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {
namespace {

class OnARealLimb : public testing::TestWithParam<const char*> {
 protected:
  void SetUp() override {
    const auto file = std::filesystem::path(WRAPGAUGE_SHARED_DIR) / "data" / "bodies" / GetParam();
    if (!std::filesystem::exists(file)) GTEST_SKIP() << "NOT CHECKED: there is no limb at " << file;
    body = limbs::read_limb(file);
    const double length_m = body.surface.vertices_m.col(2).maxCoeff() - body.axis.origin_m.z();
    placement.anchor = AnchorAtStation{0.5 * length_m * metre, 40.0};
    Layout by_stretch;
    by_stretch.closure = Closure{.from_x_m = 0.0, .closing_length = {}, .stretch = 0.03};
    const auto length = resolve_closing_length(body, by_stretch, placement);
    ASSERT_TRUE(length.ok()) << length.problem().message;
    girth_m = 1.03 * (*length)->si();
    flat = flat::rectangle((*length)->si(), 0.25 * length_m, 0.004, true);
  }
  Body body;
  Placement placement;
  double girth_m = 0.0;
  flat::Rectangle flat;
};

TEST_P(OnARealLimb, LiesOnTheSkinClosesAndKeepsPlausibleStretches) {
  const auto wrap = wrap_layout(body, flat.layout, flat.mesh, placement);
  ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
  const NearestPoint nearest(body.surface);
  ASSERT_TRUE(wrap->laid_m.allFinite() && wrap->worn_m.allFinite() && wrap->outward_at_worn.allFinite());
  for (int i = 0; i < wrap->laid_m.rows(); ++i) {
    EXPECT_LT(nearest.at(wrap->laid_m.row(i)).distance_m, 0.05e-3);
    EXPECT_LT(nearest.at(wrap->worn_m.row(i)).distance_m, 0.05e-3);
    EXPECT_NEAR(wrap->outward_at_worn.row(i).norm(), 1.0, 1e-12);
  }
  for (std::size_t i = 0; i < flat.mesh.closing_from.size(); ++i)
    EXPECT_LT(
        (wrap->worn_m.row(flat.mesh.closing_from[i]) - wrap->worn_m.row(flat.mesh.closing_to[i])).norm(),
        1e-9);
  ASSERT_TRUE(wrap->closure);
  EXPECT_NEAR(wrap->closure->girth_at_anchor.si(), girth_m, 1e-9);
  // A straight strip climbs towards the wide end, so it needs more than the girth: on a cone that turns by
  // the angle a in its development, tan(a / 2) / (a / 2) times as much; 1.18 on the steepest of these calves.
  EXPECT_GT(wrap->closure->closing_length_needed.si(), 0.98 * girth_m);
  EXPECT_LT(wrap->closure->closing_length_needed.si(), 1.30 * girth_m);
  EXPECT_LT(wrap->closure->gap_distal, wrap->closure->gap_proximal);  // all these limbs widen proximally
  const WrapQuality& whole = wrap->quality.back();
  EXPECT_GT(whole.stretch_min, 0.7);
  EXPECT_LT(whole.stretch_max, 1.3);
}

INSTANTIATE_TEST_SUITE_P(Wrap, OnARealLimb,
                         testing::Values("hubmap_VH_M_forearm.stl", "hubmap_VH_M_calf.stl",
                                         "mpfb_fA_forearm.stl", "mpfb_fA_calf.stl", "mpfb_mA_forearm.obj",
                                         "mpfb_mA_calf.obj", "mpfb_mA_thigh.obj", "mpfb_mA_upperarm.obj",
                                         "mpfb_mChild_forearm.obj"),
                         [](const auto& limb) {
                           const std::string name = limb.param;
                           return name.substr(0, name.find('.'));
                         });

}  // namespace
}  // namespace wrapgauge
