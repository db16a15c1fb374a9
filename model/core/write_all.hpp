#pragma once
#include <string_view>

namespace wrapgauge {

// All bytes to an open POSIX descriptor, taken up again after signals. 0: done; otherwise the error's number.
int write_all(int descriptor, std::string_view bytes);

}  // namespace wrapgauge
