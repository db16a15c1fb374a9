#include <numbers>

#include "bodyforms/ellipsoid_surface.hpp"
#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

Result<FormSurface> surface(const FormValues& values) {
  const Length girth = values.at("girth") * mm, diameter = girth / std::numbers::pi;
  return FormSurface{ellipsoid_surface({diameter, girth, 1.0, values.at("edge") * mm}),
                     {{"girth", 0.5 * diameter, girth}},
                     std::nullopt};
}

}  // namespace

FormMaker sphere_form() {
  return {{"sphere",
           "A test solid, closed.",
           {girth_parameter("girth", 314.159, "across the middle", "50 mm radius"), edge_parameter()},
           ""},
          {},
          surface};
}

}  // namespace wrapgauge
