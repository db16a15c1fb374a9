#include "model/study/spread.hpp"

#include <gtest/gtest.h>

#include <atomic>

#include "model/core/file.hpp"
#include "model/study/spread_report.hpp"
#include "tests/inflation/failing_memory.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

SpreadTable shipped_table() {
  return read_spread_table(WRAPGAUGE_SOURCE_DIR "/resources/spread.json").value();
}

// A few quick runs of the small band.
struct SmallStudy {
  Plan plan = small_band::plan(2.0 * kPa);
  Body body = small_band::body();
  Resources resources = small_band::resources();
  SpreadTable table = shipped_table();

  SmallStudy() {
    table.runs = 4;
    plan.solver.steps = 1;
  }
  SpreadJob job() const { return {plan, body, resources, table, "hash"}; }
};

// Cancels once a number of runs are done.
class StopAfter : public Progress {
 public:
  explicit StopAfter(int runs) : left_(runs) {}
  void report(std::string_view, double) override { --left_; }
  bool cancelled() const override { return left_ <= 0; }

 private:
  std::atomic<int> left_;
};

TEST(SpreadTable, ShippedRangesNameTheirSourceAndStatus) {
  const SpreadTable table = shipped_table();
  EXPECT_GE(table.runs, 32);
  EXPECT_EQ(table.inputs.size(), 11u);
  for (const UncertainInput& input : table.inputs) {
    EXPECT_FALSE(input.source.empty()) << input.name;
    EXPECT_FALSE(input.status.empty()) << input.name;
  }
}

TEST(SpreadTable, ARangeThatFallsIsRefused) {
  const small_band::Folder folder("table");
  const auto file = folder.path() / "ranges.json";
  ASSERT_TRUE(write_file_atomically(file, R"({"wrapgauge-spread": 1, "name": "n", "remark": "r", "inputs": [
    {"input": "friction", "low": 1.0, "high": 0.3, "source": "s", "status": "judgement"}]})")
                  .ok());
  const auto table = read_spread_table(file);
  ASSERT_FALSE(table.ok());
  EXPECT_NE(table.problem().message.find("low must be the smaller one"), std::string::npos);
}

TEST(InputsOfPlan, LeaveOutWhatThePlanDoesNotHave) {
  const SmallStudy study;
  const auto inputs = inputs_of_plan(study.table, study.plan, study.resources).value();
  for (const UncertainInput& input : inputs) EXPECT_NE(input.name, "fill volume");
  EXPECT_EQ(inputs.size(), 10u);
  EXPECT_EQ(inputs[0].name, "skin sheet modulus");  // 00-30: from the law as it stands to 2.5 times it
  EXPECT_DOUBLE_EQ(inputs[0].value(0.0), 1.0);
  EXPECT_DOUBLE_EQ(inputs[0].value(1.0), 2.5);
  Plan pad = study.plan;
  pad.layout.closure.reset();
  EXPECT_EQ(inputs_of_plan(study.table, pad, study.resources)->size(), 9u);
}

TEST(VariedPlan, SetsEachInputAndNothingElse) {
  const SmallStudy study;
  const auto inputs = inputs_of_plan(study.table, study.plan, study.resources).value();
  std::vector<double> values;
  for (const UncertainInput& input : inputs) values.push_back(input.value(0.75));
  const auto varied = varied_plan(study.plan, study.body, study.resources, inputs, values).value();
  const auto girth = [](const Body& body) {
    return body.surface.vertices_m.leftCols(2).rowwise().norm().maxCoeff();
  };
  EXPECT_NEAR(girth(varied.body) / girth(study.body), 1.015, 1e-9);
  EXPECT_NEAR(varied.plan.friction, 0.825, 1e-12);
  EXPECT_NEAR(varied.plan.layout.skin_sheet.thickness / mm, 1.6, 1e-12);
  EXPECT_NEAR(varied.plan.tissue_stiffness_factor.value(), std::sqrt(2.0), 1e-12);
  EXPECT_NEAR(std::get<Pressure>(varied.plan.inflation[0].target) / kPa, 2.2, 1e-12);
  // Closed to the same stretch on the wider limb, then 1.5 mm too long.
  const Length closing = *resolve_closing_length(study.body, study.plan.layout, study.plan.placement).value();
  ASSERT_TRUE(varied.plan.layout.closure);
  EXPECT_NEAR(varied.plan.layout.closure->closing_length.value() / mm, 1.015 * (closing / mm) + 1.5, 0.05);
  const auto stiffer = find_grade(varied.resources.silicones, varied.plan.layout.skin_sheet.material).value();
  const auto grade = find_grade(study.resources.silicones, "00-30").value();
  EXPECT_NEAR(initial_shear_modulus(stiffer.law) / initial_shear_modulus(grade.law), std::pow(2.5, 0.75),
              1e-9);
}

