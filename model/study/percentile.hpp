#pragma once
#include <vector>

namespace wrapgauge {

// Sample quantile, definition 7 of Hyndman & Fan 1996 (American Statistician 50:361): the sorted values lie
// at shares 0, 1/(n-1), ... 1 and are joined by straight lines. `share` in [0, 1], at least one value.
double percentile(std::vector<double> values, double share);

}  // namespace wrapgauge
