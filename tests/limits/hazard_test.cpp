#include "model/limits/hazard.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "model/core/number_text.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// One pad at 4 kPa and 20 mL (5 mL/kPa), predicted to press 1.5 kPa on a soft place.
class Hazards : public testing::Test {
 protected:
  void SetUp() override {
    const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
    ASSERT_TRUE(limits.ok());
    limits_ = *limits;
    use_.part = BodyPart::kForearm;
    use_.sites_known = true;
    worn_ = hand_made::flat_pad(4, 0.04);
    worn_.setup.layout.inlets = {{"pump", Vec2(0.02, 0.02)}};
    worn_.path.states.push_back(worn_.path.states[0]);
    worn_.path.states.back().group_pressure_pa[0] = 4e3;
    worn_.path.states.back().group_volume_m3[0] = 20e-6;
    ChamberFigures chamber;
    chamber.chamber = "middle";
    chamber.gauge = 4.0 * kPa, chamber.volume = 20.0 * mL, chamber.peak = 1.5 * kPa;
    chamber.stretch_max = 1.2, chamber.share_of_break = 0.03, chamber.seam_tension = 0.12 * N_per_mm;
    figures_.chambers = {chamber};
    press(1.5 * kPa);
  }
  // Everywhere alike in the last state.
  void press(Pressure pressure) {
    figures_.peak_anywhere = pressure;
    EquilibriumState& last = worn_.path.states.back();
    last.contact_pressure_pa.setConstant(pressure.si());
    map_.mean_1cm2_pa = last.contact_pressure_pa;
  }
  std::vector<Hazard> all() const {
    const std::vector<InletRelief> relief =
        relief_settings(limits_, use_, worn_.setup, worn_.path, map_, figures_);
    return hazards({limits_, use_, worn_.setup, worn_.path, map_, figures_, audit_, exposure_, relief,
                    supply_, filling_});
  }
  Hazard about(const std::string& name) const {
    for (const Hazard& hazard : all())
      if (english(hazard.name) == name) return hazard;
    ADD_FAILURE() << name;
    return {};
  }
  static bool says(const Hazard& hazard, const std::string& part) {
    return english(hazard.sentence).find(part) != std::string::npos;
  }
  LimitSet limits_;
  LimitInputs use_;
  hand_made::Worn worn_;
  ContactFigures figures_;
  ContactMap map_;
  Audit audit_;
  std::optional<SkinExposure> exposure_;
  Supply supply_;
  Filling filling_;
};

TEST_F(Hazards, OfTheDeviceTellTheirNumbers) {
  EXPECT_TRUE(says(about("A bulge that runs away"), "No bulge ran away up to 4.0 kPa (30 mmHg) and 20.0 mL"));
  EXPECT_TRUE(says(about("A sheet that tears"), "1.20 times its length, 3 % of its elongation at break"));
  EXPECT_TRUE(says(about("A seam that opens"), "0.12 N/mm"));
  worn_.path.limit_point = LimitPoint{GroupId(0), 3.2 * kPa, 30.0 * mL};
  EXPECT_EQ(about("A bulge that runs away").severity, Severity::kAboveLimit);
}

// The finding ranks the seams: beside it the hazard gives the same figure, not that of a triangle.
TEST_F(Hazards, OfSeamsGiveTheFigureThatTheSeamsAreRankedBy) {
  SeamFigures seam;
  seam.seam = Phrase::worded("edge of chamber '%1'", {name_of("middle")});
  seam.largest = 0.09 * N_per_mm;
  figures_.seams = {seam};
  EXPECT_TRUE(says(about("A seam that opens"), "edge of chamber 'middle', pulled by 0.09 N/mm"));
}

// Warmed: see the soft chamber of the pneumatics tests, 4.2 kPa; rigid 4.5 kPa. Flight: 5 p (75 + p) = 20 x
// 105.325, p = 5.2 kPa; rigid 26.3 kPa.
TEST_F(Hazards, OfClosedAirTellHowFarItRises) {
  const Hazard warm = about("Sealed air that warms");
  EXPECT_TRUE(says(warm, "rises from 4.0 kPa (30 mmHg) to 4.2 kPa")) << english(warm.sentence);
  EXPECT_TRUE(says(warm, "would gain 4.5 kPa (34 mmHg)")) << english(warm.sentence);
  const Hazard flight = about("Sealed air in flight or on a mountain");
  EXPECT_TRUE(says(flight, "to 5.2 kPa (39 mmHg)")) << english(flight.sentence);
  EXPECT_TRUE(says(flight, "would gain 26.3 kPa (197 mmHg)")) << english(flight.sentence);
  filling_.medium = Medium::kWater;
  EXPECT_TRUE(says(about("Sealed air that warms"), "Not calculated: the filling is no air"));
}

// A chamber that gives way by 20 mL in its last pascal takes the warm air at hardly more pressure.
TEST_F(Hazards, OfClosedAirShowARiseHoweverSmall) {
  worn_.path.states.push_back(worn_.path.states.back());
  worn_.path.states.back().group_pressure_pa[0] = 4001.0;
  worn_.path.states.back().group_volume_m3[0] = 40e-6;
  const std::string warm = english(about("Sealed air that warms").sentence);
  EXPECT_NE(warm.find("rises from 4.0 kPa (30 mmHg) to 4.00"), std::string::npos) << warm;
}

