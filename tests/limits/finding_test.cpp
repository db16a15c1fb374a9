#include "model/limits/finding.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <memory>
#include <optional>
#include <string>

namespace wrapgauge {
namespace {

struct FlatGround : SignedDistance {
  DistanceSample at(const Vec3& point_m) const override { return {point_m.z(), Vec3::UnitZ(), Mat3::Zero()}; }
};

// Two square chambers on a made-up flat patch, 'low' distal and 'high' proximal; figures as told.
struct Case {
  LimitSet limits;
  LimitInputs inputs;
  InflationSetup setup;
  LoadPath path;
  EquilibriumState state;
  ContactMap map;
  ContactFigures figures;
  Audit audit;

  std::vector<Finding> found() const {
    return findings(limits, inputs, setup, path, state, map, figures, audit);
  }
  Eigen::VectorXd limit_pa() const {
    return limit_on_layout_pa(limits, inputs, setup, state, path.sheet, figures);
  }
};

Polygon square(double x_m, double y_m) {
  return {{x_m, y_m}, {x_m + 0.03, y_m}, {x_m + 0.03, y_m + 0.03}, {x_m, y_m + 0.03}};
}

Case two_chambers(double low_kpa, double high_kpa) {
  Case c;
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (limits) c.limits = *limits;
  c.inputs.part = BodyPart::kForearm;
  c.inputs.sites_known = true;
  c.setup.layout.chambers = {{"low", square(0.0, 0.0), {}, {}}, {"high", square(0.0, 0.05), {}, {}}};
  c.setup.flat.vertices_m.resize(6, 2);
  c.setup.flat.vertices_m << 0, 0, .03, 0, 0, .03, 0, .05, .03, .05, 0, .08;
  c.setup.flat.triangles.resize(2, 3);
  c.setup.flat.triangles << 0, 1, 2, 3, 4, 5;
  c.setup.flat.regions = {{RegionKind::kChamber, 0}, {RegionKind::kChamber, 1}};
  c.setup.flat.chamber_group = {GroupId{0}, GroupId{1}};
  c.setup.friction = 0.5;
  c.path.sheet.node_count = 6;
  c.path.sheet.skin_node = {5, 4, 3, 2, 1, 0};  // nodes need not be numbered as vertices are
  c.state.positions_m.resize(6, 3);
  for (int v = 0; v < 6; ++v)
    c.state.positions_m.row(5 - v) << c.setup.flat.vertices_m(v, 0), c.setup.flat.vertices_m(v, 1), 0.1;
  c.map.mean_1cm2_pa.resize(6);
  c.map.mean_1cm2_pa << low_kpa, low_kpa, low_kpa, high_kpa, high_kpa, high_kpa;
  c.map.mean_1cm2_pa *= 1e3;
  for (const auto& [name, peak, at] :
       {std::tuple{"low", low_kpa, Vec3(0, 0, .1)}, {"high", high_kpa, Vec3(0, .05, .1)}}) {
    ChamberFigures chamber;
    chamber.chamber = name;
    chamber.peak = peak * kPa;
    chamber.mean = 0.8 * peak * kPa;
    chamber.peak_at_m = at;
    chamber.contact_area = 8.0 * cm2;
    c.figures.chambers.push_back(chamber);
  }
  c.figures.peak_anywhere = std::max(low_kpa, high_kpa) * kPa;
  c.figures.peak_part = name_of(low_kpa > high_kpa ? "low" : "high");
  c.figures.total_force = 10.0 * newton;
  return c;
}

const Finding* about(const std::vector<Finding>& all, const std::string& where, const std::string& part) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Finding& f) {
    return f.where == where && english(f.sentence).find(part) != std::string::npos;
  });
  return found == all.end() ? nullptr : &*found;
}

// None, with a failure that says what was looked for, when there is no such finding.
std::optional<Severity> severity_about(const std::vector<Finding>& all, const std::string& where,
                                       const std::string& part) {
  if (const Finding* found = about(all, where, part)) return found->severity;
  ADD_FAILURE() << "there is no finding about '" << where << "' that says '" << part << "'";
  return std::nullopt;
}

