#include "model/core/beside_limit.hpp"

#include <charconv>
#include <cmath>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostDecimals = 12;

double read_back(const std::string& text) {
  double value = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

// As many decimals as the number itself has, at least `decimals`.
std::string unrounded(double value, int decimals) {
  for (; decimals < kMostDecimals; ++decimals)
    if (std::abs(read_back(fixed_text(value, decimals)) - value) <= 1e-9 * std::abs(value)) break;
  return fixed_text(value, decimals);
}

// The fewest decimals with which `value` stands on the side of `shown_limit` on which it is; `decimals` where
// none up to `most` does.
std::string on_its_side(double value, bool above, const std::string& shown_limit, int decimals,
                        int most = kMostDecimals) {
  const double limit = read_back(shown_limit);
  for (int digits = decimals; digits <= most; ++digits)
    if (const std::string text = fixed_text(value, digits); (read_back(text) > limit) == above) return text;
  return fixed_text(value, decimals);
}

std::string shown_kpa(Pressure limit) {
  return unrounded(limit / kPa, 1);
}

std::string shown_mmhg(const std::string& kpa) {
  return fixed_text(read_back(kpa) * kPa / mmHg, 0);
}

Phrase both_units(const std::string& kpa, const std::string& mmhg) {
  return figures_of(kpa + " kPa (" + mmhg + " mmHg)");
}

}  // namespace

Phrase limit_figures(Pressure limit) {
  const std::string kpa = shown_kpa(limit);
  return both_units(kpa, shown_mmhg(kpa));
}

Phrase figures_beside(Pressure value, Pressure limit) {
  const bool above = value > limit;
  const std::string limit_kpa = shown_kpa(limit);
  const std::string kpa = on_its_side(value / kPa, above, limit_kpa, 1);
  // The limit's whole mmHg may be rounded up past the value; then both show the same.
  return both_units(kpa, on_its_side(read_back(kpa) * kPa / mmHg, above, shown_mmhg(limit_kpa), 0, 2));
}

Phrase percent_beside(double share) {
  return figures_of(on_its_side(100.0 * share, share > 1.0, "100", 0) + " %");
}

std::string number_beside(double value, double limit, int decimals) {
  return on_its_side(value, value > limit, unrounded(limit, decimals), decimals);
}

}  // namespace wrapgauge
