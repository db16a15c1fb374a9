#pragma once
// How far contact areas, friction limits and normals follow the shape after each step of a solve.
//
// Steps that for so many iterations bring no better balance than a share of the best one go round in circles:
// where a sheet lies deep in soft tissue, a normal that turns with every step turns the friction of its
// neighbours, and so on. What follows then does so by a part of the way only, and by a smaller one each time
// that does not help for as long again.

#include <algorithm>
#include <limits>

#include "model/inflation/solver_settings.hpp"

namespace wrapgauge {

class FollowingPace {
 public:
  explicit FollowingPace(const FollowingSettings& settings = {}) : settings_(settings) {}

  void watch(int iteration, double out_of_balance) {
    if (out_of_balance < settings_.better * best_) {
      best_ = out_of_balance;
      best_at_ = iteration;
    }
    if (iteration - std::max(best_at_, slowed_at_) < settings_.patience) return;
    share_ = slow() ? std::max(settings_.slowest, settings_.slower * share_) : settings_.slow;
    slowed_at_ = iteration;
  }

  double share() const { return share_; }
  bool slow() const { return share_ < 1.0; }
  int without_better(int iteration) const { return iteration - best_at_; }

 private:
  FollowingSettings settings_;
  double best_ = std::numeric_limits<double>::infinity(), share_ = 1.0;
  int best_at_ = 0, slowed_at_ = 0;
};

}  // namespace wrapgauge
