#pragma once
// Hazards of the air inside and of what pushes it in.

#include "model/limits/hazard.hpp"

namespace wrapgauge {

Hazard warming_hazard(const HazardInputs& inputs);  // sealed in the room, warmed by the skin
Hazard rising_hazard(const HazardInputs& inputs);   // sealed on the ground, worn in a climbing cabin
Hazard source_hazard(const HazardInputs& inputs);   // syringe or pump able to exceed the limit
Hazard stuck_hazard(const HazardInputs& inputs);    // setting of the relief valves
Hazard vent_hazard(const HazardInputs& inputs);     // time to let go through the tube
Hazard power_hazard(const HazardInputs& inputs);    // valves that must open without it

}  // namespace wrapgauge
