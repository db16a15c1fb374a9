#include "model/body/mend.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "model/body/surface_error.hpp"
#include "tests/body/scan_like.hpp"

namespace wrapgauge {
namespace {

const BodyOptions kMillimetres{"scan", LengthUnit::kMillimetre, std::nullopt};

Scan scan_of(const RawMesh& raw) {
  Scan scan{{1e-3 * raw.vertices, raw.faces}, {Vec3::Zero(), Vec3::UnitZ()}, true};
  return with_surface(scan, scan.surface);
}

double figure(const MendReport& report, const std::string& name) {
  const auto found = std::find_if(report.figures.begin(), report.figures.end(),
                                  [&](const MendFigure& one) { return one.name == name; });
  EXPECT_NE(found, report.figures.end()) << name;
  return found == report.figures.end() ? -1e9 : found->value;
}

Body body_of(const Scan& scan) {
  return {"", scan.surface, scan.axis, "", {}, {}};
}

TEST(Mend, ATableUnderTheLimbIsDroppedAndTheLimbStays) {
  RawMesh raw = shapes::egg_limb();
  const auto limb_faces = raw.faces.rows();
  shapes::add_table(raw, 6.0, 0.3);
  for (const double angle : {0.0, 1.1}) {
    const auto mended = drop_table(scan_of(shapes::moved(raw, angle, {1, 2, 3}, {300, -50, 20})), {});
    ASSERT_TRUE(mended.ok()) << mended.problem().message;
    EXPECT_EQ(mended->scan.surface.faces.rows(), limb_faces);
    EXPECT_EQ(figure(mended->report, "faces_dropped"), 6400.0);
  }
}

TEST(Mend, ALimbWithoutATableLosesNothing) {
  const Scan scan = scan_of(shapes::egg_limb());
  const auto mended = drop_table(scan, {});
  ASSERT_TRUE(mended.ok());
  EXPECT_EQ(mended->scan.surface.faces.rows(), scan.surface.faces.rows());
  EXPECT_NE(english(mended->report.sentence).find("No table was found"), std::string::npos);
}

TEST(Mend, TheUnitIsGuessedFromTheLimbAndNotFromItsTable) {
  RawMesh raw = shapes::egg_limb();
  shapes::add_table(raw, 6.0, 0.3, 10.0);  // 640 by 500 mm: in centimetres more like a limb in mm
  raw.vertices /= 10.0;
  const auto mended = mend_body(raw, {}, {DropTable{}, DropCrumbs{}});
  ASSERT_TRUE(mended) << mended.problem().message;
  EXPECT_EQ(mended->checked.report.unit.unit, LengthUnit::kCentimetre);
  EXPECT_TRUE(mended->checked.report.unit.guessed);
  EXPECT_NEAR(mended->checked.report.length / mm, 240.0, 12.0);
}

TEST(Mend, CrumbsAreDroppedAndCounted) {
  RawMesh raw = shapes::egg_limb();
  const auto limb_faces = raw.faces.rows();
  shapes::add_crumbs(raw, 25);
  const auto mended = drop_crumbs(scan_of(raw), {});
  ASSERT_TRUE(mended.ok());
  EXPECT_EQ(mended->scan.surface.faces.rows(), limb_faces);
  EXPECT_EQ(figure(mended->report, "pieces_dropped"), 25.0);
  EXPECT_EQ(figure(mended->report, "pieces_left"), 1.0);
}

TEST(Mend, HolesAreFilledOnTheShapeAndOpenEndsStayOpen) {
  const RawMesh whole = shapes::egg_limb();
  RawMesh raw = whole;
  shapes::punch_hole(raw, 60 * 36 + 10, 14.0);
  shapes::punch_hole(raw, 60 * 20 + 40, 9.0);
  shapes::punch_hole(raw, 60 * 55 + 30, 24.0);
  const Scan scan = scan_of(raw);
  ASSERT_EQ(find_open_ends(scan.surface, scan.axis).size(), 5u);
  const auto mended = fill_holes(scan, {40.0 * mm});
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  EXPECT_EQ(figure(mended->report, "holes_filled"), 2.0);
  EXPECT_EQ(figure(mended->report, "holes_left"), 1.0);
  EXPECT_NEAR(figure(mended->report, "widest_left_mm"), 50.0, 6.0);
  EXPECT_EQ(figure(mended->report, "open_ends_kept"), 2.0);
  const auto ends = find_open_ends(mended->scan.surface, mended->scan.axis);
  ASSERT_EQ(ends.size(), 3u);
  EXPECT_EQ(ends[0].kind, OpenEndKind::kDistal);
  EXPECT_EQ(ends[1].kind, OpenEndKind::kProximal);
  // A patch of 28 mm across goes on from its rim: flat it would lie up to 2.3 mm inside.
  EXPECT_LT(surface_error(mended->scan.surface, scan_of(whole).surface).largest / mm, 0.8);
}

TEST(Mend, SmoothingTakesTheNoiseOffAndKeepsTheGirth) {
  const Scan clean = scan_of(shapes::egg_limb());
  RawMesh raw = shapes::egg_limb();
  shapes::add_noise(raw, 0.6);
  const Scan noisy = scan_of(raw);
  const auto mended = smooth(noisy, {});
  ASSERT_TRUE(mended.ok());
  EXPECT_LT(std::abs(figure(mended->report, "girth_change_most_percent")), 0.5);
  EXPECT_LT(surface_error(mended->scan.surface, clean.surface).mean,
            0.6 * surface_error(noisy.surface, clean.surface).mean);
  // And against the limb it came from, which the report cannot know.
  for (const double station : {60.0, 120.0, 180.0})
    EXPECT_NEAR(
        girth_at(body_of(mended->scan), station * mm).girth / girth_at(body_of(clean), station * mm).girth,
        1.0, 0.01);
}

TEST(Mend, SmoothingACleanLimbChangesItsGirthsByLessThanHalfAPercentHoweverOften) {
  const Scan clean = scan_of(shapes::egg_limb());
  for (const int passes : {1, 10, 100}) {
    const auto mended = smooth(clean, {passes});
    ASSERT_TRUE(mended.ok());
    EXPECT_LT(std::abs(figure(mended->report, "girth_change_most_percent")), 0.5) << passes;
    EXPECT_LT(std::abs(figure(mended->report, "section_line_change_most_percent")), 0.5) << passes;
  }
}

TEST(Mend, DecimationKeepsWithinTheErrorItReports) {
  const Scan scan = scan_of(shapes::egg_limb());
  for (const double edge : {5.0, 9.0}) {
    const auto mended = decimate(scan, {edge * mm});
    ASSERT_TRUE(mended.ok()) << mended.problem().message;
    EXPECT_NEAR(figure(mended->report, "mean_edge_mm"), edge, 0.2 * edge);
    // Height of an arc over an edge of up to 4/3 of the wanted one on the limb's tightest radius of about
    // 20 mm: edge^2 / (8 r).
    EXPECT_LT(figure(mended->report, "error_largest_mm"), std::pow(4.0 / 3.0 * edge, 2) / (8.0 * 20.0));
    EXPECT_LE(1e3 * surface_error(mended->scan.surface, scan.surface).largest.si(),
              figure(mended->report, "error_largest_mm") + 1e-9);
    EXPECT_EQ(find_open_ends(mended->scan.surface, mended->scan.axis).size(), 2u);
  }
}

TEST(Mend, CuttingGivesFlatEndsAtTheStationsAskedFor) {
  const Scan scan = scan_of(shapes::egg_limb());
  const auto mended = cut_limb(scan, {31.0 * mm, 202.5 * mm});
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  const Body cut = body_of(mended->scan);
  EXPECT_NEAR(body_length(cut) / mm, 171.5, 1e-6);
  EXPECT_NEAR(cut.surface.vertices_m.col(2).minCoeff(), 0.0, 1e-9);
  for (const double station : {10.0, 100.0, 160.0})
    EXPECT_NEAR(girth_at(cut, station * mm).girth / mm,
                girth_at(body_of(scan), (station + 31.0) * mm).girth / mm, 1e-6);
  EXPECT_FALSE(cut_limb(scan, {100.0 * mm, 90.0 * mm}).ok());
  EXPECT_FALSE(cut_limb(scan, {100.0 * mm, 900.0 * mm}).ok());
}

TEST(Mend, TwoPosesOfOneLimbEndInTheSame) {
  const RawMesh raw = shapes::egg_limb();
  const std::vector<MendStep> pose{PoseLimb{}};
  const auto one = mend_body(raw, kMillimetres, pose);
  ASSERT_TRUE(one.ok()) << one.problem().message;
  const Points3& expected = one->checked.body.surface.vertices_m;
  EXPECT_NEAR(expected.col(2).minCoeff(), 0.0, 1e-9);
  for (const double angle : {0.4, 2.0, 3.1}) {
    const auto other = mend_body(shapes::moved(raw, angle, {1, -2, 0.5}, {50, 900, -20}), kMillimetres, pose);
    ASSERT_TRUE(other.ok());
    ASSERT_EQ(other->checked.body.surface.vertices_m.rows(), expected.rows());
    EXPECT_LT((other->checked.body.surface.vertices_m - expected).cwiseAbs().maxCoeff(), 1e-6) << angle;
  }
}

TEST(Mend, TheThickerEndIsProximalUnlessToldOtherwise) {
  const RawMesh raw = shapes::moved(shapes::egg_limb(), 3.0, {1, 0, 0}, {0, 0, 0});
  for (const DistalEnd distal : {DistalEnd::kThin, DistalEnd::kThick}) {
    const auto mended = mend_body(raw, kMillimetres, {PoseLimb{distal, 0.0}});
    ASSERT_TRUE(mended.ok());
    const auto& girths = mended->checked.report.girths;
    EXPECT_EQ(girths.front().girth < girths.back().girth, distal == DistalEnd::kThin);
  }
}

// A trunk's ends differ by a per cent: the scan's own way up is kept, which is asked about, and can be
// turned.
TEST(Mend, EndsThatAreAlikeKeepTheScansOwnWayUpAndAreAskedAbout) {
  RawMesh raw = shapes::egg_limb();
  for (Eigen::Index v = 0; v < raw.vertices.rows(); ++v)  // 1 % thinner at the top, from a third thicker
    raw.vertices.row(v).head<2>() *=
        (38.0 - 0.3 * raw.vertices(v, 2) / 240.0) / (30.0 + 15.0 * raw.vertices(v, 2) / 240.0);
  const auto low_girth = [&](DistalEnd distal) {
    const auto mended = mend_body(raw, kMillimetres, {PoseLimb{distal, 0.0}});
    if (!mended) return std::pair{0.0, std::string(mended.problem().message)};
    const auto& girths = mended->checked.report.girths;
    return std::pair{girths.front().girth / girths.back().girth, english(mended->reports.back().sentence)};
  };
  for (const DistalEnd distal : {DistalEnd::kThin, DistalEnd::kThick}) {
    const auto [ratio, said] = low_girth(distal);
    EXPECT_GT(ratio, 1.0) << said;
    EXPECT_NE(said.find("does not tell the distal end"), std::string::npos) << said;
  }
  EXPECT_GT(low_girth(DistalEnd::kAsItIs).first, 1.0);
  EXPECT_LT(low_girth(DistalEnd::kTurned).first, 1.0);
}

// Hips below, a thinner waist above: the thinner end is not the distal one.
TEST(Mend, WhatMayBeATrunkKeepsTheScansOwnWayUpAndIsAskedAbout) {
  RawMesh raw = shapes::egg_limb();
  for (Eigen::Index v = 0; v < raw.vertices.rows(); ++v)  // from 140 to 105 mm of mean radius
    raw.vertices.row(v).head<2>() *=
        (140.0 - 35.0 * raw.vertices(v, 2) / 240.0) / (30.0 + 15.0 * raw.vertices(v, 2) / 240.0);
  const auto mended = mend_body(raw, kMillimetres, {PoseLimb{}});
  ASSERT_TRUE(mended) << mended.problem().message;
  const auto& girths = mended->checked.report.girths;
  const std::string said = english(mended->reports.back().sentence);
  EXPECT_GT(girths.front().girth / girths.back().girth, 1.1) << said;
  EXPECT_NE(said.find("may be a trunk's"), std::string::npos) << said;
  const auto turned = mend_body(raw, kMillimetres, {PoseLimb{DistalEnd::kTurned, 0.0}});
  ASSERT_TRUE(turned);
  EXPECT_LT(turned->checked.report.girths.front().girth / turned->checked.report.girths.back().girth, 1.0);
}

TEST(Mend, MirroringMakesTheOtherLimbWithTheSameGirthsAndOutwardNormals) {
  const RawMesh raw = shapes::egg_limb();
  const auto right = mend_body(raw, kMillimetres, {PoseLimb{}}),
             left = mend_body(raw, kMillimetres, {PoseLimb{}, MirrorLimb{}});
  ASSERT_TRUE(right.ok() && left.ok());
  EXPECT_TRUE(left->checked.report.repairs.empty());  // nothing had to be turned outward
  const Points3 &a = right->checked.body.surface.vertices_m, &b = left->checked.body.surface.vertices_m;
  EXPECT_LT((a.col(0) + b.col(0)).cwiseAbs().maxCoeff(), 1e-12);
  for (std::size_t i = 0; i < 11; ++i)
    EXPECT_NEAR(left->checked.report.girths[i].girth / mm, right->checked.report.girths[i].girth / mm, 1e-6);
}

RawMesh worst_scan() {
  RawMesh raw = shapes::egg_limb();
  shapes::add_noise(raw, 0.6);
  shapes::punch_hole(raw, 60 * 36 + 10, 12.0);
  shapes::punch_hole(raw, 60 * 50 + 40, 8.0);
  shapes::add_crumbs(raw, 20);
  shapes::add_table(raw, 5.0, 0.5);
  return shapes::moved(raw, 1.3, {1, 2, -1}, {150, -400, 70});
}

TEST(Mend, ANoisyHoledCrumbedPosedScanOnATableComesBackWithItsGirths) {
  std::vector<MendStep> steps = usual_steps();
  steps.push_back(CutLimb{10.0 * mm, 230.0 * mm});
  const auto mended = mend_body(worst_scan(), kMillimetres, steps);
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  const Body clean = body_of(scan_of(shapes::egg_limb()));
  EXPECT_EQ(mended->checked.report.open_ends.size(), 2u);
  // The raw scan's ragged ends blur where station 0 lies by some 2 mm; girths change by 0.4 mm a mm.
  for (const double station : {50.0, 100.0, 150.0, 200.0})
    EXPECT_NEAR(
        girth_at(mended->checked.body, (station - 10.0) * mm).girth / girth_at(clean, station * mm).girth,
        1.0, 0.01)
        << station;
}

TEST(Mend, AStepLeftOutGivesTheBodyBeforeIt) {
  const RawMesh raw = worst_scan();
  const auto all = mend_body(raw, kMillimetres, {DropTable{}, DropCrumbs{}, FillHoles{}, Smooth{5}});
  const auto fewer = mend_body(raw, kMillimetres, {DropTable{}, DropCrumbs{}, FillHoles{}});
  ASSERT_TRUE(all.ok() && fewer.ok());
  const auto again = mend_body(raw, kMillimetres, {DropTable{}, DropCrumbs{}, FillHoles{}});
  EXPECT_EQ(fewer->checked.body.surface.vertices_m, again->checked.body.surface.vertices_m);
  EXPECT_EQ(fewer->checked.body.surface.faces, all->checked.body.surface.faces);
  EXPECT_NE(fewer->checked.body.surface.vertices_m, all->checked.body.surface.vertices_m);
}

TEST(Mend, SaysWhichStepFailed) {
  const std::vector<MendStep> steps = {Smooth{2}, CutLimb{10.0 * mm, 500.0 * mm}};
  const auto mended = mend_body(shapes::egg_limb(), kMillimetres, steps);
  ASSERT_FALSE(mended.ok());
  EXPECT_EQ(failed_step(mended.problem()), 1u);
  EXPECT_EQ(mended.problem().message.find("The limb cannot be cut"), 0u) << mended.problem().message;
  EXPECT_NE(with_step_named(mended.problem(), steps).message.find("Step 2 (cut): The limb cannot be cut"),
            std::string::npos)
      << mended.problem().message;
}

TEST(Mend, WithoutStepsItIsTheBodyCheck) {
  const RawMesh raw = shapes::egg_limb();
  const auto mended = mend_body(raw, kMillimetres, {});
  const auto checked = check_body(raw, kMillimetres);
  ASSERT_TRUE(mended.ok() && checked.ok());
  EXPECT_EQ(mended->checked.body.surface.vertices_m, checked->body.surface.vertices_m);
  EXPECT_EQ(mended->checked.report.notes, checked->report.notes);
}

}  // namespace
}  // namespace wrapgauge
