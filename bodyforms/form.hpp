#pragma once
// Bodies from a few measurements: smooth open limbs of elliptic sections, and test solids.
//
// Frame: axis along +z, distal end at z = 0, the wider diameter of each section along x. Metres inside;
// parameters are millimetres, or plain numbers where said.

#include <map>
#include <string>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct FormParameter {
  std::string name;
  double default_value = 0.0;
  double least = 0.0, most = 0.0;  // what is taken
  std::string meaning;             // with its unit
  std::string source;              // of the default, with status
};

struct Form {
  std::string name;
  std::string about;
  std::vector<FormParameter> parameters;
  std::string tissue_site;  // row of the tissue table that suits it; empty: left to the plan
};

// Every form there is, with its documented parameters.
const std::vector<Form>& forms();

// Builds a form; parameters that are not given take their defaults. Problems: unknown form or parameter (the
// known ones are listed), a value out of its range, a surface steeper than 45 degrees.
Result<Body> make_form(const std::string& name, const std::map<std::string, double>& parameters);

}  // namespace wrapgauge