// By hand: 4.2 x 1.5 = 6.3 kPa; 6.3 / 3 = 2.1 of the sustained soft limit. 1.2 x 1.5 = 1.8 < 2.0 warning.
TEST(Findings, CompareThePeakTimesTheModelFactorWithTheSoftRow) {
  const auto all = two_chambers(1.2, 4.2).found();
  const Finding* high = about(all, "high", "worst 1 cm²");
  ASSERT_TRUE(high);
  EXPECT_EQ(high->severity, Severity::kAboveLimit);
  EXPECT_NEAR(high->share_of_limit, 2.1, 1e-12);
  EXPECT_TRUE(
      english(high->sentence)
          .starts_with("Chamber 'high': 4.2 kPa (32 mmHg) on its worst 1 cm². With the 1.5 factor 6.3 "
                       "kPa (47 mmHg), above the limit of 3.0 kPa (23 mmHg) for a pad on a soft place, "
                       "held for a session (judgement, "))
      << english(high->sentence);
  const Finding* low = about(all, "low", "worst 1 cm²");
  ASSERT_TRUE(low);
  EXPECT_EQ(low->severity, Severity::kNote);
  EXPECT_NE(english(low->sentence).find("60 % of the limit"), std::string::npos) << english(low->sentence);
}

// 1.6 x 1.5 = 2.4 kPa, between 2.0 and 3.0.
TEST(Findings, WarnBetweenTheWarningAndTheLimit) {
  const auto all = two_chambers(0.5, 1.6).found();
  const Finding* high =
      about(all, "high", "above the warning at 2.0 kPa (15 mmHg) and below the limit of 3.0 kPa");
  ASSERT_TRUE(high);
  EXPECT_EQ(high->severity, Severity::kWarn);
}

TEST(Findings, RoundTheLimbUseTheCircumferentialRowEverywhere) {
  Case c = two_chambers(1.6, 0.8);
  c.figures.share_of_girth = 0.65;  // 1.6 x 1.5 = 2.4, between 2.0 and 3.0
  EXPECT_EQ(severity_about(c.found(), "low", "worst 1 cm²"), Severity::kWarn);
  c.figures.share_of_girth = 0.67;  // 1.6 x 1.5 = 2.4 > 2.0; 0.8 x 1.5 = 1.2 < 1.3
  const auto all = c.found();
  const Finding* low = about(all, "low", "for a cuff round the limb");
  ASSERT_TRUE(low);
  EXPECT_EQ(low->severity, Severity::kAboveLimit);
  EXPECT_NEAR(low->share_of_limit, 1.2, 1e-12);
  EXPECT_EQ(severity_about(all, "high", "for a cuff round the limb"), Severity::kNote);
}

TEST(Findings, UseTheRowOfTheUseAskedFor) {
  Case c = two_chambers(1.0, 3.2);  // 4.8 kPa: above 3.5, below 5.3; below the 5.0 of a pulse
  c.inputs.use = UsePattern::kShortHold;
  EXPECT_EQ(severity_about(c.found(), "high", "held for a minute at most"), Severity::kWarn);
  c.inputs.use = UsePattern::kPulse;  // 8 cm2 is too large for the pulse row
  EXPECT_TRUE(about(c.found(), "high", "held for a minute at most"));
  for (ChamberFigures& chamber : c.figures.chambers) chamber.contact_area = 4.0 * cm2;
  EXPECT_EQ(severity_about(c.found(), "high", "in pulses of 2 s at most"), Severity::kNote);
}

