#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

LimbShape tapered_limb_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  return {{{0.0 * mm, values.at("girth_distal") * mm, "girth_distal"},
           {values.at("middle") * length, values.at("girth_middle") * mm, "girth_middle"},
           {length, values.at("girth_proximal") * mm, "girth_proximal"}},
          {{0.0, {values.at("aspect_distal")}}, {1.0, {values.at("aspect_proximal")}}},
          values.at("edge") * mm};
}

FormParameter middle_parameter() {
  FormParameter parameter{"middle",   0.5, 0.1, 0.9, "station of girth_middle as a share of the length",
                          "judgement"};
  parameter.base = 0.5;
  return parameter;
}

}  // namespace

FormMaker tapered_limb_form() {
  const std::string chosen = "judgement: between wrist and forearm of the form \"forearm\"";
  return {{"tapered-limb",
           "A limb of elliptic sections through three girths: distal, at a middle station, proximal.",
           {length_parameter(250.0, {}, "judgement"),
            girth_parameter("girth_distal", 180.0, "at the distal end", chosen),
            girth_parameter("girth_middle", 250.0, "at the middle station", chosen),
            girth_parameter("girth_proximal", 290.0, "at the proximal end", chosen), middle_parameter(),
            aspect_parameter("aspect_distal", 1.2, "at the distal end", "judgement"),
            aspect_parameter("aspect_proximal", 1.2, "at the proximal end", "judgement"), edge_parameter()},
           ""},
          {},
          limb<tapered_limb_shape>};
}

}  // namespace wrapgauge
