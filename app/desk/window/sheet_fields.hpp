#pragma once
#include "app/desk/window/field_form.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// The two sheets, each hardness with its source on hover; how they were stretched when fused; backing cloth
// and rim.
void add_sheet_rows(FieldForm<Layout>& rows);

}  // namespace wrapgauge
