#pragma once
// The layout closed round the body and not inflated: every path of one setup and one set of options starts
// there, so that it is found once for all of them.

#include <memory>
#include <mutex>

#include "model/inflation/newton.hpp"
#include "model/inflation/tissue_contact.hpp"

namespace wrapgauge {

struct ClosedShape {
  NewtonResult equilibrium;
  TissueContact tissue;  // the body it refers to is the setup's
};

// Empty until a path has found it. Several threads may ask at once.
class KeptClosing {
 public:
  std::shared_ptr<const ClosedShape> get() const {
    const std::lock_guard lock(mutex_);
    return closed_;
  }
  void keep(ClosedShape closed) {
    const std::lock_guard lock(mutex_);
    closed_ = std::make_shared<const ClosedShape>(std::move(closed));
  }

 private:
  mutable std::mutex mutex_;
  std::shared_ptr<const ClosedShape> closed_;
};

}  // namespace wrapgauge