TEST(Findings, OverABonySiteUseItsRowWithinItsRadiusOnly) {
  Case c = two_chambers(1.0, 1.2);  // 1.8 kPa: above the bony 1.5, below the soft 2.0
  c.inputs.bony_sites = {{"styloid", Vec3(0.0, 0.08, 0.105), 12.0 * mm, 4.0 * mm}};
  const auto all = c.found();
  const Finding* site = about(all, "high", "Chamber 'high' over styloid");
  ASSERT_TRUE(site);
  EXPECT_NE(english(site->sentence).find("over bone or a nerve"), std::string::npos);
  EXPECT_EQ(english(site->place), "high over styloid");
  EXPECT_EQ(site->cause, Cause::kBone);
  EXPECT_EQ(site->severity, Severity::kAboveLimit);
  EXPECT_NEAR(site->share_of_limit, 1.8 / 1.5, 1e-12);
  // The chamber's own peak lies 30 mm away from it.
  EXPECT_EQ(severity_about(all, "high", "for a pad on a soft place"), Severity::kNote);
  c.figures.chambers[1].peak_at_m = Vec3(0.0, 0.075, 0.1);
  EXPECT_EQ(severity_about(c.found(), "high", "over bone or a nerve"), Severity::kAboveLimit);
  c.inputs.bony_sites[0].point_m.x() = 0.5;
  EXPECT_FALSE(about(c.found(), "high", "styloid"));
}

TEST(Findings, OverANerveGiveItsWordsAfterTheAdvice) {
  Case c = two_chambers(1.0, 1.5);
  c.inputs.bony_sites = {{"ulnar nerve", Vec3(0.0, 0.08, 0.105), 12.0 * mm, 4.0 * mm, SiteKind::kNerve,
                          "from memory", "Nothing may press here."}};
  bool said = false;
  for (const Finding& finding : c.found()) {
    if (english(finding.sentence).find("over ulnar nerve") == std::string::npos ||
        finding.severity == Severity::kNote)
      continue;
    said = true;
    EXPECT_NE(english(finding.sentence)
                  .find("Move the chamber off the nerve or lower the pressure. Nothing may press here."),
              std::string::npos)
        << english(finding.sentence);
    EXPECT_EQ(english(finding.sentence).find("weld"), std::string::npos) << english(finding.sentence);
  }
  EXPECT_TRUE(said);
}

TEST(Findings, OverABonySiteNameItRoundTheLimbTooWhenItsRowIsStricter) {
  Case c = two_chambers(1.0, 1.5);
  c.inputs.bony_sites = {{"styloid", Vec3(0.0, 0.08, 0.1), 12.0 * mm, 4.0 * mm}};
  c.figures.share_of_girth = 1.0;
  EXPECT_TRUE(about(c.found(), "high", "over bone or a nerve"));
  for (LimitRow& row : c.limits.rows)
    if (row.site == SiteClass::kCircumferential) row.limit = 1.4 * kPa;
  const auto all = c.found();
  EXPECT_FALSE(about(all, "high", "over bone or a nerve"));
  EXPECT_TRUE(about(all, "high", "Chamber 'high' over styloid"));
}

TEST(Findings, SayWhenTheHighestPressureLiesOutsideEveryChamber) {
  Case c = two_chambers(0.5, 1.0);
  c.figures.peak_part = Phrase::worded("seam");
  c.figures.peak_anywhere = 3.0 * kPa;
  const auto all = c.found();
  EXPECT_EQ(severity_about(all, "seam", "above the limit of 3.0 kPa"), Severity::kAboveLimit);
}

// 2.8 x 1.5 = 4.2 > 4.0; 3.6 x 1.5 = 5.4 > 5.3.
TEST(Findings, CautionAgainstATourniquetOnlyRoundTheLimb) {
  for (const auto& [peak_kpa, severity] : {std::pair{2.8, Severity::kWarn}, {3.6, Severity::kStop}}) {
    Case c = two_chambers(peak_kpa, 0.5);
    EXPECT_FALSE(about(c.found(), "whole cuff", "may hold back the blood beyond it"));
    c.figures.share_of_girth = 0.9;
    const auto all = c.found();
    const Finding* blood = about(all, "whole cuff", "may hold back the blood beyond it");
    ASSERT_TRUE(blood);
    EXPECT_EQ(blood->severity, severity);
    EXPECT_EQ(english(blood->action).starts_with("Do not wear it"), severity == Severity::kStop);
  }
}

