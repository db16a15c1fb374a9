#pragma once
#include <ostream>
#include <string>

#include "model/core/progress.hpp"

namespace wrapgauge {

// One line on a terminal, redrawn; nothing at all in a pipe or file. Ctrl-C cancels at the next chance.
class TerminalProgress : public Progress {
 public:
  TerminalProgress();
  ~TerminalProgress() override;
  TerminalProgress(const TerminalProgress&) = delete;
  TerminalProgress& operator=(const TerminalProgress&) = delete;

  void report(std::string_view stage, double fraction) override;
  bool cancelled() const override;

 private:
  bool on_terminal_;
  std::string shown_;
  void (*before_)(int);
};

}  // namespace wrapgauge
