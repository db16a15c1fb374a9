#pragma once
// What one form's source file gives to the list of forms.

#include <map>
#include <string>

#include "bodyforms/form.hpp"
#include "bodyforms/limb_surface.hpp"

namespace wrapgauge {

// Checked parameter values in mm, every one of the form present.
using FormValues = std::map<std::string, double>;

struct FormMaker {
  Form form;
  LimbShape (*shape)(const FormValues& values);
};

FormMaker tapered_limb_form();
FormMaker forearm_form();
FormMaker calf_form();
FormMaker cylinder_form();
FormMaker cone_form();

// Parameters every form has.
FormParameter length_parameter(double default_mm, std::string source);
FormParameter edge_parameter();
FormParameter girth_parameter(std::string name, double default_mm, std::string where, std::string source);
FormParameter aspect_parameter(std::string name, double default_value, std::string where, std::string source);

}  // namespace wrapgauge
