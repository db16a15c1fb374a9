#pragma once
// Fixed points x = T(x) by Anderson's mixing: the next guess is the combination of the last ones whose change
// T(x) - x is least. Anderson 1965, "Iterative procedures for nonlinear integral equations"; as in Walker &
// Ni 2011, "Anderson acceleration for fixed-point iterations".

#include <Eigen/Core>
#include <deque>

namespace wrapgauge {

class AndersonIteration {
 public:
  explicit AndersonIteration(int depth) : depth_(depth) {}
  // The next guess after T(x) = image.
  Eigen::VectorXd next(const Eigen::VectorXd& x, const Eigen::VectorXd& image);

 private:
  int depth_;
  Eigen::VectorXd last_x_, last_change_;
  std::deque<Eigen::VectorXd> steps_, change_steps_;
};

}  // namespace wrapgauge
