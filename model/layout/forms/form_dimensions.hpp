#pragma once
// Where the sizes that a form is drawn by lie in the drawn layout, for arrows beside it.

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/layout/forms/layout_form.hpp"

namespace wrapgauge {

// "width", which is no parameter: from edge to edge.
inline constexpr const char* kWidthDimension = "width";

struct FormDimension {
  std::string parameter;
  Vec2 from_m, to_m;   // ends of the arrow; as far apart as the parameter says
  bool whole = false;  // over all of the layout: its arrow stands beside it
};

// `values`: every parameter of the form, as layout_parameters gives them. Counts, stretches and stiffnesses
// have no arrow, nor has what the layout has none of.
std::vector<FormDimension> form_dimensions(const std::map<std::string, double>& values, const Layout& layout);

// Where a loop crosses the horizontal line at `y_m`: x of the leftmost and of the rightmost place; none:
// nowhere.
std::optional<std::pair<double, double>> ends_across(const Polygon& loop_m, double y_m);

}  // namespace wrapgauge
