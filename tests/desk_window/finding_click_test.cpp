// What is hatched is what is above its limit: a click on a finding lands in the hatch that is drawn there.

#include <QListWidget>

#include "app/desk/views/body_scene.hpp"
#include "app/desk/window/findings_list.hpp"
#include "app/picture/colour_map.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

double distance_to_piece_mm(const Vec3& from, const Vec3& to, const Vec3& point) {
  const Vec3 along = to - from;
  const double length2 = along.squaredNorm();
  const double share = length2 > 0.0 ? std::clamp((point - from).dot(along) / length2, 0.0, 1.0) : 0.0;
  return 1e3 * (from + share * along - point).norm();
}

class FindingClick : public JobTest {
 protected:
  void open_pad(Pressure inside) {
    Plan plan = small_plan();
    plan.inflation = {{"tube", inside, {}}};
    ASSERT_TRUE(write_plan(plan, root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    open(PlanStep::kLimits);
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  }
  // To the nearest line of the hatching as it is drawn on the body.
  double from_hatch_mm(const Vec3& point_m) {
    const ShownPlan& shown = window_.views().shown();
    const ScenePart drawn = contact_part(shown, window_.views().selection().state());
    double nearest = 1e3;
    for (const SceneLines& lines : drawn.lines)
      if (lines.colour == hatch_colour(true) || lines.colour == hatch_colour(false))
        for (Eigen::Index k = 0; k + 1 < lines.ends_m.rows(); k += 2)
          nearest =
              std::min(nearest, distance_to_piece_mm(lines.ends_m.row(k), lines.ends_m.row(k + 1), point_m));
    return nearest;
  }
};

TEST_F(FindingClick, LandsInTheHatchOfThatFinding) {
  open_pad(8.0 * kPa);
  constexpr double kReadOff = 0.02;   // mixed between the corners of a triangle
  constexpr double kWithin_mm = 2.0;  // lines lie 3 mm apart, 0.8 mm off the skin
  const auto listed = listed_apart(listed_findings(*window_.session().solved()->estimate)).to_act_on;
  auto* cards = named<QListWidget>(QStringLiteral("findings"));
  ASSERT_EQ(static_cast<std::size_t>(cards->count()), listed.size());
  int clicked = 0;
  for (int row = 0; row < cards->count(); ++row) {
    const ListedFinding& finding = listed[static_cast<std::size_t>(row)];
    const bool of_contact = finding.sentence.contains(QStringLiteral("on its worst 1 cm²"));
    if (finding.severity < Severity::kAboveLimit || !finding.place_m || !of_contact) continue;
    hand::click(*cards->viewport(), cards->visualItemRect(cards->item(row)).center());
    const auto place = window_.views().selection().place_m();
    ASSERT_TRUE(place) << finding.sentence.toStdString();
    const auto reading = read_place(window_.views().shown(), window_.views().selection().state(), *place);
    ASSERT_TRUE(reading && reading->share) << finding.sentence.toStdString();
    EXPECT_LT(from_hatch_mm(reading->point_m), kWithin_mm) << finding.sentence.toStdString();
    EXPECT_GE(*reading->share, 1.0) << finding.sentence.toStdString();
    ASSERT_TRUE(finding.card && finding.card->share);
    EXPECT_NEAR(*reading->share, *finding.card->share, kReadOff) << finding.sentence.toStdString();
    if (++clicked == 1) picture(QStringLiteral("finding-in-its-hatch"));
  }
  EXPECT_GE(clicked, 1) << "nothing above a limit points anywhere";
}

TEST_F(FindingClick, NothingIsHatchedWhereNoFindingIsAboveALimit) {
  open_pad(0.2 * kPa);
  const auto listed = listed_findings(*window_.session().solved()->estimate);
  for (const ListedFinding& finding : listed)
    ASSERT_LT(finding.severity, Severity::kAboveLimit) << finding.sentence.toStdString();
  EXPECT_EQ(from_hatch_mm(Vec3(0.04, 0.0, 0.1)), 1e3) << "hatched, and no finding says why";
}

}  // namespace
}  // namespace wrapgauge