TEST(Findings, WarnOfPressureThatRisesTowardsTheTrunkRoundALimb) {
  Case c = two_chambers(1.0, 1.3);  // means 0.80 and 1.04 kPa
  c.figures.share_of_girth = 0.9;
  const auto rising = c.found();
  const Finding* rise = about(rising, "whole cuff", "rises towards the trunk, from 0.8 kPa (6 mmHg)");
  ASSERT_TRUE(rise);
  EXPECT_EQ(rise->severity, Severity::kWarn);
  std::swap(c.figures.chambers[0].mean, c.figures.chambers[1].mean);
  EXPECT_FALSE(about(c.found(), "whole cuff", "rises"));
  c.figures.chambers[1].mean = c.figures.chambers[0].mean * 1.02;  // within the mesh error
  EXPECT_FALSE(about(c.found(), "whole cuff", "rises"));
}

TEST(Findings, SayHowFarTheTissueIsCompressed) {
  Case c = two_chambers(1.0, 1.0);
  EXPECT_FALSE(about(c.found(), "low", "compressed"));
  c.figures.chambers[0].tissue_strain = 0.25;
  c.figures.chambers[0].indentation_max = 5.0 * mm;
  const auto warned = c.found();
  EXPECT_EQ(
      severity_about(warned, "low", "compressed by 25 % of its depth (5.0 mm), above the warning of 20 %"),
      Severity::kWarn);
  c.figures.chambers[0].tissue_strain = 0.33;
  const auto above = c.found();
  const Finding* strain = about(above, "low", "above the limit of 30 %");
  ASSERT_TRUE(strain);
  EXPECT_EQ(strain->severity, Severity::kAboveLimit);
  EXPECT_NEAR(strain->share_of_limit, 1.1, 1e-12);
}

TEST(Findings, SayWhereABulgeRunsAway) {
  Case c = two_chambers(1.0, 1.0);
  c.path.limit_point = LimitPoint{GroupId{1}, 5.2 * kPa, 34.0 * mL};
  const auto all = c.found();
  const Finding* run =
      about(all, "'high'", "Chamber 'high' runs away above 5.2 kPa (39 mmHg), reached at 34 mL");
  ASSERT_TRUE(run);
  EXPECT_EQ(run->severity, Severity::kAboveLimit);
}

TEST(Findings, SayWhereTheMaterialIsKnownNoFurther) {
  Case c = two_chambers(1.0, 1.0);
  c.path.limit_point = LimitPoint{GroupId{1}, 5.2 * kPa, 34.0 * mL, {}, {}, LimitKind::kOverstretched};
  const auto all = c.found();
  const Finding* end = about(all, "'high'", "stretched further than its material is known for");
  ASSERT_TRUE(end);
  EXPECT_EQ(end->severity, Severity::kAboveLimit);
  EXPECT_FALSE(about(all, "'high'", "runs away"));
}

TEST(Findings, SayWhereASheetFolds) {
  Case c = two_chambers(1.0, 1.0);
  c.path.limit_point = LimitPoint{GroupId{1}, 5.2 * kPa, 34.0 * mL, {}, {}, LimitKind::kFolds};
  const auto all = c.found();
  const Finding* fold =
      about(all, "'high'", "Above 5.2 kPa (39 mmHg) and 34 mL in chamber 'high' a sheet folds.");
  ASSERT_TRUE(fold);
  EXPECT_EQ(fold->severity, Severity::kAboveLimit);
  EXPECT_FALSE(about(all, "'high'", "runs away"));
}

