#include "app/command/terminal_progress.hpp"

#include <unistd.h>

#include <cmath>
#include <csignal>
#include <cstdio>

namespace wrapgauge {
namespace {

volatile std::sig_atomic_t interrupted = 0;

void on_interrupt(int) {
  interrupted = 1;
}

}  // namespace

TerminalProgress::TerminalProgress() : on_terminal_(isatty(STDERR_FILENO) == 1) {
  interrupted = 0;
  before_ = std::signal(SIGINT, on_interrupt);
}

TerminalProgress::~TerminalProgress() {
  std::signal(SIGINT, before_ == SIG_ERR ? SIG_DFL : before_);
  if (on_terminal_) std::fputs("\r\033[K", stderr);
}

void TerminalProgress::report(std::string_view stage, double fraction) {
  if (!on_terminal_) return;
  const std::string text =
      std::string(stage) + " " + std::to_string(static_cast<int>(std::lround(100.0 * fraction))) + " %";
  if (text == shown_) return;
  shown_ = text;
  std::fputs(("\r\033[K" + text).c_str(), stderr);
  std::fflush(stderr);
}

bool TerminalProgress::cancelled() const {
  return interrupted != 0;
}

}  // namespace wrapgauge
