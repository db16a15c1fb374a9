// What a card says of a place: one card a place, what it comes from, where it points.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/limits/finding.hpp"
#include "model/limits/pressure_finding.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// A square pad held by a closure, evenly pressed: `deflated_kpa` fastened only, `full_kpa` at 4 kPa inside.
struct CardCase {
  LimitSet limits;
  LimitInputs inputs;
  hand_made::Worn worn;
  ContactFigures figures;

  std::vector<Finding> found() const {
    const EquilibriumState& last = worn.path.states.back();
    const ContactMap map = contact_map(worn.setup, worn.path, last);
    return pressure_findings(limits, inputs, pressed_state(worn.setup, worn.path, last, map, figures));
  }
};

CardCase fastened_pad(double deflated_kpa, double full_kpa) {
  CardCase c;
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (limits) c.limits = *limits;
  c.inputs.part = BodyPart::kForearm;
  c.inputs.sites_known = true;
  c.worn = hand_made::flat_pad(6, 0.04);
  c.worn.setup.layout.closure = Closure{0.0, 200.0 * mm, std::nullopt, 0.0};
  EquilibriumState deflated = c.worn.path.states[0], full = deflated;
  deflated.contact_pressure_pa.setConstant(1e3 * deflated_kpa);
  full.contact_pressure_pa.setConstant(1e3 * full_kpa);
  full.group_pressure_pa[0] = 4e3;
  c.worn.path.states = {deflated, full};
  ChamberFigures chamber;
  chamber.chamber = "middle";
  chamber.peak = full_kpa * kPa;
  chamber.peak_at_m = Vec3(0.02, 0.02, 0.0);
  chamber.peak_at_flat_m = Vec2(0.02, 0.02);
  chamber.contact_area = 16.0 * cm2;
  c.figures.chambers = {chamber};
  c.figures.peak_anywhere = full_kpa * kPa;
  c.figures.peak_part = name_of("middle");
  c.figures.peak_at_m = chamber.peak_at_m;
  return c;
}

// Limit 3.0 on a soft place, warning 2.0, factor 1.5: 2.4 kPa is above the limit, 1.5 kPa above the warning.
TEST(Card, SaysWhetherTheFasteningAloneOrTheInflationIsToBlame) {
  const auto cause = [](double deflated_kpa, double full_kpa) {
    const auto found = fastened_pad(deflated_kpa, full_kpa).found();
    EXPECT_EQ(found.size(), 1u);
    return found.empty() ? Cause::kNone : found.front().cause;
  };
  EXPECT_EQ(cause(0.2, 2.4), Cause::kInflation);
  EXPECT_EQ(cause(1.9, 2.4), Cause::kInflation);  // 2.85 kPa: deflated it is only above the warning
  EXPECT_EQ(cause(2.1, 2.4), Cause::kFastening);  // 3.15 kPa: above the limit with no air at all
  EXPECT_EQ(cause(1.4, 1.5), Cause::kFastening);
  EXPECT_EQ(english(fastened_pad(2.1, 2.4).found().front().action), "Fasten it more loosely.");
}

TEST(Card, WithoutAClosureNothingIsBlamedOnTheFastening) {
  CardCase c = fastened_pad(2.1, 2.4);
  c.worn.setup.layout.closure.reset();
  EXPECT_EQ(c.found().front().cause, Cause::kInflation);
}

// 1.2 x 1.5 = 1.8 kPa: above the bony 1.5 and below the soft warning, so the bone is to blame.
TEST(Card, ChamberStrapAndBonySiteAtOnePlaceAreOneFact) {
  CardCase c = fastened_pad(0.1, 1.2);
  c.inputs.bony_sites = {{"ulna", Vec3(0.02, 0.02, 0.0), 4.0 * mm, 4.0 * mm},
                         {"ulnar nerve", Vec3(0.024, 0.02, 0.0), 4.0 * mm, 4.0 * mm, SiteKind::kNerve}};
  c.figures.peak_part = Phrase::worded("seam");
  c.figures.peak_at_m = Vec3(0.02, 0.027, 0.0);
  c.figures.peak_anywhere = 1.25 * kPa;
  const auto found = c.found();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].cause, Cause::kBone);
  EXPECT_EQ(found[0].severity, Severity::kAboveLimit);
  EXPECT_NE(english(found[0].place).find("ulna"), std::string::npos) << english(found[0].place);
  EXPECT_NE(english(found[0].place).find("ulnar nerve"), std::string::npos) << english(found[0].place);
  EXPECT_NE(english(found[0].action).find("off the"), std::string::npos) << english(found[0].action);
}

// The stricter of what is merged is kept: the seam's 1.25 kPa on a soft limit is less of it than 1.2 over
// bone.
TEST(Card, OfAMergedPlaceKeepsTheStrictest) {
  CardCase c = fastened_pad(0.1, 1.2);
  c.figures.peak_part = Phrase::worded("seam");
  c.figures.peak_at_m = Vec3(0.02, 0.027, 0.0);
  c.figures.peak_anywhere = 1.9 * kPa;
  auto found = c.found();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].where, "seam");
  EXPECT_EQ(found[0].cause, Cause::kEdge);
  c.figures.peak_at_m = Vec3(0.02, 0.035, 0.0);  // 15 mm away: their square centimetres do not meet
  EXPECT_EQ(c.found().size(), 2u);
}

// Both ends are pressed beyond the limit and the middle is not: the chamber's highest place lies in one of
// them, and the other has a card of its own.
TEST(Card, EveryStretchOfSkinAboveItsLimitHasACardThatLiesInIt) {
  CardCase c = fastened_pad(0.1, 1.0);
  EquilibriumState& full = c.worn.path.states.back();
  for (Eigen::Index v = 0; v < full.contact_pressure_pa.size(); ++v) {
    const double x = c.worn.setup.flat.vertices_m(v, 0);
    full.contact_pressure_pa[v] = x < 0.012 ? 6e3 : x > 0.028 ? 5e3 : 0.0;
  }
  c.figures.chambers[0].peak = c.figures.peak_anywhere = 6.0 * kPa;
  c.figures.chambers[0].peak_at_m = c.figures.peak_at_m = Vec3(0.0, 0.02, 0.0);
  const auto found = c.found();
  ASSERT_EQ(found.size(), 2u);
  for (const Finding& finding : found) EXPECT_EQ(finding.severity, Severity::kAboveLimit);
  EXPECT_LT(found[0].at_m->x(), 0.012);
  EXPECT_GT(found[1].at_m->x(), 0.028);
}

TEST(Card, HasEveryFieldAndPointsToItsPlace) {
  const Finding card = fastened_pad(0.1, 2.4).found().front();
  ASSERT_TRUE(card.measured && card.at_m);
  EXPECT_EQ(card.measured->amount, Amount::kPressure);
  EXPECT_NEAR(card.measured->predicted, 2400.0, 1e-9);
  EXPECT_NEAR(card.measured->with_factor, 3600.0, 1e-9);
  EXPECT_NEAR(card.measured->limit, 3000.0, 1e-9);
  EXPECT_NEAR(card.share_of_limit, 1.2, 1e-12);
  EXPECT_EQ(english(card.measured->row), "for a pad on a soft place, held for a session");
  EXPECT_EQ(card.source_key, "soft, sustained");
  EXPECT_EQ(english(card.place), "middle");
  EXPECT_TRUE(card.at_m->isApprox(Vec3(0.02, 0.02, 0.0)));
  EXPECT_EQ(english(card.action), "Lower the pressure or make the chamber larger.");
}

}  // namespace
}  // namespace wrapgauge
