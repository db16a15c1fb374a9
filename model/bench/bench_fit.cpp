#include "model/bench/bench_fit.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <memory>

#include "model/core/number_text.hpp"
#include "model/study/percentile.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

constexpr double kBand = 1.959964;  // 95 % of a normal distribution

FitParameter parameter_at(Eigen::Index i) {
  return static_cast<FitParameter>(i);
}

LeastSquares squares_of(const FitTask& task) {
  const auto count = static_cast<Eigen::Index>(task.fitted.size());
  LeastSquares squares{Eigen::VectorXd(count), Eigen::VectorXd(count), known_before(),
                       std::vector<bool>(kFitParameters, true)};
  for (Eigen::Index k = 0; k < count; ++k) {
    const Reading& row = task.rows[task.fitted[static_cast<std::size_t>(k)]];
    squares.log_read(k) = std::log(read_si(row));
    squares.error(k) = row.error;
  }
  squares.is_free.back() = task.tells_of_tissue;
  return squares;
}

// The free factor that the readings tell least of, if it is told too little.
std::optional<Eigen::Index> least_told(const LeastSquares& squares, const Eigen::MatrixXd& covariances) {
  std::optional<Eigen::Index> least;
  for (Eigen::Index i = 0; i < kFitParameters; ++i)
    if (squares.is_free[static_cast<std::size_t>(i)] && is_factor(parameter_at(i)) &&
        covariances(i, i) > kUntold * kUntold && (!least || covariances(i, i) > covariances(*least, *least)))
      least = i;
  return least;
}

// Whether any reading would move by a thousandth for a factor of e.
bool is_touched(const Eigen::MatrixXd& slopes, Eigen::Index parameter) {
  return slopes.col(parameter).cwiseAbs().maxCoeff() > 1e-3;
}

Phrase cannot_tell_words(const Eigen::MatrixXd& slopes, const Eigen::MatrixXd& covariances,
                         const LeastSquares& squares, Eigen::Index untold) {
  const Phrase own = parameter_words(parameter_at(untold));
  if (!is_touched(slopes, untold))
    return Phrase::worded("No reading depends on the %1. Its factor stays at 1.", {own});
  constexpr double kAlike = 0.8;
  std::optional<Eigen::Index> other;
  double most = kAlike;
  for (Eigen::Index i = 0; i < kFitParameters; ++i) {
    if (i == untold || !squares.is_free[static_cast<std::size_t>(i)]) continue;
    const double alike =
        std::abs(covariances(i, untold)) / std::sqrt(covariances(i, i) * covariances(untold, untold));
    if (alike > most) most = alike, other = i;
  }
  if (other)
    return Phrase::worded("These readings cannot tell the %1 from the %2. Its factor stays at 1.",
                          {own, parameter_words(parameter_at(*other))});
  return Phrase::worded("These readings say too little about the %1. Its factor stays at 1.", {own});
}

// Fixes one factor after another that is not told. A sheet of which no reading tells keeps its thickness too.
void fix_untold(LeastSquares& squares, const Eigen::MatrixXd& slopes, Eigen::VectorXd& parameters,
                BenchFit& fit) {
  while (true) {
    const Eigen::MatrixXd covariances = covariance(squares, slopes);
    const auto untold = least_told(squares, covariances);
    if (!untold) break;
    fit.cannot_tell.push_back(cannot_tell_words(slopes, covariances, squares, *untold));
    squares.is_free[static_cast<std::size_t>(*untold)] = false;
    parameters(*untold) = 0.0;
  }
  for (Eigen::Index i = 0; i < kFitParameters; ++i)
    if (squares.is_free[static_cast<std::size_t>(i)] && !is_touched(slopes, i)) {
      squares.is_free[static_cast<std::size_t>(i)] = false;
      parameters(i) = 0.0;
    }
}

double degrees_of_freedom(const LeastSquares& squares) {
  double told = 0.0;
  for (int i = 0; i < kFitParameters; ++i)
    told += squares.is_free[static_cast<std::size_t>(i)] && is_factor(static_cast<FitParameter>(i));
  return std::max(1.0, static_cast<double>(squares.log_read.size()) - told);
}

void take_readings(const FitTask& task, const LeastSquares& squares, BenchFit& fit) {
  double sum = 0.0;
  for (std::size_t k = 0; k < task.fitted.size(); ++k) {
    const auto i = static_cast<Eigen::Index>(k);
    FittedReading one{task.fitted[k],
                      std::exp(squares.log_read(i)),
                      task.nominal[k],
                      std::exp(fit.table.log_values(i)),
                      0.0,
                      false};
    one.standard = (squares.log_read(i) - fit.table.log_values(i)) / squares.error(i);
    one.outlier = std::abs(one.standard) > kOutlier;
    sum += one.standard * one.standard;
    fit.readings.push_back(one);
  }
  const double freedom = degrees_of_freedom(squares);
  fit.misfit = sum / freedom;
  const double usual =
      boost::math::quantile(boost::math::chi_squared_distribution<double>(freedom), 0.95) / freedom;
  fit.widened = fit.misfit > usual ? std::sqrt(fit.misfit) : 1.0;
}

double normal_draw(RandomStream& stream) {
  return boost::math::quantile(boost::math::normal_distribution<double>(),
                               std::clamp(stream.unit(), 1e-12, 1.0 - 1e-12));
}