// With 20 mL of tube and valve beside the 20 mL of the chamber there is more air to warm: (101.325 + p)(5 p +
// 20) = 105.325 x 40 x 306.15 / 293.15 mL kPa, p = 4.33 kPa; and to climb: (75 + p)(5 p + 20) = 105.325 x 40,
// p = 6.36 kPa. Without it 4.2 and 5.2 kPa.
TEST_F(Hazards, OfClosedAirCountTheAirInTheDeadVolume) {
  const auto root = [](double atmosphere, double right) {
    const double b = 5.0 * atmosphere + 20.0;  // 5 p2 + b p + 20 atmosphere - right = 0
    return (-b + std::sqrt(b * b - 20.0 * (20.0 * atmosphere - right))) / 10.0;
  };
  supply_.dead_volume = 20.0 * mL;
  const double warm_kpa = root(101.325, 105.325 * 40.0 * 306.15 / 293.15),
               high_kpa = root(75.0, 105.325 * 40.0);
  ASSERT_NEAR(warm_kpa, 4.33, 0.01);
  ASSERT_NEAR(high_kpa, 6.36, 0.01);
  EXPECT_TRUE(says(about("Sealed air that warms"), "from 4.0 kPa (30 mmHg) to " + fixed_text(warm_kpa, 1)))
      << english(about("Sealed air that warms").sentence);
  const Hazard flight = about("Sealed air in flight or on a mountain");
  EXPECT_TRUE(says(flight, "from 4.0 kPa (30 mmHg) to " + fixed_text(high_kpa, 1)))
      << english(flight.sentence);
}

// Limit 3 kPa, 1.85 kPa x 1.5 = 2.775 kPa on the skin at 4 kPa inside. Warmed to 4.17 kPa the skin takes
// 2.89 kPa, in the cabin at 5.24 kPa it takes 3.64 kPa.
TEST_F(Hazards, OfClosedAirWarnWhenTheSkinWouldBePressedBeyondItsLimit) {
  press(1.85 * kPa);
  EXPECT_EQ(about("Sealed air that warms").severity, Severity::kNote);
  EXPECT_EQ(about("Sealed air in flight or on a mountain").severity, Severity::kWarn);
}

// 1.5 kPa x 1.5 is three quarters of the 3 kPa of a soft place; 1.25 of it would be met at 6.7 kPa inside,
// beyond a quarter above the planned 4 kPa: 5 kPa.
TEST_F(Hazards, OfTheSupplyAreHeldAgainstTheReliefRule) {
  EXPECT_EQ(about("A source that can exceed the limit").severity, Severity::kWarn);
  EXPECT_TRUE(says(about("A source that can exceed the limit"), "Not calculated"));
  supply_.syringe = Syringe{60.0 * mL, 28.0 * mm, 50.0 * newton};
  EXPECT_TRUE(says(about("A source that can exceed the limit"),
                   "A thumb pushing 50 N on a 60 mL syringe can reach 81.2 kPa (609 mmHg), 16 times the "
                   "lowest relief setting of 5.0 kPa (37 mmHg)"))
      << english(about("A source that can exceed the limit").sentence);
  EXPECT_TRUE(says(about("A valve or pump that sticks"),
                   "has no relief valve; it should open at no more than 5.0 kPa (37 mmHg) for inlet 'pump'"))
      << english(about("A valve or pump that sticks").sentence);
  supply_.relief = 5.0 * kPa;
  EXPECT_EQ(about("A valve or pump that sticks").severity, Severity::kNote);
  EXPECT_EQ(about("A source that can exceed the limit").severity, Severity::kNote);
  supply_.relief = 6.0 * kPa;
  EXPECT_EQ(about("A valve or pump that sticks").severity, Severity::kAboveLimit);
  supply_.relief = 3.0 * kPa;
  EXPECT_TRUE(says(about("A valve or pump that sticks"), "never reaches the planned 4.0 kPa"));
  supply_.inlet_relief["pump"] = 6.0 * kPa;
  EXPECT_EQ(about("A valve or pump that sticks").severity, Severity::kAboveLimit);
}

// 5.04 kPa is 5.0 kPa when it is rounded, which is what is allowed.
TEST_F(Hazards, OfAValveThatOpensALittleTooLateShowTheExcess) {
  supply_.relief = 5.04 * kPa;
  const Hazard stuck = about("A valve or pump that sticks");
  EXPECT_EQ(stuck.severity, Severity::kAboveLimit);
  EXPECT_TRUE(says(stuck, "opens at 5.04 kPa")) << english(stuck.sentence);
}

