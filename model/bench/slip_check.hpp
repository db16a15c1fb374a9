#pragma once
// Readings that look like a slip: ten times off, or typed in the other unit. Asked about, never changed.

#include "model/bench/reading.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Whether a ratio of read to predicted is asked about: beyond any factor that is fitted from a middle one.
bool is_far_off(double ratio);

// `predicted`: SI, a row each. A reading's ratio to its prediction is held against the middle ratio of the
// other readings of its kind, or against 1 where there are fewer than two; then that of the whole kind
// against 1. Rows that are confirmed are passed over. Problem: the first, with its line.
std::optional<Problem> slip_of(const Readings& readings, const std::vector<std::optional<double>>& predicted);

}  // namespace wrapgauge
