#pragma once
#include <memory>
#include <mutex>
#include <utility>
#include <vector>

#include "model/geometry/distance_blocks.hpp"

namespace wrapgauge {

// Distances to one body for runs side by side: each borrows what no other run holds, so that what one has
// measured the next need not. From any thread.
class DistancePool {
 public:
  std::unique_ptr<DistanceBlocks> borrow() {
    const std::lock_guard lock(mutex_);
    if (free_.empty()) return std::make_unique<DistanceBlocks>();
    auto distances = std::move(free_.back());
    free_.pop_back();
    return distances;
  }
  void give_back(std::unique_ptr<DistanceBlocks> distances) {
    const std::lock_guard lock(mutex_);
    free_.push_back(std::move(distances));
  }

 private:
  std::mutex mutex_;
  std::vector<std::unique_ptr<DistanceBlocks>> free_;
};

}  // namespace wrapgauge
