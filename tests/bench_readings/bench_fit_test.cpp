#include "model/bench/bench_fit.hpp"

#include <gtest/gtest.h>

#include <iostream>

#include "tests/bench_readings/bench_rows.hpp"

namespace wrapgauge {
namespace {

using namespace bench;

std::vector<Reading> off_body(double error) {
  std::vector<Reading> rows = afternoon(error);
  std::erase_if(rows, [](const Reading& one) {
    return one.kind == ReadingKind::kContact || one.kind == ReadingKind::kClosure;
  });
  return rows;
}

BenchModel model_of(const std::vector<Reading>& rows) {
  auto made = BenchModel::make(job(), rows, silent_progress());
  EXPECT_TRUE(made) << made.problem().message;
  return std::move(made).value();
}

const FittedParameter& fitted(const BenchFit& fit, FitParameter which) {
  for (const FittedParameter& one : fit.parameters)
    if (one.which == which) return one;
  throw std::runtime_error("not fitted");
}

// Both sheets by 0.5, 1 and 2, by readings made with them and 5 or 15 % noise: within three standard errors.
TEST(BenchFit, FindsTheFactorsThatReadingsWereMadeWith) {
  for (const double error : {0.05, 0.15}) {
    std::vector<Reading> rows = off_body(error);
    BenchModel model = model_of(rows);
    RandomStream stream(11);
    for (const double skin : {0.5, 1.0, 2.0})
      for (const double outer : {0.5, 1.0, 2.0}) {
        const auto logs = model.log_predictions({skin, outer, {}, {}, 1.0}, silent_progress());
        ASSERT_TRUE(logs) << logs.problem().message;
        read(rows, model.fitted_rows(), *logs, 1.0, stream);
        const auto fit = fit_bench({rows, model.fitted_rows(), nominal_of(model), false}, response_of(model));
        ASSERT_TRUE(fit) << fit.problem().message;
        for (const auto& [which, truth] :
             {std::pair(FitParameter::kSkinLaw, skin), {FitParameter::kOuterLaw, outer}}) {
          const FittedParameter& found = fitted(*fit, which);
          const double standard_error = std::log(found.high / found.low) / (2.0 * 1.96);
          EXPECT_TRUE(found.told);
          EXPECT_LT(std::abs(std::log(found.value / truth)), 3.0 * standard_error)
              << english(parameter_words(which)) << " " << truth << ", noise " << error << ": "
              << found.value;
        }
      }
  }
}

// A band that is fastened tight sinks into the tissue: its pull tells how far.
TEST(BenchFit, FindsTheTissueByThePullOfTheClosure) {
  std::vector<Reading> rows = {strip(SheetSide::kSkin, 1.2), strip(SheetSide::kOuter, 1.2)};
  for (const double fastened_mm : {235.0, 240.0, 245.0})
    for (int repeat = 0; repeat < 3; ++repeat)
      rows.push_back(row(ReadingKind::kClosure, "", {{F::kFastened, fastened_mm * 1e-3}}, 0.02));
  BenchModel model = model_of(rows);
  RandomStream stream(5);
  for (const double tissue : {0.5, 1.0, 2.0}) {
    const auto logs = model.log_predictions({1.0, 1.0, {}, {}, tissue}, silent_progress());
    ASSERT_TRUE(logs) << logs.problem().message;
    read(rows, model.fitted_rows(), *logs, 1.0, stream);
    const auto fit = fit_bench({rows, model.fitted_rows(), nominal_of(model), true}, response_of(model));
    ASSERT_TRUE(fit) << fit.problem().message;
    const FittedParameter& found = fitted(*fit, FitParameter::kTissue);
    EXPECT_TRUE(found.told);
    EXPECT_GT(found.high, tissue / 1.1);
    EXPECT_LT(found.low, tissue * 1.1);
  }
}

// A table stands for the solver here: what is tried are the bands.
ResponseTable made_up_table() {
  ResponseTable table{Eigen::VectorXd::Zero(kFitParameters), Eigen::VectorXd::Zero(20),
                      Eigen::MatrixXd::Zero(20, kFitParameters), Eigen::MatrixXd::Zero(20, kFitParameters)};
  for (Eigen::Index k = 0; k < 20; ++k) {
    table.slopes.row(k) << (k % 3 == 0 ? 1.0 : 0.3), (k % 4 == 1 ? 1.0 : 0.1), 0.3, 0.2, (k > 11 ? 0.6 : 0.0);
    table.curvatures.row(k) << 0.1, -0.1, 0.0, 0.0, -0.2;
  }
  return table;
}

TEST(BenchFit, BandsHoldTheTruthInNineteenOfTwentyDraws) {
  const ResponseTable table = made_up_table();
  std::vector<Reading> rows(20, row(ReadingKind::kFill, "valve", {{F::kFilled, 5e-6}, {F::kGauge, 1.0}}));
  std::vector<std::size_t> all(20);
  for (std::size_t k = 0; k < all.size(); ++k) all[k] = k;
  const std::vector<double> nominal(20, 1.0);
  for (const double error : {0.05, 0.15}) {
    RandomStream stream(3);
    int held = 0, drawn_held = 0, tried = 0;
    for (int draw = 0; draw < 200; ++draw) {
      Eigen::VectorXd truth = Eigen::VectorXd::Zero(kFitParameters);
      truth << 0.3, -0.2, 0.0, 0.0, 0.25;
      truth(2) = known_before()(2) * normal_draw(stream);  // thickness anywhere in its tolerance
      truth(3) = known_before()(3) * normal_draw(stream);
      for (Reading& one : rows) one.error = error;
      read(rows, all, table.predict(truth), 1.0, stream);
      const auto fit = fit_bench({rows, all, nominal, true, 20}, table.response());
      ASSERT_TRUE(fit) << fit.problem().message;
      for (const FittedParameter& one : fit->parameters) {
        if (!one.told) continue;
        const auto i = static_cast<Eigen::Index>(one.which);
        const double value = is_factor(one.which) ? std::exp(truth(i)) : truth(i);
        held += one.low <= value && value <= one.high;
        drawn_held += one.drawn_low <= value && value <= one.drawn_high;
        ++tried;
      }
    }
    std::cout << "  noise " << error << ": of " << tried << " bands, " << 100.0 * held / tried
              << " % hold the truth, of the drawn ones " << 100.0 * drawn_held / tried << " %\n";
    EXPECT_GE(held, 0.93 * tried);
    EXPECT_LE(held, 0.97 * tried);
    EXPECT_GE(drawn_held, 0.92 * tried);
  }
}

TEST(BenchFit, SaysWhatTheReadingsCannotTell) {
  ResponseTable table = made_up_table();
  table.slopes.col(1) = 0.8 * table.slopes.col(0);  // both sheets alike
  table.slopes.col(4).setZero();
  table.curvatures.setZero();
  std::vector<Reading> rows(20, row(ReadingKind::kFill, "valve", {{F::kFilled, 5e-6}, {F::kGauge, 1.0}}));
  std::vector<std::size_t> all(20);
  for (std::size_t k = 0; k < all.size(); ++k) all[k] = k;
  const auto fit = fit_bench({rows, all, std::vector<double>(20, 1.0), true}, table.response());
  ASSERT_TRUE(fit) << fit.problem().message;
  ASSERT_EQ(fit->cannot_tell.size(), 2u);
  EXPECT_EQ(english(fit->cannot_tell[0]),
            "No reading depends on the tissue's stiffness. Its factor stays at 1.");
  EXPECT_EQ(
      english(fit->cannot_tell[1]),
      "These readings cannot tell the outer sheet's law from the skin sheet's law. Its factor stays at 1.");
  EXPECT_DOUBLE_EQ(fit->factors.tissue, 1.0);
}

TEST(BenchFit, NamesAnOutlierAndKeepsItInTheFit) {
  const ResponseTable table = made_up_table();
  std::vector<Reading> rows(20, row(ReadingKind::kFill, "valve", {{F::kFilled, 5e-6}, {F::kGauge, 1.0}}));
  std::vector<std::size_t> all(20);
  for (std::size_t k = 0; k < all.size(); ++k) all[k] = k;
  rows[7].si[static_cast<std::size_t>(F::kGauge)] = 1.4;
  const auto fit = fit_bench({rows, all, std::vector<double>(20, 1.0), true}, table.response());
  ASSERT_TRUE(fit) << fit.problem().message;
  EXPECT_EQ(fit->readings.size(), 20u);
  for (const FittedReading& one : fit->readings) EXPECT_EQ(one.outlier, one.row == 7);
}

TEST(BenchFit, RefusesAFactorBeyondItsRange) {
  ResponseTable table = made_up_table();
  std::vector<Reading> rows(20, row(ReadingKind::kFill, "valve", {{F::kFilled, 5e-6}, {F::kGauge, 40.0}}));
  std::vector<std::size_t> all(20);
  for (std::size_t k = 0; k < all.size(); ++k) all[k] = k;
  const auto fit = fit_bench({rows, all, std::vector<double>(20, 1.0), true}, table.response());
  ASSERT_FALSE(fit);
  EXPECT_NE(fit.problem().message.find("only 0.3 to 3 is fitted"), std::string::npos)
      << fit.problem().message;
}

}  // namespace
}  // namespace wrapgauge
