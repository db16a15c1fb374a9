#include "model/core/time_text.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

bool is_whole(double value) {
  return std::abs(value - std::round(value)) < 1e-9;
}

}  // namespace

std::string time_text(Time time) {
  const double seconds = time / second, minutes = time / minute, hours = minutes / 60.0;
  if (hours >= 1.0 && is_whole(hours)) return fixed_text(hours, 0) + " h";
  if (minutes >= 2.0) return fixed_text(minutes, is_whole(minutes) ? 0 : 1) + " min";
  return fixed_text(seconds, is_whole(seconds) || seconds >= 20.0 ? 0 : seconds < 0.1 ? 2 : 1) + " s";
}

std::string rough_time_text(Time time) {
  const double seconds = time / second;
  if (seconds < 90.0) return fixed_text(std::max(1.0, std::round(seconds)), 0) + " s";
  if (seconds < 5400.0) return fixed_text(std::round(seconds / 60.0), 0) + " min";
  return fixed_text(std::round(seconds / 3600.0), 0) + " h";
}

}  // namespace wrapgauge
