#pragma once
// A single change of the plan as a card: what to do, how near to a limit the device then comes, which
// chambers press less.

#include <vector>

#include "app/desk/window/finding_card.hpp"
#include "model/study/advice.hpp"

namespace wrapgauge {

// Those that help, in the order of the advice: within the limits, then better but not enough, at most a few.
std::vector<const TriedChange*> changes_to_show(const Advice& advice);

FindingCard card_of(const Advice& advice, const TriedChange& change);

// The verdict of a search for changes, and what became of those that are not shown.
QString advice_verdict(const Advice& advice);
QString rest_of_advice(const Advice& advice);

}  // namespace wrapgauge
