#include "model/core/version.hpp"

namespace wrapgauge {
std::string_view program_version() {
  return "0.1.0";
}
}  // namespace wrapgauge