TEST(VariedPlan, KeepsTheTaperOfTheClosingLines) {
  SmallStudy study;
  study.plan.layout.closure->taper = 0.12;
  UncertainInput input;
  input.quantity = UncertainQuantity::kClosingLength;
  const auto varied = varied_plan(study.plan, study.body, study.resources, {input}, {1.5});
  ASSERT_TRUE(varied.ok()) << varied.problem().message;
  ASSERT_TRUE(varied->plan.layout.closure);
  EXPECT_EQ(varied->plan.layout.closure->taper, 0.12);
  EXPECT_TRUE(varied->plan.layout.closure->closing_length);
  EXPECT_FALSE(varied->plan.layout.closure->stretch);
}

// Lack of memory is none of the plan's faults: the run is tried again when the spread goes on.
TEST(Spread, ARunThatLackedMemoryIsNotKept) {
  const SmallStudy study;
  const small_band::Folder folder("memory");
  {
    const FailingMemory memory(7);
    const auto spread = solve_spread(study.job(), {folder.path(), {}}, {});
    ASSERT_FALSE(spread.ok());
    EXPECT_EQ(spread.problem().kind, ProblemKind::kProgramFailed) << spread.problem().message;
    EXPECT_EQ(folder.kept_runs(), 0);
  }
  const auto resumed = solve_spread(study.job(), {folder.path(), {}}, {});
  ASSERT_TRUE(resumed.ok()) << resumed.problem().message;
  EXPECT_EQ(resumed->missing(), 0);
}

TEST(Spread, CutInPartsAndResumedItGivesTheSameBytes) {
  const SmallStudy study;
  const small_band::Folder whole("whole"), first("first"), second("second"), merged("merged");
  const auto at_once = solve_spread(study.job(), {whole.path(), {}}, {});
  ASSERT_TRUE(at_once.ok()) << at_once.problem().message;
  EXPECT_EQ(at_once->missing(), 0);
  const auto expected = spread_of(study.job(), *at_once);
  ASSERT_TRUE(expected.ok()) << expected.problem().message;

  StopAfter stop(1);
  const auto cut = solve_spread(study.job(), {first.path(), {}}, {1, 2}, stop);
  ASSERT_FALSE(cut.ok());
  EXPECT_EQ(cut.problem().kind, ProblemKind::kCancelled);
  const auto kept = first.kept_runs();
  EXPECT_GE(kept, 1);
  ASSERT_LT(kept, 3);
  const auto resumed = solve_spread(study.job(), {first.path(), {}}, {1, 2});
  ASSERT_TRUE(resumed.ok());
  EXPECT_EQ(first.kept_runs(), 3);
  EXPECT_FALSE(spread_of(study.job(), *resumed).ok());  // the other part is still missing
  ASSERT_TRUE(solve_spread(study.job(), {second.path(), {}}, {2, 2}).ok());
  EXPECT_EQ(second.kept_runs(), 2);

  StopAfter never_solve(0);
  const auto all = solve_spread(study.job(), {merged.path(), {first.path(), second.path()}}, {}, never_solve);
  ASSERT_TRUE(all.ok());  // nothing was left to cancel
  const auto together = solve_spread(study.job(), {merged.path(), {first.path(), second.path()}}, {});
  ASSERT_TRUE(together.ok());
  EXPECT_EQ(merged.kept_runs(), 0);  // nothing was solved anew
  EXPECT_EQ(spread_json(*spread_of(study.job(), *together)), spread_json(*expected));
  EXPECT_EQ(spread_markdown(*spread_of(study.job(), *together)), spread_markdown(*expected));
}

// Runs made by hand: one input, one chamber; figure f of run r is r + 10 f, nominal 3 on the preview mesh.
struct HandMade {
  SmallStudy study;
  SpreadRuns runs;

  explicit HandMade(int count, bool fine) {
    UncertainInput input;
    input.name = "friction";
    runs.inputs = {input};
    add("nominal", 3.0, {});
    if (fine) add("nominal, fine mesh", 3.5, {});
    runs.nominals = fine ? 2 : 1;
    for (int r = 1; r <= count; ++r) add("run " + std::to_string(r), r, {0.1 * r});
  }
  void add(const std::string& name, double value, std::vector<double> values) {
    runs.runs.push_back({name, "hash", 14.0 * mm, std::move(values)});
    RunFigures figures{{std::vector<double>(chamber_figure_names().size(), value)},
                       std::vector<double>(whole_figure_names().size(), value)};
    runs.outcomes.push_back(SpreadOutcome{std::nullopt, figures});
  }
};

