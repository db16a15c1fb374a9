#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

LimbShape shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  return {{{0.0 * mm, values.at("girth_distal") * mm},
           {values.at("middle") * length, values.at("girth_middle") * mm},
           {length, values.at("girth_proximal") * mm}},
          values.at("aspect_distal"),
          values.at("aspect_proximal"),
          values.at("edge") * mm};
}

}  // namespace

FormMaker tapered_limb_form() {
  const std::string chosen = "judgement: between wrist and forearm of the form \"forearm\"";
  return {{"tapered-limb",
           "A limb through three girths: distal, at a middle station, proximal.",
           {length_parameter(250.0, "judgement"),
            girth_parameter("girth_distal", 180.0, "at the distal end", chosen),
            girth_parameter("girth_middle", 250.0, "at the middle station", chosen),
            girth_parameter("girth_proximal", 290.0, "at the proximal end", chosen),
            {"middle", 0.5, 0.1, 0.9, "station of girth_middle as a share of the length", "judgement"},
            aspect_parameter("aspect_distal", 1.2, "at the distal end", "judgement"),
            aspect_parameter("aspect_proximal", 1.2, "at the proximal end", "judgement"),
            edge_parameter()},
           ""},
          shape};
}

}  // namespace wrapgauge
