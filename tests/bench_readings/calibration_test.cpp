// From made readings to a calibration, and from there to what an estimate takes over.
#include <gtest/gtest.h>

#include "model/bench/calibration_file.hpp"
#include "model/bench/readings_file.hpp"
#include "model/core/file.hpp"
#include "model/pipeline/prepare.hpp"
#include "tests/bench_readings/bench_rows.hpp"

namespace wrapgauge {
namespace {

using namespace bench;

class CalibrationFile : public testing::Test {
 protected:
  void SetUp() override {
    result_.calibration.readings = 12;
    result_.calibration.kinds = "6 strip, 6 fill";
    result_.calibration.date = "2026-11-30";
    result_.calibration.factors = {1.2, 0.8, 0.1 * mm, -0.05 * mm, 1.3};
    result_.calibration.model_factor = 1.27;
    result_.calibration.model_factor_why = "The factor is 1.27.";
    result_.calibration.seams = SeamHold{0.5 * N_per_mm, 3};
    result_.calibration.part = BodyPart::kForearm;
    result_.calibration.layout_hash = layout_hash(plan_.layout);
    result_.calibration.materials_hash = materials_hash(plan_, body_, resources_).value();
    EXPECT_TRUE(write_file_atomically(folder_.path() / "readings.csv", "id,kind\n"));
    result_.calibration.readings_hash = hash_text("id,kind\n");
    result_.calibration.readings_file = "readings.csv";
    EXPECT_TRUE(write_file_atomically(file(), calibration_json(result_)));
  }
  std::filesystem::path file() const { return folder_.path() / "calibration.json"; }
  void expect_stale(const Plan& plan, const Resources& resources, const std::string& words) const {
    const auto read = read_calibration(file(), plan, body_, resources);
    ASSERT_FALSE(read);
    EXPECT_NE(read.problem().message.find(words), std::string::npos) << read.problem().message;
  }

  small_band::Folder folder_{"calibration"};
  Plan plan_ = small_band::plan(1.0 * kPa);
  Body body_ = small_band::body();
  Resources resources_ = small_band::resources();
  BenchResult result_;
};

TEST_F(CalibrationFile, ReadsBackWhatItSays) {
  const auto read = read_calibration(file(), plan_, body_, resources_);
  ASSERT_TRUE(read) << read.problem().message;
  EXPECT_EQ(read->factors, result_.calibration.factors);
  EXPECT_DOUBLE_EQ(read->model_factor, 1.27);
  ASSERT_TRUE(read->seams);
  EXPECT_NEAR(read->seams->holds / N_per_mm, 0.5, 1e-12);
  EXPECT_EQ(calibrated_words(*read),
            "calibrated on 12 readings of 2026-11-30 (6 strip, 6 fill), factor 1.27");
}

TEST_F(CalibrationFile, IsRefusedWhenLayoutMaterialsOrReadingsHaveChanged) {
  Plan thicker = plan_;
  thicker.layout.skin_sheet.thickness = 1.6 * mm;
  expect_stale(thicker, resources_, "is stale: the layout has changed since");
  Resources softer = resources_;
  for (SiliconeGrade& grade : softer.silicones) grade.law = scaled(grade.law, 0.9);
  expect_stale(plan_, softer, "is stale: a silicone's or the tissue's row has changed since");
  ASSERT_TRUE(write_file_atomically(folder_.path() / "readings.csv", "id,kind\nx,fill\n"));
  expect_stale(plan_, resources_, "is stale: its readings have changed since");
}

TEST_F(CalibrationFile, KeepsItsContactToItsPartAndPosture) {
  Calibration calibration = result_.calibration;
  keep_to_part(plan_, BodyPart::kForearm, calibration);
  EXPECT_DOUBLE_EQ(calibration.model_factor, 1.27);
  keep_to_part(plan_, BodyPart::kLowerLeg, calibration);
  EXPECT_DOUBLE_EQ(calibration.model_factor, 1.5);
  EXPECT_DOUBLE_EQ(calibration.factors.tissue, 1.0);
  calibration = result_.calibration;
  plan_.posture = Posture::kTense;
  keep_to_part(plan_, BodyPart::kForearm, calibration);
  EXPECT_DOUBLE_EQ(calibration.model_factor, 1.5);
}

TEST_F(CalibrationFile, ChangesSheetsAndTissueOfWhatIsPutOn) {
  const auto before = prepare(plan_, body_, resources_, mesh_of_plan(plan_));
  Resources calibrated = resources_;
  take_calibration(result_.calibration, kUncalibratedFactor, calibrated.limits);
  const auto after = prepare(plan_, body_, calibrated, mesh_of_plan(plan_));
  ASSERT_TRUE(before && after);
  EXPECT_DOUBLE_EQ(
      initial_shear_modulus(after->setup.skin_law) / initial_shear_modulus(before->setup.skin_law), 1.2);
  EXPECT_NEAR(initial_shear_modulus(after->setup.outer_law) / initial_shear_modulus(before->setup.outer_law),
              0.8, 1e-12);
  EXPECT_NEAR((after->setup.layout.skin_sheet.thickness - before->setup.layout.skin_sheet.thickness) / mm,
              0.1, 1e-12);
  EXPECT_NEAR(after->setup.foundation_pa_per_m(0) / before->setup.foundation_pa_per_m(0), 1.3, 1e-9);
  EXPECT_DOUBLE_EQ(calibrated.limits.model_factor, 1.27);
}

TEST_F(CalibrationFile, NeverLowersAFactorThatAnOwnSetAsksFor) {
  LimitSet own = resources_.limits;
  own.model_factor = 2.0;
  take_calibration(result_.calibration, kUncalibratedFactor, own);
  EXPECT_DOUBLE_EQ(own.model_factor, 2.0);
}

// 30 g on 10 mm: 0.0294 N/mm, less 1.645 errors of 10 %.
TEST(SeamHold, IsTheWeakestPeeledSampleLessItsError) {
  std::vector<Reading> rows;
  for (const double grams : {50.0, 30.0, 40.0})
    rows.push_back(row(ReadingKind::kPeel, "", {{F::kWidth, 0.010}, {F::kMass, grams * 9.80665e-3}}, 0.10));
  const auto hold = seam_hold(rows);
  ASSERT_TRUE(hold);
  EXPECT_NEAR(hold->holds / N_per_mm, 0.02942 * std::exp(-0.1645), 1e-5);
  EXPECT_EQ(hold->readings, 3);
}

}  // namespace
}  // namespace wrapgauge
