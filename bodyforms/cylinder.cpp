#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

LimbShape cylinder_shape(const FormValues& values) {
  const Length girth = values.at("girth") * mm;
  return {{{0.0 * mm, girth, "girth"}, {values.at("length") * mm, girth, "girth"}},
          {{0.0, {values.at("aspect")}}},
          values.at("edge") * mm};
}

}  // namespace

FormMaker cylinder_form() {
  return {{"cylinder",
           "A test solid: round, or elliptic with an aspect other than 1.",
           {length_parameter(200.0, {}, "judgement"),
            girth_parameter("girth", 251.327, "everywhere", "40 mm radius"),
            aspect_parameter("aspect", 1.0, "everywhere", "round"), edge_parameter()},
           ""},
          {},
          limb<cylinder_shape>};
}

}  // namespace wrapgauge
