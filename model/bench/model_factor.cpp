#include "model/bench/model_factor.hpp"

#include <algorithm>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>
#include <set>

#include "model/bench/bench_family.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr double kOneSided = 1.644854;  // 95 %

struct ContactRatios {
  std::vector<double> logs;
  double sensor_error = 0.0, highest = 0.0;
  std::set<int> chambers;
  std::vector<double> levels_pa;
};

// Gauges within a tenth are one level.
void add_level(double gauge_pa, std::vector<double>& levels) {
  constexpr double kSame = 1.1;
  for (const double level : levels)
    if (std::max(level, gauge_pa) < kSame * std::min(level, gauge_pa)) return;
  levels.push_back(gauge_pa);
}

ContactRatios contact_ratios(const std::vector<Reading>& rows, const BenchFit& fit, const Layout& layout) {
  ContactRatios all;
  for (const FittedReading& one : fit.readings) {
    const Reading& row = rows[one.row];
    if (row.kind != ReadingKind::kContact) continue;
    all.logs.push_back(std::log(one.read / one.fitted));
    all.sensor_error = std::max(all.sensor_error, row.error);
    all.highest = std::max(all.highest, one.read / one.fitted * std::exp(kOneSided * row.error));
    add_level(row.value(ReadingField::kGauge), all.levels_pa);
    if (const auto chamber = chamber_of_reading(row, layout))
      all.chambers.insert(static_cast<int>(index_of(*chamber)));
  }
  return all;
}

Phrase too_few(const ModelFactor& factor, bool same_part) {
  if (factor.contact == 0) return Phrase::worded("no contact was read");
  if (!same_part) return Phrase::worded("contact was read on another part of a body");
  return Phrase::worded(
      "%1 contact readings over %2 chambers and %3 levels were made, and it takes %4 over %5 and %6",
      {figures_of(factor.contact), figures_of(factor.chambers), figures_of(factor.levels),
       figures_of(kFewestContact), figures_of(kFewestChambers), figures_of(kFewestLevels)});
}

Phrase usual_why(const ModelFactor& factor, bool same_part) {
  const Phrase few = too_few(factor, same_part);
  if (factor.factor > kUncalibratedFactor)
    return Phrase::worded(
        "The factor goes up to %1: a contact reading, its sensor's error counted, lies that far above its "
        "prediction (%2).",
        {figures_of(number_text(factor.factor, 3)), few});
  return Phrase::worded("The factor stays at %1: %2.", {figures_of(number_text(kUncalibratedFactor)), few});
}

Phrase read_why(const ModelFactor& factor) {
  const Phrase contact = figures_of(factor.contact), chambers = figures_of(factor.chambers),
               levels = figures_of(factor.levels);
  if (factor.factor <= kLeastModelFactor)
    return Phrase::worded(
        "The factor is %1, the lowest that is taken: %2 contact readings over %3 chambers and %4 levels ask "
        "for %5.",
        {figures_of(number_text(kLeastModelFactor, 3)), contact, chambers, levels,
         figures_of(number_text(std::max(factor.bound, factor.highest), 3))});
  return Phrase::worded(
      "The factor is %1: 95 in 100 places are read below that many times their prediction, with 95 % "
      "confidence, by %2 contact readings over %3 chambers and %4 levels.",
      {figures_of(number_text(factor.factor, 3)), contact, chambers, levels});
}

// Rounded to a hundredth, away from the lax side.
double rounded_up(double factor) {
  return std::ceil(100.0 * factor - 1e-9) / 100.0;
}

}  // namespace

double tolerance_bound(const std::vector<double>& log_ratios, double sensor_error) {
  const auto n = static_cast<double>(log_ratios.size());
  const double mean = std::accumulate(log_ratios.begin(), log_ratios.end(), 0.0) / n;
  double squares = 0.0;
  for (const double ratio : log_ratios) squares += (ratio - mean) * (ratio - mean);
  const double scatter = std::sqrt(squares / (n - 1.0) + sensor_error * sensor_error);
  const double share = boost::math::quantile(boost::math::normal_distribution<double>(), 0.95);
  const double times =
      boost::math::quantile(boost::math::non_central_t_distribution<double>(n - 1.0, share * std::sqrt(n)),
                            0.95) /
      std::sqrt(n);
  return std::exp(mean + times * scatter);
}

ModelFactor model_factor(const std::vector<Reading>& rows, const BenchFit& fit, const Layout& layout,
                         bool same_part) {
  const ContactRatios ratios = contact_ratios(rows, fit, layout);
  ModelFactor out;
  out.contact = static_cast<int>(ratios.logs.size());
  out.chambers = static_cast<int>(ratios.chambers.size());
  out.levels = static_cast<int>(ratios.levels_pa.size());
  out.highest = ratios.highest;
  if (out.contact > 0)
    out.middle = std::exp(std::accumulate(ratios.logs.begin(), ratios.logs.end(), 0.0) / out.contact);
  out.from_readings = same_part && out.contact >= kFewestContact && out.chambers >= kFewestChambers &&
                      out.levels >= kFewestLevels;
  if (out.from_readings) {
    out.bound = tolerance_bound(ratios.logs, ratios.sensor_error);
    out.factor = rounded_up(std::max({out.bound, kLeastModelFactor}));
    out.why = read_why(out);
    return out;
  }
  if (out.highest > kUncalibratedFactor) out.factor = rounded_up(out.highest);
  out.why = usual_why(out, same_part);
  return out;
}

}  // namespace wrapgauge
