#pragma once
// Sections of the lower leg, shared by the forms "calf", "ankle" and "lower-leg".

#include <vector>

#include "bodyforms/form_values.hpp"

namespace wrapgauge {

// From the thinnest place above the malleoli (share 0) to below the knee. Harmonics and middle line derived:
// fitted to the sections of an adult man's calf of an open base mesh (CC0), shin forward. `aspect_ankle` and
// `aspect_knee` stand at the ends; round where the calf is widest.
std::vector<SectionAtShare> calf_sections(double aspect_ankle, double aspect_knee);

// The same over a part of another form: share 0 of the calf at `from`, its end at `to`.
std::vector<SectionAtShare> calf_sections_between(double aspect_ankle, double aspect_knee, double from,
                                                  double to);

}  // namespace wrapgauge