TEST(Spread, BandsAreShiftedByWhatTheNominalRunMoves) {
  HandMade made(21, true);
  const auto spread = spread_of(made.study.job(), made.runs);
  ASSERT_TRUE(spread.ok()) << spread.problem().message;
  const FigureBand& band = spread->chambers[0].figures[2];
  EXPECT_DOUBLE_EQ(band.low, 2.5);      // 5th percentile of 1..21 is 2
  EXPECT_DOUBLE_EQ(band.median, 11.5);  // the shift is 0.5
  EXPECT_DOUBLE_EQ(band.high, 20.5);
  EXPECT_DOUBLE_EQ(band.nominal, 3.5);
  EXPECT_DOUBLE_EQ(spread->limit_factor, 20.0 / 3.0);
  EXPECT_NEAR(spread->influences[0].ranking.inputs[0].correlation, 1.0, 1e-12);
}

// Runs of 1 to 8 about a nominal 30: their spread would make the limits laxer.
TEST(Spread, NeverMakesALimitLaxer) {
  HandMade made(8, false);
  made.runs.outcomes[0]->figures.whole.back() = 30.0;
  const auto spread = spread_of(made.study.job(), made.runs);
  ASSERT_TRUE(spread.ok()) << spread.problem().message;
  EXPECT_EQ(spread->limit_factor, 1.0);
}

TEST(Spread, FailedRunsAreCountedAndNamed) {
  HandMade made(12, false);
  made.runs.outcomes[4] = SpreadOutcome{"A chamber runs away.", {}};
  const auto spread = spread_of(made.study.job(), made.runs);
  ASSERT_TRUE(spread.ok()) << spread.problem().message;
  ASSERT_EQ(spread->failed.size(), 1u);
  EXPECT_EQ(spread->failed[0].run, "run 4");
  EXPECT_NE(spread_markdown(*spread).find("1 of 12 runs have no figures"), std::string::npos);
  EXPECT_NE(spread_json(*spread).find("A chamber runs away."), std::string::npos);
}

TEST(Spread, NoBandsWhenMoreThanAQuarterFailed) {
  HandMade made(12, false);
  for (const std::size_t failed : {1u, 3u, 5u, 7u})
    made.runs.outcomes[failed] = SpreadOutcome{"No equilibrium.", {}};
  const auto spread = spread_of(made.study.job(), made.runs);
  ASSERT_FALSE(spread.ok());
  EXPECT_EQ(spread.problem().kind, ProblemKind::kNotConverged);
  EXPECT_NE(spread.problem().message.find("4 of 12"), std::string::npos) << spread.problem().message;
}

TEST(Spread, IsReadBackAndRefusedForOtherInputs) {
  HandMade made(12, false);
  const auto spread = spread_of(made.study.job(), made.runs);
  ASSERT_TRUE(spread.ok());
  const small_band::Folder folder("back");
  const auto file = folder.path() / "spread.json";
  ASSERT_TRUE(write_file_atomically(file, spread_json(*spread)).ok());
  const auto back = read_spread(file, "hash");
  ASSERT_TRUE(back.ok()) << back.problem().message;
  EXPECT_EQ(back->limit_factor, spread->limit_factor);
  EXPECT_EQ(back->chambers[0].figures[2].high, spread->chambers[0].figures[2].high);
  EXPECT_EQ(spread_words(*back), spread_words(*spread));  // ranks of the inputs too
  EXPECT_EQ(spread_brief(*back), spread_brief(*spread));
  EXPECT_NE(spread_brief(*spread).find("What moves it most: "), std::string::npos) << spread_brief(*spread);
  const auto stale = read_spread(file, "another");
  ASSERT_FALSE(stale.ok());
  EXPECT_NE(stale.problem().message.find("stale"), std::string::npos);
}

TEST(SpreadRun, AnOutcomeIsReadBackAndAnotherTextIsNot) {
  HandMade made(8, false);
  const auto back = outcome_from(outcome_json(*made.runs.outcomes[1]));
  ASSERT_TRUE(back);
  EXPECT_EQ(back->figures.chambers, made.runs.outcomes[1]->figures.chambers);
  EXPECT_EQ(back->figures.whole, made.runs.outcomes[1]->figures.whole);
  const auto failed = outcome_from(outcome_json({"A chamber runs away.", {}}));
  ASSERT_TRUE(failed);
  EXPECT_EQ(failed->failed, "A chamber runs away.");
  EXPECT_FALSE(outcome_from("{\"failed\": null, \"chambers\": [[1.0]], \"whole\": [1.0]}"));
  EXPECT_FALSE(outcome_from("{\"failed\": nu"));
  EXPECT_NE(run_identity(made.runs.runs[1], made.runs.inputs),
            run_identity(made.runs.runs[2], made.runs.inputs));
}

}  // namespace
}  // namespace wrapgauge
