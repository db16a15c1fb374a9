#include "model/bench/least_squares.hpp"

#include <Eigen/Dense>
#include <optional>
#include <unsupported/Eigen/NonLinearOptimization>

#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

// Weighted residuals of the free parameters, readings first, then what was known before.
class Residuals {
 public:
  using Scalar = double;
  enum { InputsAtCompileTime = Eigen::Dynamic, ValuesAtCompileTime = Eigen::Dynamic };
  using InputType = Eigen::VectorXd;
  using ValueType = Eigen::VectorXd;
  using JacobianType = Eigen::MatrixXd;

  Residuals(const LeastSquares& task, const LogResponse& response, Eigen::VectorXd whole)
      : task_(task), response_(response), whole_(std::move(whole)) {
    for (std::size_t i = 0; i < task.is_free.size(); ++i)
      if (task.is_free[i]) free_.push_back(static_cast<Eigen::Index>(i));
  }

  int inputs() const { return static_cast<int>(free_.size()); }
  int values() const { return static_cast<int>(task_.log_read.size()) + inputs(); }
  Eigen::VectorXd free_of(const Eigen::VectorXd& whole) const { return whole(free_); }
  Eigen::VectorXd whole_of(const Eigen::VectorXd& x) const {
    Eigen::VectorXd whole = whole_;
    whole(free_) = x;
    return whole;
  }
  const std::optional<Problem>& problem() const { return problem_; }

  // A step to where nothing is predicted counts as far off, so that it is taken shorter.
  int operator()(const Eigen::VectorXd& x, Eigen::VectorXd& residual) const {
    constexpr double kFarOff = 1e3;
    const auto predicted = response_.predict(whole_of(x));
    if (!predicted && is_no_answer(predicted.problem().kind)) return stop(predicted.problem());
    residual.resize(values());
    if (!predicted)
      residual.setConstant(kFarOff);
    else
      residual.head(task_.log_read.size()) = (*predicted - task_.log_read).cwiseQuotient(task_.error);
    if (predicted) residual.tail(inputs()) = x.cwiseQuotient(Eigen::VectorXd(task_.known(free_)));
    return 0;
  }
  int df(const Eigen::VectorXd& x, Eigen::MatrixXd& jacobian) const {
    const auto slopes = response_.derivatives(whole_of(x));
    if (!slopes) return stop(slopes.problem());
    jacobian = Eigen::MatrixXd::Zero(values(), inputs());
    for (int c = 0; c < inputs(); ++c) {
      jacobian.col(c).head(task_.log_read.size()) =
          slopes->col(free_[static_cast<std::size_t>(c)]).cwiseQuotient(task_.error);
      jacobian(task_.log_read.size() + c, c) = 1.0 / task_.known(free_[static_cast<std::size_t>(c)]);
    }
    return 0;
  }

 private:
  int stop(const Problem& problem) const {
    problem_ = problem;
    return -1;
  }

  const LeastSquares& task_;
  const LogResponse& response_;
  Eigen::VectorXd whole_;
  std::vector<Eigen::Index> free_;
  mutable std::optional<Problem> problem_;
};

}  // namespace

Result<Eigen::VectorXd> least_squares(const LeastSquares& task, const LogResponse& response,
                                      const Eigen::VectorXd& start) {
  Residuals residuals(task, response, start);
  if (residuals.inputs() == 0) return start;
  Eigen::LevenbergMarquardt<Residuals> marquardt(residuals);
  marquardt.parameters.ftol = 1e-4;  // of the sum of squares: a hundredth of a standard error
  marquardt.parameters.xtol = 1e-3;
  marquardt.parameters.maxfev = 60;
  marquardt.parameters.factor = 1.0;  // the first step no longer than the parameters' own size
  Eigen::VectorXd x = residuals.free_of(start);
  const auto end = marquardt.minimize(x);
  if (residuals.problem()) return *residuals.problem();
  if (end == Eigen::LevenbergMarquardtSpace::TooManyFunctionEvaluation ||
      end == Eigen::LevenbergMarquardtSpace::ImproperInputParameters)
    return not_converged(Phrase::worded(
        "The fit did not settle: the readings pull the factors to and fro; look for a wrong one."));
  return residuals.whole_of(x);
}

Eigen::MatrixXd covariance(const LeastSquares& task, const Eigen::MatrixXd& derivatives) {
  std::vector<Eigen::Index> free;
  for (std::size_t i = 0; i < task.is_free.size(); ++i)
    if (task.is_free[i]) free.push_back(static_cast<Eigen::Index>(i));
  const Eigen::MatrixXd weighted = task.error.cwiseInverse().asDiagonal() * derivatives(Eigen::all, free);
  Eigen::MatrixXd normal = weighted.transpose() * weighted;
  const Eigen::VectorXd known = task.known(free);
  normal.diagonal() += known.cwiseAbs2().cwiseInverse();
  Eigen::MatrixXd all = Eigen::MatrixXd::Zero(derivatives.cols(), derivatives.cols());
  const Eigen::MatrixXd inverse =
      normal.ldlt().solve(Eigen::MatrixXd::Identity(normal.rows(), normal.cols()));
  all(free, free) = inverse;
  return all;
}

}  // namespace wrapgauge