TEST(Findings, NameSheetsStretchedBeyondWhatIsUsual) {
  Case c = two_chambers(1.0, 1.0);
  ChamberFigures& low = c.figures.chambers[0];
  low.stretch_max = 1.4, low.share_of_break = 0.05;
  EXPECT_FALSE(about(c.found(), "low", "stretch to"));
  low.stretch_max = 1.7;
  EXPECT_EQ(severity_about(c.found(), "low", "above the warning at stretch 1.5"), Severity::kWarn);
  low.stretch_max = 2.3;
  EXPECT_EQ(severity_about(c.found(), "low", "above the limit of stretch 2.0"), Severity::kAboveLimit);
  low.stretch_max = 1.9, low.share_of_break = 0.3;
  EXPECT_EQ(severity_about(c.found(), "low", "above the limit of 25 % of elongation at break"),
            Severity::kAboveLimit);
}

// Friction 0.5 on 10 N of contact holds 5 N.
TEST(Findings, WeighThePushAlongTheLimbAgainstFriction) {
  Case c = two_chambers(1.0, 1.0);
  c.audit.push_along_axis = -3.0 * newton;
  const auto held = c.found();
  EXPECT_EQ(severity_about(held, "whole cuff", "away from the trunk with 3.0 N"), Severity::kNote);
  c.audit.push_along_axis = -6.0 * newton;
  const auto slips = c.found();
  EXPECT_EQ(severity_about(slips, "whole cuff", "can hold only 5.0 N: it will creep"), Severity::kWarn);
}

TEST(Findings, WarnWhenTheForcesDoNotBalance) {
  Case c = two_chambers(1.0, 1.0);
  c.audit.cut_balance = 0.019;
  EXPECT_FALSE(about(c.found(), "audit", "balance"));
  c.audit.cut_balance = 0.035;
  EXPECT_EQ(severity_about(c.found(), "audit", "balance only to 3.5 %"), Severity::kWarn);
}

TEST(Findings, AlwaysTellTheModelFactorTheTimesAndTheSeams) {
  Case c = two_chambers(0.0, 0.0);
  c.figures.chambers[1].seam_tension = 0.123 * N_per_mm;
  const auto all = c.found();
  EXPECT_TRUE(about(all, "model factor", "multiplied by 1.5"));
  EXPECT_TRUE(about(all, "time on the skin", "apply only with these times: look at the skin after 15 min"));
  EXPECT_TRUE(about(all, "high", "0.12 N/mm, at chamber 'high'"));
  EXPECT_TRUE(about(all, "low", "not predicted to touch the skin"));
}

TEST(Findings, CarryTheReasonOfAnOverride) {
  Case c = two_chambers(0.5, 0.5);
  EXPECT_FALSE(about(c.found(), "limits", ""));
  c.limits.override_words = Phrase::worded("Limits were overridden, for a reason.");
  const auto all = c.found();
  ASSERT_TRUE(about(all, "limits", "for a reason"));
  EXPECT_EQ(severity_about(all, "limits", "for a reason"), Severity::kWarn);
}

TEST(Findings, StandWorstFirst) {
  Case c = two_chambers(4.0, 6.0);
  c.audit.cut_balance = 0.05;
  const auto all = c.found();
  ASSERT_GE(all.size(), 4u);
  EXPECT_EQ(all[0].where, "high");
  EXPECT_EQ(all[1].where, "low");
  EXPECT_EQ(all[2].where, "audit");
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const Finding& a, const Finding& b) {
    return a.severity != b.severity ? a.severity > b.severity : a.share_of_limit > b.share_of_limit;
  }));
}

TEST(Findings, TellOfASheetThatIsAboutToFold) {
  Case c = two_chambers(1.0, 1.0);
  c.path.states = {c.state};
  EXPECT_FALSE(about(c.found(), "sheets", "close to buckling"));
  c.path.states.back().about_to_buckle = true;
  ASSERT_TRUE(about(c.found(), "sheets", "close to buckling"));
  EXPECT_EQ(severity_about(c.found(), "sheets", "close to buckling"), Severity::kWarn);
}

