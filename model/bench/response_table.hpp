#pragma once
// What readings are predicted to be near a set of parameters: values, slopes and curvatures, so that a fit
// can be made over again hundreds of times.

#include "model/bench/least_squares.hpp"

namespace wrapgauge {

struct ResponseTable {
  Eigen::VectorXd at;                  // parameters it was made at
  Eigen::VectorXd log_values;          // a reading each
  Eigen::MatrixXd slopes, curvatures;  // a parameter a column; 0 for fixed ones

  Eigen::VectorXd predict(const Eigen::VectorXd& parameters) const;
  LogResponse response() const;  // refers to the table
};

inline constexpr double kTableStep = 0.1;  // of a logarithm, or mm: 10 % of a factor

// By central differences of `predict` in the free parameters, fixed ones left alone.
Result<ResponseTable> response_table(const LogPredictor& predict, const Eigen::VectorXd& at,
                                     const std::vector<bool>& is_free);

}  // namespace wrapgauge
