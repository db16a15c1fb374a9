#pragma once
// What people answer for in a plan: a clinician, someone's word on the sites, the wearers, the date of the
// note.

#include <string>

#include "app/desk/session/session_state.hpp"

namespace wrapgauge {

// Each gives the changed plan. Problems are those of reading a plan that says this, without the place in the
// file: words that are missing, a day that is none.
Result<Plan> with_sites_confirmed(Plan plan, const SitesConfirmed& word);
Result<Plan> with_clearance(Plan plan, const Clearance& clinician);
Result<Plan> with_date(Plan plan, const std::string& date);  // empty: a cell to fill

// Of the six answers about the wearers and the date.
int answers_missing(const Plan& plan);

// A clinician has to allow what the newest result found, or the plan names one.
bool asks_for_clearance(const SessionState& state);
// The body brings no sites of its own: someone may answer for there being no others.
bool may_have_no_sites(const SessionState& state);

}  // namespace wrapgauge
