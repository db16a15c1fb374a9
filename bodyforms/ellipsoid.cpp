#include "bodyforms/ellipsoid_surface.hpp"
#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

Result<FormSurface> surface(const FormValues& values) {
  const Length girth = values.at("girth") * mm, length = values.at("length") * mm;
  return FormSurface{ellipsoid_surface({length, girth, values.at("aspect"), values.at("edge") * mm}),
                     {{"girth", 0.5 * length, girth}},
                     std::nullopt};
}

}  // namespace

FormMaker ellipsoid_form() {
  return {{"ellipsoid",
           "A test solid, closed: its long axis along z.",
           {length_parameter(160.0, {}, "judgement"),
            girth_parameter("girth", 314.159, "across the middle", "50 mm radius"),
            aspect_parameter("aspect", 1.2, "across the middle", "judgement"), edge_parameter()},
           ""},
          {},
          surface};
}

}  // namespace wrapgauge
