#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

constexpr double kBand = 0.35;  // station of the head girth, share of the length

// Judgement: an egg, broader behind, that draws in towards the crown.
LimbShape head_band_shape(const FormValues& values) {
  const Length length = values.at("length") * mm, head = values.at("girth_head") * mm;
  const double aspect = values.at("aspect_head");
  return {{{0.0 * mm, 0.985 * head}, {kBand * length, head, "girth_head"}, {length, 0.93 * head}},
          {{0.0, {aspect, {0.0, 0.0, 0.015, 0.0, 0.0}}}, {1.0, {aspect, {0.0, 0.0, 0.010, 0.0, 0.0}}}},
          values.at("edge") * mm};
}

std::vector<SiteOnForm> head_band_sites() {
  const std::string eye = "Keep clear of brows and eyes.";
  return {{"forehead", 0.5, 90, 32, 5},
          {"right brow nerve", 0.1, 74, 13, 4, SiteKind::kNerve, eye},
          {"left brow nerve", 0.1, 106, 13, 4, SiteKind::kNerve, eye},
          {"right temple artery", 0.3, 20, 15, 8, SiteKind::kVessel},
          {"left temple artery", 0.3, 160, 15, 8, SiteKind::kVessel},
          {"right side of the skull", 0.5, 345, 28, 6},
          {"left side of the skull", 0.5, 195, 28, 6},
          {"back of the skull", 0.35, 270, 28, 6},
          {"right nerve of the back of the head", 0.1, 285, 14, 6, SiteKind::kNerve},
          {"left nerve of the back of the head", 0.1, 255, 14, 6, SiteKind::kNerve}};
}

}  // namespace

FormMaker head_band_form() {
  return {{"head-band",
           "A band of the head from above the brows (station 0) upwards. Nothing over eyes, face or airway.",
           {length_parameter(50.0, {}, "judgement"),
            measured_girth("girth_head", "headcircumference", "above the brows"),
            measured_aspect("aspect_head", "headbreadth", "headlength", "everywhere"), edge_parameter()},
           "forehead",
           false,
           BodyPart::kHead},
          head_band_sites(),
          limb<head_band_shape>};
}

}  // namespace wrapgauge
