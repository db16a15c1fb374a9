#pragma once
// Qt stamps each PDF with the time of day; a result has to depend on its input alone.

#include <string>

namespace wrapgauge {

// While it lives, the process's local time is UTC, so that the stamp's length does not depend on where the
// program runs. Not for use while other threads read the environment.
class PdfDateFixed {
 public:
  PdfDateFixed();
  ~PdfDateFixed();
  PdfDateFixed(const PdfDateFixed&) = delete;
  PdfDateFixed& operator=(const PdfDateFixed&) = delete;

 private:
  bool had_zone_;
  std::string zone_;
};

// The PDF with every digit of its /CreationDate and /ModDate set to that of 2000-01-01 00:00:00; no byte
// moves, so the file's table of offsets stays right.
std::string without_date(std::string pdf);

}  // namespace wrapgauge
