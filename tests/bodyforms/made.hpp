#pragma once
// Forms made for tests: what has to be measured with a tape gets a plausible value.

#include "bodyforms/form.hpp"

namespace wrapgauge::forms_in_tests {

inline std::map<std::string, double> tape_values(const std::string& form) {
  if (form == "upper-arm") return {{"girth_middle", 320.0}};
  if (form == "knee") return {{"girth_knee", 385.0}};
  return {};
}

inline Result<MadeForm> made(const std::string& form, const Person& person = {}, double edge_mm = 4.0) {
  auto values = tape_values(form);
  values["edge"] = edge_mm;
  return make_measured_form(form, values, person);
}

}  // namespace wrapgauge::forms_in_tests
