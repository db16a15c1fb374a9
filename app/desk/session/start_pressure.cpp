#include "app/desk/session/start_pressure.hpp"

#include <algorithm>

namespace wrapgauge {

void fill_unfed(Plan& plan) {
  for (const Inlet& inlet : plan.layout.inlets)
    if (std::none_of(plan.inflation.begin(), plan.inflation.end(),
                     [&](const InletProgram& program) { return program.inlet == inlet.name; }))
      plan.inflation.push_back({inlet.name, kStartPressure, {}});
}

}  // namespace wrapgauge
