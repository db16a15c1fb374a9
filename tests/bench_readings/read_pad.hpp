#pragma once
#include "model/layout/layout.hpp"

namespace wrapgauge {

// A layout that readings name: chamber 'pad', inlet 'hose'.
inline Layout read_pad() {
  Layout layout;
  layout.name = "pad";
  layout.outline_m = {{0, 0}, {0.1, 0}, {0.1, 0.1}, {0, 0.1}};
  layout.chambers.push_back({"pad", {{0.02, 0.02}, {0.08, 0.02}, {0.08, 0.08}, {0.02, 0.08}}, {}, {}});
  layout.inlets.push_back({"hose", {0.05, 0.05}});
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"00-30", 2.5 * mm};
  return layout;
}

}  // namespace wrapgauge