// Parameters of fits to readings, and to thicknesses within their tolerance, drawn anew round the fit.
std::vector<Eigen::VectorXd> draws(const FitTask& task, const LeastSquares& squares, const BenchFit& fit) {
  RandomStream stream(task.seed);
  const LogResponse response = fit.table.response();
  std::vector<Eigen::VectorXd> all;
  for (int draw = 0; draw < kBootstrapDraws; ++draw) {
    LeastSquares drawn = squares;
    Eigen::VectorXd truth = fit.table.at;
    for (Eigen::Index i = 0; i < kFitParameters; ++i)
      if (squares.is_free[static_cast<std::size_t>(i)] && !is_factor(parameter_at(i)))
        truth(i) += squares.known(i) * normal_draw(stream);
    drawn.log_read = fit.table.predict(truth);
    for (Eigen::Index k = 0; k < drawn.log_read.size(); ++k)
      drawn.log_read(k) += fit.widened * squares.error(k) * normal_draw(stream);
    if (auto found = least_squares(drawn, response, fit.table.at)) {
      Eigen::VectorXd off = *found - truth;  // how far a fit misses
      all.push_back(fit.table.at - off);
    }
  }
  return all;
}

void take_parameters(const FitTask& task, const LeastSquares& squares, BenchFit& fit) {
  const Eigen::MatrixXd covariances = covariance(squares, fit.table.slopes);
  const std::vector<Eigen::VectorXd> drawn = draws(task, squares, fit);
  for (Eigen::Index i = 0; i < kFitParameters; ++i) {
    const FitParameter which = parameter_at(i);
    if (which == FitParameter::kTissue && !task.tells_of_tissue) continue;
    const auto shown = [&](double value) { return is_factor(which) ? std::exp(value) : value; };
    FittedParameter one{which, squares.is_free[static_cast<std::size_t>(i)], shown(fit.table.at(i))};
    one.low = one.high = one.drawn_low = one.drawn_high = one.value;
    if (one.told) {
      const double half = kBand * std::sqrt(covariances(i, i)) * (is_factor(which) ? fit.widened : 1.0);
      one.low = shown(fit.table.at(i) - half);
      one.high = shown(fit.table.at(i) + half);
      std::vector<double> values;
      for (const Eigen::VectorXd& parameters : drawn) values.push_back(parameters(i));
      one.drawn_low = shown(percentile(values, 0.025));
      one.drawn_high = shown(percentile(values, 0.975));
    }
    fit.parameters.push_back(one);
  }
}

std::optional<Problem> out_of_range(const Eigen::VectorXd& parameters) {
  for (Eigen::Index i = 0; i < kFitParameters; ++i)
    if (is_factor(parameter_at(i)) &&
        (std::exp(parameters(i)) < kLeastFactor || std::exp(parameters(i)) > kMostFactor))
      return bad_input(Phrase::worded(
          "the %1 would have to be %2 times what the plan says, and only %3 to %4 is fitted: "
          "check the grade, the sheets' thickness and the readings.",
          {parameter_words(parameter_at(i)), figures_of(number_text(std::exp(parameters(i)), 3)),
           figures_of(number_text(kLeastFactor)), figures_of(number_text(kMostFactor))}));
  return std::nullopt;
}

}  // namespace

LogResponse with_differences(LogPredictor predict, std::function<void()> settled, std::vector<bool> is_free) {
  static constexpr double kStep = 0.05;
  struct Kept {
    Eigen::VectorXd at;
    Eigen::MatrixXd slopes;
  };
  auto kept = std::make_shared<Kept>();
  const auto derivatives = [predict, settled, is_free,
                            kept](const Eigen::VectorXd& at) -> Result<Eigen::MatrixXd> {
    if (kept->at.size() == at.size() && kept->at == at) return kept->slopes;
    const auto here = predict(at);
    if (!here) return here.problem();
    settled();
    Eigen::MatrixXd slopes = Eigen::MatrixXd::Zero(here->size(), at.size());
    for (Eigen::Index c = at.size() - 1; c >= 0; --c) {
      if (!is_free[static_cast<std::size_t>(c)]) continue;
      Eigen::VectorXd there = at;
      there(c) += kStep;
      const auto beside = predict(there);
      if (!beside) return beside.problem();
      slopes.col(c) = (*beside - *here) / kStep;
    }
    *kept = {at, slopes};
    return slopes;
  };
  return {std::move(predict), derivatives};
}

Result<BenchFit> fit_bench(const FitTask& task, const LogResponse& response) {
  if (task.fitted.size() < 3)
    return bad_input(Phrase::worded("readings that a fit can use: %1, and it takes 3 at least. Read more.",
                                    {figures_of(static_cast<int>(task.fitted.size()))}));
  BenchFit fit;
  LeastSquares squares = squares_of(task);
  Eigen::VectorXd parameters = Eigen::VectorXd::Zero(kFitParameters);
  for (bool first = true;; first = false) {
    const auto slopes = response.derivatives(parameters);
    if (!slopes) return slopes.problem();
    const std::vector<bool> free_before = squares.is_free;
    fix_untold(squares, *slopes, parameters, fit);
    if (!first && squares.is_free == free_before) break;
    auto found = least_squares(squares, response, parameters);
    if (!found) return found.problem();
    parameters = std::move(found).value();
    if (auto problem = out_of_range(parameters)) return *problem;
  }
  auto table = response_table(response.predict, parameters, squares.is_free);
  if (!table) return table.problem();
  fit.table = std::move(table).value();
  fit.factors = factors_of(parameters);
  take_readings(task, squares, fit);
  take_parameters(task, squares, fit);
  return fit;
}

}  // namespace wrapgauge