// A point stands for 1 cm2: 1 N on it is 10 kPa, which is what is counted on.
TEST(Findings, TellOfAGluedRimThatBearsAsMuchAsItsBondIsCountedOn) {
  Case c = two_chambers(0.0, 0.0);
  c.setup.body = std::make_shared<FlatGround>();
  c.setup.layout.rim_bonded = true;
  c.state.contact_area_m2 = Eigen::VectorXd::Constant(6, 1e-4);
  c.state.contact_force_n = Points3::Zero(6, 3);
  const auto tells = [&](double shear_n, double push_n) {
    c.state.contact_force_n.row(2) << shear_n, 0.0, push_n;
    c.path.states = {c.state};
    return about(c.found(), "rim", "counted on");
  };
  EXPECT_FALSE(tells(0.6, -0.6));
  EXPECT_TRUE(tells(0.6, -0.9));
  EXPECT_TRUE(tells(1.0, 0.0));
  EXPECT_FALSE(tells(0.6, 5.0));  // skin that pushes does not pull it off
  c.setup.layout.rim_bonded = false;
  EXPECT_FALSE(tells(1.0, 0.0));
}

TEST(Findings, TellOfADeviceThatNothingHolds) {
  Case c = two_chambers(0.0, 0.0);
  EXPECT_FALSE(about(c.found(), "whole device", "holds the device"));  // no body
  c.setup.body = std::make_shared<FlatGround>();
  ASSERT_TRUE(about(c.found(), "whole device", "holds the device"));
  c.setup.layout.rim_bonded = true;
  EXPECT_FALSE(about(c.found(), "whole device", "holds the device"));
  c.setup.layout.rim_bonded = false;
  c.setup.layout.closure = Closure{0.0, 200.0 * mm, std::nullopt, 0.0};
  EXPECT_FALSE(about(c.found(), "whole device", "holds the device"));
}

TEST(Findings, NeverCallAnythingSafe) {
  for (double peak_kpa : {0.0, 1.0, 3.0, 9.0}) {
    Case c = two_chambers(peak_kpa, 0.5 * peak_kpa);
    c.figures.share_of_girth = peak_kpa > 2.0 ? 1.0 : 0.2;
    for (const Finding& finding : c.found())
      EXPECT_EQ(english(finding.sentence).find("safe"), std::string::npos);
  }
}

// A plan whose sites nobody marked: what would be below the soft limit is above the bony one, and that is
// said before anything else.
TEST(PartFindings, OfABodyWithoutKnownSitesSayFirstThatTheBonyRowHoldsEverywhere) {
  Case c = two_chambers(0.5, 1.2);  // 1.8 kPa: above the bony 1.5, below the soft 2.0
  EXPECT_EQ(severity_about(c.found(), "high", "for a pad on a soft place"), Severity::kNote);
  c.inputs.sites_known = false;
  const auto all = c.found();
  EXPECT_NE(
      english(all.front().sentence).find("the limit over bone or nerve, 1.5 kPa (11 mmHg), holds everywhere"),
      std::string::npos)
      << english(all.front().sentence);
  EXPECT_EQ(all.front().severity, Severity::kWarn);
  EXPECT_EQ(severity_about(all, "high", "over bone or a nerve"), Severity::kAboveLimit);
  EXPECT_TRUE(about(all, "time on the skin", "look at the skin after 10 min and every 20 min afterwards"));
  EXPECT_TRUE(c.limit_pa().isApproxToConstant(1500.0));
}

TEST(PartFindings, OfABodyWhosePartNobodyNamedAreTheStrictest) {
  Case c = two_chambers(0.5, 1.2);
  c.inputs.part.reset();
  EXPECT_EQ(severity_about(c.found(), "high", "over bone or a nerve"), Severity::kAboveLimit);
  EXPECT_EQ(c.found().front().source_key, "part");
  c.figures.share_of_girth = 0.67;
  EXPECT_EQ(severity_about(c.found(), "body", "no clinician is named"), Severity::kStop);
}

