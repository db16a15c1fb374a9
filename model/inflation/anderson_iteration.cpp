#include "model/inflation/anderson_iteration.hpp"

#include <Eigen/QR>

namespace wrapgauge {

Eigen::VectorXd AndersonIteration::next(const Eigen::VectorXd& x, const Eigen::VectorXd& image) {
  const Eigen::VectorXd change = image - x;
  if (last_x_.size() == x.size()) {
    steps_.push_back(x - last_x_);
    change_steps_.push_back(change - last_change_);
    if (static_cast<int>(steps_.size()) > depth_) {
      steps_.pop_front();
      change_steps_.pop_front();
    }
  }
  last_x_ = x;
  last_change_ = change;
  if (steps_.empty()) return image;
  Eigen::MatrixXd differences(x.size(), static_cast<Eigen::Index>(steps_.size()));
  for (std::size_t k = 0; k < steps_.size(); ++k)
    differences.col(static_cast<Eigen::Index>(k)) = change_steps_[k];
  const Eigen::VectorXd weights = differences.colPivHouseholderQr().solve(change);
  Eigen::VectorXd guess = image;
  for (std::size_t k = 0; k < steps_.size(); ++k)
    guess -= weights(static_cast<Eigen::Index>(k)) * (steps_[k] + change_steps_[k]);
  return guess;
}

}  // namespace wrapgauge
