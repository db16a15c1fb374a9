#pragma once
#include <vector>

#include "app/desk/window/field_form.hpp"
#include "model/body/mend_step.hpp"

namespace wrapgauge {

// The steps that make a raw scan a body, each on or off with its numbers below it. New ones come in the
// order: table, crumbs, holes, smooth, pose, cut, mirror, triangles.
void add_mend_rows(FieldForm<std::vector<MendStep>>& rows);

}  // namespace wrapgauge
