#include "model/limits/exposure.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

struct Span {
  Time from, to;
};

// Part of the straight piece from a to b that lies above `level`.
std::optional<Span> above(const PressurePoint& a, const PressurePoint& b, Pressure level) {
  const bool high_a = a.pressure > level, high_b = b.pressure > level;
  if (!high_a && !high_b) return std::nullopt;
  if (high_a && high_b) return Span{a.at, b.at};
  const Time crossing = a.at + (b.at - a.at) * ((level - a.pressure) / (b.pressure - a.pressure));
  return high_a ? Span{a.at, crossing} : Span{crossing, b.at};
}

// Times above `level`; spans that touch are one.
std::vector<Span> holds_above(const std::vector<PressurePoint>& over_time, Pressure level) {
  std::vector<Span> holds;
  for (std::size_t i = 1; i < over_time.size(); ++i) {
    const auto part = above(over_time[i - 1], over_time[i], level);
    if (!part || part->to <= part->from) continue;
    if (!holds.empty() && part->from - holds.back().to <= 1e-9 * second)
      holds.back().to = part->to;
    else
      holds.push_back(*part);
  }
  return holds;
}

PressureTime piece_product(const PressurePoint& a, const PressurePoint& b) {
  return 0.5 * (a.pressure + b.pressure) * (b.at - a.at);
}

}  // namespace

Exposure exposure(const std::vector<PressurePoint>& over_time, Pressure rest_below) {
  Exposure out;
  if (over_time.empty()) return out;
  out.session = over_time.back().at;
  for (std::size_t i = 0; i < over_time.size(); ++i) {
    out.highest = std::max(out.highest, over_time[i].pressure);
    if (i > 0) out.product = out.product + piece_product(over_time[i - 1], over_time[i]);
  }
  const std::vector<Span> holds = holds_above(over_time, rest_below);
  for (std::size_t h = 0; h < holds.size(); ++h) {
    const Time hold = holds[h].to - holds[h].from;
    out.on = out.on + hold;
    out.longest_hold = std::max(out.longest_hold, hold);
    if (h + 1 == holds.size()) continue;
    const double ratio = (holds[h + 1].from - holds[h].to) / hold;
    out.least_off_over_on = std::min(out.least_off_over_on.value_or(ratio), ratio);
  }
  if (out.session > Time()) out.duty = out.on / out.session;
  return out;
}

UseTimes stricter(const UseTimes& a, const UseTimes& b) {
  UseTimes out{std::min(a.first_check, b.first_check), a.check_every ? a.check_every : b.check_every,
               std::min(a.longest_hold, b.longest_hold), std::max(a.off_over_on, b.off_over_on),
               std::min(a.longest_session, b.longest_session)};
  if (a.check_every && b.check_every) out.check_every = std::min(*a.check_every, *b.check_every);
  return out;
}

UseTimes times_that_hold(const LimitSet& limits, const LimitRow& row, UsePattern use) {
  const LimitRow* soft = find_row(limits, SiteClass::kSoft, use, Area());
  return soft ? stricter(row.times, soft->times) : row.times;
}

PressureTime allowed_product(const LimitRow& row) {
  return row.limit * row.times.longest_on();
}

std::optional<Time> time_of_product(const std::vector<PressurePoint>& over_time, PressureTime product) {
  PressureTime so_far;
  for (std::size_t i = 1; i < over_time.size(); ++i) {
    const PressurePoint &a = over_time[i - 1], &b = over_time[i];
    const PressureTime piece = piece_product(a, b), missing = product - so_far;
    if (piece < missing || piece <= PressureTime()) {
      so_far = so_far + piece;
      continue;
    }
    // a.pressure t + slope t^2 / 2 = missing, in the form that also holds without a slope.
    const double p = a.pressure.si(), slope = (b.pressure - a.pressure).si() / (b.at - a.at).si();
    const double root = std::sqrt(std::max(0.0, p * p + 2.0 * slope * missing.si()));
    return p + root > 0.0 ? a.at + Time(2.0 * missing.si() / (p + root)) : a.at;
  }
  return std::nullopt;
}

std::vector<BrokenTime> broken_times(const Exposure& exposure, const UseTimes& times) {
  constexpr double kSlack = 1.0 + 1e-6;  // rounding is no breach
  std::vector<BrokenTime> broken;
  const auto check = [&](TimeRule rule, double times_over, double slack, const Phrase& words) {
    if (times_over > slack) broken.push_back({rule, times_over, words});
  };
  check(TimeRule::kHold, exposure.longest_hold / times.longest_hold, kSlack,
        Phrase::worded("pressed for %1 without a break, %2 at most",
                       {figures_of(exposure.longest_hold), figures_of(times.longest_hold)}));
  check(TimeRule::kSession, exposure.session / times.longest_session, kSlack,
        Phrase::worded("a session of %1, %2 at most",
                       {figures_of(exposure.session), figures_of(times.longest_session)}));
  // One hold that fills a session shorter than the longest hold breaks neither rest nor duty.
  if (!exposure.least_off_over_on) return broken;
  const double off = *exposure.least_off_over_on;
  check(TimeRule::kOff, times.off_over_on / std::max(off, 1e-9), kSlack,
        Phrase::worded("off for only %1 times the hold before it, %2 times at least",
                       {figures_of(number_text(off, 2)), figures_of(number_text(times.off_over_on, 3))}));
  // The last hold may end with the session, without its rest: 2 % more than the duty is no breach.
  check(TimeRule::kDuty, exposure.duty / times.largest_duty(), 1.02,
        Phrase::worded("pressed for %1 of the time, %2 at most",
                       {percent_of(exposure.duty), percent_of(times.largest_duty())}));
  return broken;
}

}  // namespace wrapgauge
