#include "model/layout/drawn_fault.hpp"

namespace wrapgauge {

std::string fault_text(const Drawing& drawing, const DrawnFault& fault) {
  std::string text = fault.shape ? "the " + place_text(drawing.shapes[*fault.shape]) + " " : "";
  text += english(fault.words);
  const std::string remedy = fault.by_option.empty() ? english(fault.remedy) : fault.by_option;
  return remedy.empty() ? text + "." : text + "; " + remedy + ".";
}

}  // namespace wrapgauge
