#pragma once
// A limit set that is not the program's own, from the plan or from a folder of tables of one's own: every
// output names it, and it may be laxer only when the plan says in words why.

#include <optional>
#include <string>
#include <vector>

#include "model/limits/comparison.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

// What `own` allows beyond `shipped`, one phrase each with both numbers; empty: it is nowhere laxer.
std::vector<Phrase> laxer_parts(const LimitSet& own, const LimitSet& shipped);

// `own`, ready to be used, with `differs_words` when it is not the shipped set. With a reason, laxer parts
// are let through and `override_words` is set; a reason of spaces is none. Problems: a row taken from a
// source that is no limit for held pressure (no reason helps); laxer parts and no reason, with the first of
// them; a reason and nothing that needs it.
Result<LimitSet> own_limit_set(LimitSet own, const LimitSet& shipped, const Comparisons& comparisons,
                               const std::optional<std::string>& reason);

}  // namespace wrapgauge
