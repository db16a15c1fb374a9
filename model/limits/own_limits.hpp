#pragma once
// A user's own limit set may only be stricter than the program's, unless the plan says in writing why not.

#include <optional>
#include <string>
#include <vector>

#include "model/limits/comparison.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

// What `own` allows beyond `shipped`, one phrase each with both numbers; empty: it is nowhere laxer.
std::vector<Phrase> laxer_parts(const LimitSet& own, const LimitSet& shipped);

// `own`, ready to be used. With a reason, laxer parts are let through and `override_words` is set.
// Problems: a row taken from a source that is no limit for held pressure (no reason helps); laxer parts and
// no reason, with the first of them; a reason and nothing that needs it.
Result<LimitSet> own_limit_set(LimitSet own, const LimitSet& shipped, const Comparisons& comparisons,
                               const std::optional<std::string>& reason);

}  // namespace wrapgauge
