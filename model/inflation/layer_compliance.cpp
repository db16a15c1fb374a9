#include "model/inflation/layer_compliance.hpp"

#include <math.h>

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kSpacing = 0.01;  // of the table, in depths
constexpr double kWaveEnd = 16.0;  // 1 - s(16) is below 1e-10
constexpr int kWavePanels = 640;   // Simpson panels; J0 turns 36 times at most

double interpolated(const std::vector<double>& table, double q) {
  const double place = q / kSpacing;
  const auto k = std::min(static_cast<std::size_t>(place), table.size() - 2);
  const double share = place - static_cast<double>(k);
  return (1.0 - share) * table[k] + share * table[k + 1];
}

}  // namespace

LayerCompliance::LayerCompliance(double poisson) : poisson_factor_(3.0 - 4.0 * poisson) {
  std::vector<double> wave, weight;  // Simpson's rule for the integral of (1 - s) J0
  const double step = kWaveEnd / kWavePanels;
  for (int k = 0; k <= kWavePanels; ++k) {
    const double x = k * step, simpson = k == 0 || k == kWavePanels ? 1.0 : (k % 2 ? 4.0 : 2.0);
    wave.push_back(x);
    weight.push_back(step / 3.0 * simpson * (1.0 - half_space_share(x)));
    if (x > 0.0) softest_ = std::max(softest_, half_space_share(x) / x);
  }
  const auto count = static_cast<int>(std::lround(kReach / kSpacing)) + 1;
  for (int k = 0; k < count; ++k) {
    const double q = k * kSpacing;
    double sum = 0.0, bend = 0.0;
    for (std::size_t i = 0; i < wave.size(); ++i) {
      const double part = weight[i] * ::j0(q * wave[i]);
      sum += part;
      bend += part * wave[i] * wave[i];
    }
    correction_.push_back(sum);
    bend_.push_back(bend);
    const double before = k > 0 ? (q - kSpacing) * correction_[correction_.size() - 2] : 0.0;
    moment_.push_back(k > 0 ? moment_.back() + 0.5 * kSpacing * (before + q * sum) : 0.0);
  }
}

double LayerCompliance::half_space_share(double x) const {
  if (x > 30.0) return 1.0;
  const double m = poisson_factor_;
  // Near 0 the numerator's two terms cancel for nu near 0.5.
  const double rise = x < 1e-2 ? 2.0 * x * x * x * (4.0 / 6.0) : std::sinh(2.0 * x) - 2.0 * x;
  const double numerator = 2.0 * m * rise + 4.0 * x * (m - 1.0);
  return numerator / (2.0 * m * std::cosh(2.0 * x) + m * m + 1.0 + 4.0 * x * x);
}

double LayerCompliance::depth_correction(double q) const {
  return q >= kReach ? 1.0 / q : interpolated(correction_, q);
}

double LayerCompliance::depth_correction_bend(double q) const {
  return q >= kReach ? 0.0 : interpolated(bend_, q);
}

double LayerCompliance::depth_correction_moment(double q) const {
  return q >= kReach ? moment_.back() + q - kReach : interpolated(moment_, q);
}

}  // namespace wrapgauge
