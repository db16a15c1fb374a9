#pragma once
// What commands say, on its way to the terminal: names out of files may hold characters that a terminal
// obeys.

#include <ostream>
#include <streambuf>
#include <string>

namespace wrapgauge {

// Passes whole lines on, without control characters; what is left without a line break, at the end.
class CleanStream : private std::streambuf, public std::ostream {
 public:
  explicit CleanStream(std::ostream& sink);
  ~CleanStream() override;
  CleanStream(const CleanStream&) = delete;
  CleanStream& operator=(const CleanStream&) = delete;

 private:
  int overflow(int letter) override;
  void pass_on();

  std::ostream& sink_;
  std::string line_;
};

}  // namespace wrapgauge
