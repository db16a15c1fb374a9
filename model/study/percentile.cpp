#include "model/study/percentile.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace wrapgauge {

double percentile(std::vector<double> values, double share) {
  assert(!values.empty() && share >= 0.0 && share <= 1.0);
  std::sort(values.begin(), values.end());
  const double place = share * static_cast<double>(values.size() - 1);
  const auto below = static_cast<std::size_t>(std::floor(place));
  const std::size_t above = std::min(below + 1, values.size() - 1);
  return values[below] + (place - std::floor(place)) * (values[above] - values[below]);
}

}  // namespace wrapgauge