TEST(PartFindings, OfATestObjectHoldItAgainstNoLimitAndSaySo) {
  Case c = two_chambers(3.0, 9.0);
  c.figures.share_of_girth = 1.0;
  c.figures.chambers[0].tissue_strain = 0.5;
  c.inputs.part = BodyPart::kTestObject;
  c.inputs.sites_known = false;
  const auto all = c.found();
  EXPECT_EQ(severity_about(all, "test object", "no limit for skin or tissue is applied"), Severity::kWarn);
  for (const Finding& finding : all) {
    EXPECT_LE(finding.severity, Severity::kWarn) << english(finding.sentence);
    EXPECT_EQ(english(finding.sentence).find("limit of"), std::string::npos) << english(finding.sentence);
  }
  EXPECT_TRUE((c.limit_pa().array() == std::numeric_limits<double>::infinity()).all());
}

TEST(PartFindings, StopWhatGoesAllRoundChestAbdomenOrHeadUnlessAClinicianIsNamed) {
  for (const BodyPart part : kBodyParts) {
    if (is_refused(part) || part == BodyPart::kTestObject) continue;
    Case c = two_chambers(0.1, 0.1);
    c.inputs.part = part;
    const std::string name(body_part_name(part));
    c.figures.share_of_girth = 0.66;
    EXPECT_FALSE(about(c.found(), name, "girth")) << name;
    c.figures.share_of_girth = 2.0 / 3.0;
    const auto all = c.found();
    if (!needs_clearance_all_round(part)) {
      EXPECT_FALSE(about(all, name, "girth")) << name;
      continue;
    }
    EXPECT_EQ(severity_about(all, name, "no clinician is named who allows it"), Severity::kStop) << name;
    c.inputs.cleared_by = Clearance{"A. Example", "respiratory physician", "2026-11-20"};
    EXPECT_EQ(severity_about(c.found(), name, "A. Example (respiratory physician) allowed it on 2026-11-20"),
              Severity::kWarn)
        << name;
  }
}

// Only a reason in words lets a set call more of a girth "round the limb"; breathing is not up to it.
TEST(PartFindings, StopAllRoundTheChestWhateverShareOfTheGirthTheSetNames) {
  Case c = two_chambers(0.1, 0.1);
  c.inputs.part = BodyPart::kChest;
  c.limits.circumferential_share = 1.0;
  c.figures.share_of_girth = 0.7;
  EXPECT_EQ(severity_about(c.found(), "chest", "it may hinder breathing"), Severity::kStop);
}

TEST(PartFindings, StopOnNeckAndFaceWhoeverAllowsIt) {
  for (const BodyPart part : {BodyPart::kNeck, BodyPart::kFace}) {
    Case c = two_chambers(0.1, 0.1);
    c.inputs.part = part;
    c.inputs.cleared_by = Clearance{"A. Example", "respiratory physician", "2026-11-20"};
    EXPECT_EQ(severity_about(c.found(), std::string(body_part_name(part)), "no one can allow it"),
              Severity::kStop);
  }
}

TEST(LimitOnLayout, FollowsBonySitesGirthAndPressedArea) {
  Case c = two_chambers(1.0, 1.0);
  EXPECT_TRUE(c.limit_pa().isApproxToConstant(3000.0));
  c.inputs.bony_sites = {{"styloid", Vec3(0.0, 0.08, 0.1), 5.0 * mm, 4.0 * mm}};
  Eigen::VectorXd expected(6);
  expected << 3000, 3000, 3000, 3000, 3000, 1500;
  EXPECT_TRUE(c.limit_pa().isApprox(expected)) << c.limit_pa();
  c.figures.share_of_girth = 1.0;
  expected << 2000, 2000, 2000, 2000, 2000, 1500;
  EXPECT_TRUE(c.limit_pa().isApprox(expected)) << c.limit_pa();
  c.figures.share_of_girth = 0.0;
  c.inputs.use = UsePattern::kPulse;
  c.figures.chambers[0].contact_area = 3.0 * cm2;
  expected << 7500, 7500, 7500, 5300, 5300, 2700;
  EXPECT_TRUE(c.limit_pa().isApprox(expected)) << c.limit_pa();
}

}  // namespace
}  // namespace wrapgauge
