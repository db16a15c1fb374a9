#pragma once
// Several solves told as one: how far all of them are never goes back.

#include <algorithm>
#include <cmath>
#include <mutex>

#include "model/core/progress.hpp"

namespace wrapgauge {

// Nobody knows beforehand how many solves there will be: each takes `part` (0..1) of what is left.
class ForwardProgress : public Progress {
 public:
  ForwardProgress(Progress& inner, double part) : inner_(inner), part_(part) {}

  void report(std::string_view stage, double fraction) override {
    const std::lock_guard lock(mutex_);
    if (fraction < last_) ++done_;
    last_ = fraction;
    told_ = std::max(told_, 1.0 - std::pow(1.0 - part_, done_ + std::clamp(fraction, 0.0, 1.0)));
    inner_.report(stage, told_);
  }
  bool cancelled() const override { return inner_.cancelled(); }

 private:
  Progress& inner_;
  double part_;
  std::mutex mutex_;
  int done_ = 0;  // solves that are over: the next one began again
  double last_ = 0.0, told_ = 0.0;
};

}  // namespace wrapgauge
