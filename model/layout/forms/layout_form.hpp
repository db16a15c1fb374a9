#pragma once
// Starting layouts from a few measurements: draw one, then change it to taste.
//
// Parameters are millimetres, or plain numbers where said. `height` is along the limb (y); the layout goes
// round along x. Lower left corner at the origin, except the round pad, whose middle is there.

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// How wide a form is drawn when nobody says: so that its outer sheet meets round the limb stretched by
// `beyond`, the mean of `girths` (names of parameters) being enlarged by two pi times the depth of that
// sheet's middle over the skin, or by the part of it that the sheets cover.
struct LayoutFit {
  std::vector<std::string> girths;
  double beyond = 0.0;
  std::string covered = {};  // parameter: share of the girth under the sheets; empty: all of it
};

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
  // A difference of girths that a body can give, the second less the first; places as above.
  std::optional<std::array<double, 2>> measured_between = {};
  std::optional<LayoutFit> fit = {};  // what it is when it is not given, instead of its default
  // How much rounder the limb is at the second place than halfway between the first and the third; as above.
  std::optional<std::array<double, 3>> measured_bulge = {};
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

// Every parameter of a form as make_layout uses it: given, fitted or its default. Problems: as make_layout's
// of parameters.
Result<std::map<std::string, double>> layout_parameters(const std::string& name,
                                                        const std::map<std::string, double>& given,
                                                        const MadeSheets& sheets = {});

// Draws a form; parameters that are not given are fitted or take their defaults. The layout passes
// check_layout. Problems: unknown form or parameter, a value out of its range, a count that is not whole, no
// room for the chambers (with the room there is), or what check_layout says.
Result<Layout> make_layout(const std::string& name, const std::map<std::string, double>& parameters,
                           const MadeSheets& sheets = {});

}  // namespace wrapgauge
