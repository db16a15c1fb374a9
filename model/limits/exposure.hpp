#pragma once
// Pressure on one place over time, held against how long and how often a row lets it be pressed. The product
// of pressure and time is bookkeeping and no proof: the curve behind it has no clear threshold and fails for
// very short and very long times (Reswick & Rogers 1976; Gefen 2009, from memory).

#include <optional>
#include <vector>

#include "model/limits/limit_set.hpp"

namespace wrapgauge {

struct PressurePoint {
  Time at;
  Pressure pressure;  // after the model factor; straight between points, two at one time: a jump
};

struct Exposure {
  Time session;
  Pressure highest;
  PressureTime product;                     // over the whole session, rests included
  Time on;                                  // all time above the rest pressure
  Time longest_hold;                        // without a break
  std::optional<double> least_off_over_on;  // a break over the hold before it; none: nothing follows a break
  double duty = 0.0;                        // on / session
};

// `over_time` rises in time and starts at 0. A place is let go when pressed `rest_below` or less.
Exposure exposure(const std::vector<PressurePoint>& over_time, Pressure rest_below);

// The stricter of two in each of their times.
UseTimes stricter(const UseTimes& a, const UseTimes& b);

// The times of a place judged by `row` when the device is used as `use`: the row's, and the soft row's of the
// use where those are stricter. A stricter place that falls back on another use's row (a pulse over bone on
// the short hold's) thus never gets laxer times than a soft one.
UseTimes times_that_hold(const LimitSet& limits, const LimitRow& row, UsePattern use);

// Limit times the longest time on that the row's times allow.
PressureTime allowed_product(const LimitRow& row);

// When the product is reached; none: never.
std::optional<Time> time_of_product(const std::vector<PressurePoint>& over_time, PressureTime product);

enum class TimeRule { kHold, kOff, kSession, kDuty };

struct BrokenTime {
  TimeRule rule;
  double times_over;  // how far beyond, as a ratio above 1
  Phrase words;       // "pressed for 10 min without a break, 60 s at most"
};

// What of a row's times is not kept.
std::vector<BrokenTime> broken_times(const Exposure& exposure, const UseTimes& times);

}  // namespace wrapgauge
