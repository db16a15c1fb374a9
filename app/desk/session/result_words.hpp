#pragma once
#include <QString>

#include "app/desk/session/session_state.hpp"

namespace wrapgauge {

// "Out of date: the inflation changed."; empty: the result answers the plan.
QString out_of_date_words(const SessionState& state);

// On which mesh the result was made, how old it is and what was not reached; empty: there is none.
QString made_of_words(const SessionState& state);

}  // namespace wrapgauge
