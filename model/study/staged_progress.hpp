#pragma once
#include <string>

#include "model/core/progress.hpp"

namespace wrapgauge {

// Tells which of several solves the stages belong to.
class StagedProgress : public Progress {
 public:
  StagedProgress(Progress& inner, std::string before) : inner_(inner), before_(std::move(before)) {}
  void report(std::string_view stage, double fraction) override {
    inner_.report(before_ + std::string(stage), fraction);
  }
  bool cancelled() const override { return inner_.cancelled(); }

 private:
  Progress& inner_;
  std::string before_;
};

}  // namespace wrapgauge
