#include "bodyforms/leg_parameters.hpp"

#include "bodyforms/form_values.hpp"

namespace wrapgauge {

FormParameter ankle_girth() {
  return measured_girth("girth_ankle", "anklecircumference", "above the malleoli, where it is thinnest");
}

FormParameter malleoli_girth() {
  return shared_girth("girth_malleoli", {{"girth_ankle", 1.10}}, "over the malleoli",
                      "judgement: 1.10 of the thinnest; not in the survey");
}

FormParameter ankle_aspect() {
  return aspect_parameter("aspect_ankle", 0.8, "at the ankle, x from side to side", "judgement");
}

FormParameter girth_below_knee(std::string name, std::string widest, const std::string& words) {
  return shared_girth(std::move(name), {{std::move(widest), 0.92}}, "below the knee",
                      "judgement: 0.92 of " + words + "; not in the survey");
}

std::vector<FormParameter> calf_parameters() {
  return {measured_girth("girth_calf", "calfcircumference", "where the calf is widest"),
          girth_below_knee("girth_knee", "girth_calf", "the widest"), ankle_aspect(),
          aspect_parameter("aspect_knee", 0.9, "at the knee, x from side to side", "judgement"),
          edge_parameter()};
}

}  // namespace wrapgauge
