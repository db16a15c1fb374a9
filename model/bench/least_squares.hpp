#pragma once
// Least squares of logarithms of ratios, weighted by what each reading may be off, with what was known before
// as a soft bound. The optimiser is Eigen's Levenberg-Marquardt (unsupported/NonLinearOptimization, a
// translation of MINPACK's lmder, More 1978, "The Levenberg-Marquardt algorithm: implementation and
// theory"): at most five unknowns and some dozens of readings, dense and smooth, so that what Ceres brings
// beyond it (sparsity, derivatives by itself, robust losses) would go unused for one more dependency.

#include <Eigen/Core>
#include <functional>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

struct LeastSquares {
  Eigen::VectorXd log_read;   // a reading each
  Eigen::VectorXd error;      // its standard error, relative
  Eigen::VectorXd known;      // a parameter each: standard deviation round 0 before anything is read
  std::vector<bool> is_free;  // the others stay where they start
};

// ln of the predictions at parameters, a reading each.
using LogPredictor = std::function<Result<Eigen::VectorXd>(const Eigen::VectorXd&)>;
// The same with derivatives: rows readings, columns parameters; those of fixed ones are not read.
struct LogResponse {
  LogPredictor predict;
  std::function<Result<Eigen::MatrixXd>(const Eigen::VectorXd&)> derivatives;
};

// The parameters of least squares. Problems: those of the response, except kNotConverged where it was only
// tried; kNotConverged when it does not come to an end.
Result<Eigen::VectorXd> least_squares(const LeastSquares& task, const LogResponse& response,
                                      const Eigen::VectorXd& start);

// Inverse of the normal equations at `derivatives`, parameters known before included; 0 for fixed ones.
Eigen::MatrixXd covariance(const LeastSquares& task, const Eigen::MatrixXd& derivatives);

}  // namespace wrapgauge
