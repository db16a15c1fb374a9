#pragma once
// Sections of the lower arm, shared by the forms "wrist" and "forearm".

#include <vector>

#include "bodyforms/form_values.hpp"

namespace wrapgauge {

// From wrist (share 0 of the forearm) to elbow. Harmonics derived: fitted to the sections of an adult man's
// arm of an open base mesh (CC0), turned so that the wrist lies flat; which way round is judgement.
std::vector<SectionAtShare> forearm_sections(double aspect_wrist, double aspect_elbow);

}  // namespace wrapgauge
