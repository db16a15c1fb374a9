// The bench of a plan, from proposed readings to a calibration that the plan names.

#include <gtest/gtest.h>

#include "app/desk/session/bench_folder.hpp"
#include "model/bench/readings_sheet.hpp"
#include "model/core/file.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

class BenchSession : public testing::Test, public WithSession {
 protected:
  std::filesystem::path place() const { return bench_folder(session.file()); }

  // Strips alone: read as stiff as `factor` says, which is solved at once.
  Readings strips(double factor) {
    session.propose_readings();
    EXPECT_TRUE(wait_until([&] { return session.now().newest_sheet.sheet != nullptr; }));
    const auto written =
        write_bench_sheet(*session.now().newest_sheet.sheet, *session.checked()->job, place());
    EXPECT_TRUE(written.ok()) << written.problem().message;
    const auto bytes = read_file(place() / kReadingsName);
    EXPECT_TRUE(bytes.ok());
    auto sheet = ReadingsSheet::of(*bytes, kReadingsName, session.plan().layout);
    EXPECT_TRUE(sheet.ok()) << sheet.problem().message;
    for (std::size_t row = 0; row < sheet->readings().rows.size(); ++row) {
      const Reading& reading = sheet->readings().rows[row];
      if (reading.kind == ReadingKind::kStrip)
        sheet = sheet->with_read(row, std::to_string(factor * *sheet->predicted_value(row)),
                                 session.plan().layout);
    }
    EXPECT_TRUE(write_file_atomically(place() / kReadingsName, sheet->bytes()).ok());
    return without_unread(sheet->readings());
  }

  // The plan names the fit as its calibration, and is checked again.
  void keep_fit() {
    const auto file =
        write_bench_fit(*session.now().fit(), *session.checked()->job, place(), place() / kReadingsName);
    ASSERT_TRUE(file.ok()) << file.problem().message;
    Plan plan = session.plan();
    plan.calibration = *file;
    session.edit("Calibration", plan);
    ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr && session.checked()->job; }));
  }
};

TEST_F(BenchSession, APlanWithoutReadingsIsSaidNotToBeCalibrated) {
  open_small();
  EXPECT_TRUE(
      wait_until([&] { return session.state(PlanStep::kBench).words == "not calibrated: factor 1.5"; }));
}

TEST_F(BenchSession, AFitKeptInThePlanIsWhatTheNextResultIsMadeWith) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.solved() && session.stale().empty(); }));
  const auto before = session.solved();
  session.fit_readings(strips(1.5));
  ASSERT_TRUE(wait_until([&] { return session.now().fit() != nullptr; }));
  EXPECT_NEAR(session.now().fit()->calibration.factors.skin_law, 1.5, 0.05);
  keep_fit();
  EXPECT_EQ(session.state(PlanStep::kBench).words, "calibrated on 6 readings: factor 1.5");
  ASSERT_TRUE(wait_until([&] { return session.solved() != before && session.stale().empty(); }));
  EXPECT_TRUE(session.solved()->summary->calibration);
  EXPECT_NE(session.solved()->estimate->figures.total_force, before->estimate->figures.total_force)
      << "the sheets are as they were";
  session.undo_stack().undo();
  ASSERT_TRUE(
      wait_until([&] { return session.solved() && session.stale().empty() && !session.runner().busy(); }));
  EXPECT_FALSE(session.solved()->summary->calibration);
}

TEST_F(BenchSession, ACalibrationOfAnotherLayoutKeepsThePlanFromBeingSolvedAndSaysSo) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  session.fit_readings(strips(1.2));
  ASSERT_TRUE(wait_until([&] { return session.now().fit() != nullptr; }));
  keep_fit();
  Layout layout = session.plan().layout;
  layout.outer_sheet.thickness = 2.5 * mm;
  session.edit_layout("Thicker", layout);
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  EXPECT_FALSE(session.checked()->can_be_solved());
  const StepState state = session.state(PlanStep::kBench);
  EXPECT_EQ(state.kind, StepState::Kind::kNeeds);
  ASSERT_EQ(state.findings.size(), 1);
  EXPECT_TRUE(state.findings[0].contains("stale")) << state.findings[0].toStdString();
  EXPECT_EQ(session.now().fit(), nullptr) << "a fit for the plan as it was is not offered";
}

TEST_F(BenchSession, ReadingsThatWereTypedAreNotWrittenOver) {
  open_small();
  ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
  strips(1.1);
  const auto refused = write_bench_sheet(*session.now().newest_sheet.sheet, *session.checked()->job, place());
  ASSERT_FALSE(refused.ok());
  EXPECT_NE(refused.problem().message.find("may hold readings"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
