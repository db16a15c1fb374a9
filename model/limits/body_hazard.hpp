#pragma once
// Hazards to the limb and to the person in the device.

#include "model/limits/hazard.hpp"

namespace wrapgauge {

Hazard vein_hazard(const HazardInputs& inputs);
Hazard nerve_hazard(const HazardInputs& inputs);
Hazard compartment_hazard(const HazardInputs& inputs);
Hazard shear_hazard(const HazardInputs& inputs);
Hazard trapped_hazard(const HazardInputs& inputs);  // vented, but still fastened

// What the program knows nothing of, each a row to fill.
Hazard tube_hazard();
Hazard fall_hazard();
Hazard allergy_hazard();
Hazard uncured_hazard();
Hazard latex_hazard();
Hazard dirt_hazard();

}  // namespace wrapgauge
