#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

LimbShape cone_shape(const FormValues& values) {
  return {{{0.0 * mm, values.at("girth_distal") * mm, "girth_distal"},
           {values.at("length") * mm, values.at("girth_proximal") * mm, "girth_proximal"}},
          {{0.0, {values.at("aspect")}}},
          values.at("edge") * mm};
}

}  // namespace

FormMaker cone_form() {
  return {{"cone",
           "A test solid: a cut-off cone, girth linear along the axis.",
           {length_parameter(200.0, {}, "judgement"),
            girth_parameter("girth_distal", 200.0, "at the distal end", "judgement"),
            girth_parameter("girth_proximal", 300.0, "at the proximal end", "judgement"),
            aspect_parameter("aspect", 1.0, "everywhere", "round"), edge_parameter()},
           ""},
          {},
          limb<cone_shape>};
}

}  // namespace wrapgauge
