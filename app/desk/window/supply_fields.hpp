#pragma once
#include "app/desk/window/field_form.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// The session over time, and what fills, holds and vents the device.
void add_supply_rows(FieldForm<Plan>& rows);
void settle_session(Plan& plan);  // a time off belongs to a hold

}  // namespace wrapgauge
