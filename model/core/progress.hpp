#pragma once
// How a long stage tells how far it is and asks whether to go on. The default says nothing and goes on.

#include <string_view>

namespace wrapgauge {

class Progress {
 public:
  virtual ~Progress() = default;
  // `fraction` 0..1 within the stage named in plain words, e.g. "inflating".
  virtual void report(std::string_view /*stage*/, double /*fraction*/) {}
  virtual bool cancelled() const { return false; }
};

inline Progress& silent_progress() {
  static Progress silent;
  return silent;
}

}  // namespace wrapgauge
