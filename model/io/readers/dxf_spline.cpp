#include "model/io/readers/dxf_spline.hpp"

#include <algorithm>
#include <cmath>

#include "model/io/readers/path_trace.hpp"

namespace wrapgauge {
namespace {

constexpr int kHighestDegree = 15;
constexpr double kFineTolerance = 1e-7;  // m

// The stretch [knots[k], knots[k + 1]) that holds the parameter.
int stretch_of(const Spline& spline, double u) {
  const int last = static_cast<int>(spline.control_m.size()) - 1;
  const auto above = std::upper_bound(spline.knots.begin(), spline.knots.end(), u);
  return std::clamp(static_cast<int>(above - spline.knots.begin()) - 1, spline.degree, last);
}

// Even chords that keep within the tolerance, by doubling.
int chords_of(const CurvePoint& point, double tolerance, int most) {
  int n = 2;
  for (; n < most; n *= 2) {
    double worst = 0.0;
    for (int i = 0; i < n; ++i) {
      const Vec2 a = point(static_cast<double>(i) / n), b = point((i + 1.0) / n);
      worst = std::max(worst, (point((i + 0.5) / n) - 0.5 * (a + b)).norm());
    }
    if (worst <= tolerance) break;
  }
  return n;
}

}  // namespace

Vec2 spline_point(const Spline& spline, double u) {
  const int p = spline.degree, k = stretch_of(spline, u);
  Eigen::Vector3d d[kHighestDegree + 1];
  for (int j = 0; j <= p; ++j) {
    const double w = spline.weights[k - p + j];
    d[j] << w * spline.control_m[k - p + j], w;
  }
  for (int r = 1; r <= p; ++r)
    for (int j = p; j >= r; --j) {
      const double low = spline.knots[j + k - p], high = spline.knots[j + 1 + k - r];
      const double share = high > low ? (u - low) / (high - low) : 0.0;
      d[j] = (1.0 - share) * d[j - 1] + share * d[j];
    }
  return d[p].head<2>() / d[p].z();
}

std::optional<std::string> spline_fault(const Spline& spline) {
  const std::size_t count = spline.control_m.size(), degree = static_cast<std::size_t>(spline.degree);
  if (spline.degree < 1 || spline.degree > kHighestDegree || count <= degree)
    return "has the degree " + std::to_string(spline.degree) + " and " + std::to_string(count) +
           " control points, which make no spline";
  if (spline.knots.size() != count + degree + 1)
    return "has " + std::to_string(spline.knots.size()) + " knots where " +
           std::to_string(count + degree + 1) + " belong";
  if (!std::is_sorted(spline.knots.begin(), spline.knots.end()) ||
      !(spline.knots[count] > spline.knots[degree]))
    return "has knots that do not rise";
  if (std::any_of(spline.weights.begin(), spline.weights.end(),
                  [](double w) { return !(w > 1e-9 && w < 1e9); }))
    return "has a weight that is not above zero";
  return std::nullopt;
}

std::optional<DrawnPath> trace_spline(const Spline& spline, std::string& fault) {
  if (auto found = spline_fault(spline)) {
    fault = std::move(*found);
    return std::nullopt;
  }
  const std::size_t first = static_cast<std::size_t>(spline.degree), last = spline.control_m.size();
  const int most = std::clamp(static_cast<int>(65536 / (last - first)), 8, 4096);
  PathTrace trace(spline_point(spline, spline.knots[first]));
  for (std::size_t i = first; i < last; ++i) {
    const double from = spline.knots[i], to = spline.knots[i + 1];
    if (!(to > from)) continue;
    const auto point = [&](double t) { return spline_point(spline, from + t * (to - from)); };
    trace.curve_to(point, chords_of(point, kFlatteningTolerance, most),
                   chords_of(point, kFineTolerance, most));
  }
  return trace.finish(false);
}

}  // namespace wrapgauge