// Deflated and fastened, 0.9 kPa x 1.5 = 1.35 kPa; a place counts as rested below the 1.0 kPa warning of the
// strictest sustained row.
TEST_F(Hazards, OfAVentedDeviceThatStillPressesTellHowHard) {
  EXPECT_EQ(about("Cannot get it off").severity, Severity::kNote);
  worn_.path.states.front().contact_pressure_pa.setConstant(0.9e3);
  const Hazard trapped = about("Cannot get it off");
  EXPECT_EQ(trapped.severity, Severity::kWarn);
  EXPECT_TRUE(says(trapped, "still fastened, it presses up to 1.4 kPa")) << english(trapped.sentence);
  EXPECT_NE(english(trapped.control).find("open the closure"), std::string::npos);
}

TEST_F(Hazards, HaveARowEachAndLeaveOpenWhatNobodyCalculated) {
  const std::vector<Hazard> rows = all();
  ASSERT_EQ(rows.size(), static_cast<std::size_t>(HazardKind::kDirt) + 1);
  std::set<HazardKind> kinds;
  for (const Hazard& row : rows) {
    kinds.insert(row.kind);
    EXPECT_FALSE(english(row.name).empty());
    EXPECT_FALSE(english(row.control).empty()) << english(row.name);
    if (row.to_fill()) {
      EXPECT_EQ(row.severity, Severity::kNote) << english(row.name);
    }
  }
  EXPECT_EQ(kinds.size(), rows.size());
  for (const char* open : {"Tube snags or is swallowed", "Fall, if the cue affects balance", "Allergy",
                           "What uncured silicone gives off", "Latex", "Dirt", "Power lost"})
    EXPECT_TRUE(about(open).to_fill()) << open;
}

TEST_F(Hazards, OfANerveNameTheSiteThatIsPressedMost) {
  EXPECT_TRUE(says(about("Pressure on a nerve"), "No nerve site that is marked"));
  use_.sites_known = false;
  EXPECT_TRUE(says(about("Pressure on a nerve"), "nobody has marked the nerve sites"));
  use_.bony_sites = {{"median nerve", Vec3(0.02, 0.02, 0.0), 10.0 * mm, 8.0 * mm, SiteKind::kNerve}};
  EXPECT_TRUE(
      says(about("Pressure on a nerve"), "2.2 kPa (17 mmHg) with the model factor, over 'median nerve'") ||
      says(about("Pressure on a nerve"), "2.3 kPa (17 mmHg) with the model factor, over 'median nerve'"))
      << english(about("Pressure on a nerve").sentence);
}

// 0.495 s for 2 mm of bore and a metre; sixteen times as long for 1 mm.
TEST_F(Hazards, OfLettingGoAreHeldAgainstThreeSeconds) {
  EXPECT_TRUE(says(about("Vents too slowly"), "the plan gives no tubing"));
  supply_.tubing = Tubing{1.0 * metre, 2.0 * mm};
  EXPECT_TRUE(
      says(about("Vents too slowly"), "falls below 0.5 kPa (4 mmHg) in 0.5 s; 3 s at most is allowed"));
  EXPECT_TRUE(says(about("Vents too slowly"), "turbulent (Reynolds number"));
  supply_.tubing = Tubing{1.0 * metre, 1.0 * mm};
  EXPECT_EQ(about("Vents too slowly").severity, Severity::kAboveLimit);
  EXPECT_TRUE(says(about("Vents too slowly"), "in 7.9 s"));
}

TEST(HeatHazard, HoldsTemperatureAndTimeAgainstTheRules) {
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  ASSERT_TRUE(limits.ok());
  const auto severity = [&](double celsius, double minutes, bool sustained = false) {
    return heat_hazard(limits->heat, {Medium::kGel, celsius, minutes * minute}, sustained).severity;
  };
  EXPECT_EQ(severity(38.0, 15.0), Severity::kNote);
  EXPECT_EQ(severity(38.0, 25.0), Severity::kAboveLimit);
  EXPECT_EQ(severity(40.5, 10.0), Severity::kAboveLimit);
  EXPECT_EQ(severity(42.0, 1.0), Severity::kStop);
  EXPECT_EQ(severity(51.0, 1.0), Severity::kStop);
  EXPECT_EQ(severity(38.0, 15.0, true), Severity::kAboveLimit);  // never heat and held pressure
  EXPECT_EQ(severity(16.0, 10.0), Severity::kNote);
  EXPECT_EQ(severity(16.0, 20.0), Severity::kAboveLimit);
  EXPECT_EQ(severity(10.0, 5.0), Severity::kAboveLimit);
  EXPECT_EQ(severity(25.0, 60.0), Severity::kNote);
  // Without a time it is taken to lie on for longer than any rule allows.
  for (const double celsius : {38.0, 16.0})
    EXPECT_EQ(heat_hazard(limits->heat, {Medium::kGel, celsius, std::nullopt}, false).severity,
              Severity::kAboveLimit)
        << celsius;
  // ISO 13732-1:2006, from memory: 48 C in 10 min.
  const Hazard burn = heat_hazard(limits->heat, {Medium::kWater, 48.0, 10.0 * minute}, false);
  EXPECT_NE(english(burn.sentence)
                .find("Skin burns at 48 °C in 10 min (from memory, burn thresholds of ISO 13732-1"),
            std::string::npos)
      << english(burn.sentence);
}

}  // namespace
}  // namespace wrapgauge
