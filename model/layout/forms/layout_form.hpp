#pragma once
// Starting layouts from a few measurements: draw one, then change it to taste.
//
// Parameters are millimetres, or plain numbers where said. `height` is along the limb (y); the layout goes
// round along x. Lower left corner at the origin, except the round pad, whose middle is there.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

struct LayoutParameter {
  std::string name;
  double default_value = 0.0;
  double least = 0.0, most = 0.0;  // what is taken
  std::string meaning;
  std::string unit;    // empty: a count or a share
  std::string source;  // of the default, with status
  bool whole = false;  // a count
  // A girth that a body can give: where it is measured, as a share of `height` from the layout's middle,
  // towards proximal.
  std::optional<double> measured_at;
};

struct LayoutForm {
  std::string name;
  std::string about;
  std::vector<LayoutParameter> parameters;
  Sheet skin_sheet, outer_sheet;  // unless others are asked for
};

// Every form there is, with its documented parameters.
const std::vector<LayoutForm>& layout_forms();
// Problem: unknown form (the known ones are listed).
Result<LayoutForm> find_layout_form(const std::string& name);

struct MadeSheets {
  std::optional<Sheet> skin, outer;  // none: the form's own
};

// Draws a form; parameters that are not given take their defaults. The layout passes check_layout. Problems:
// unknown form or parameter, a value out of its range, a count that is not whole, no room for the chambers
// (with the room there is), or what check_layout says.
Result<Layout> make_layout(const std::string& name, const std::map<std::string, double>& parameters,
                           const MadeSheets& sheets = {});

}  // namespace wrapgauge
