#include "bodyforms/leg_parameters.hpp"
#include "bodyforms/leg_sections.hpp"

namespace wrapgauge {
namespace {

constexpr double kThinnest = 0.1;  // station of the ankle girth; above it the form is the calf
constexpr double kLowerLegBellyBegins = 0.4, kLowerLegWidest = 0.73, kLowerLegShareAtBelly = 0.35;

LimbShape lower_leg_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length ankle = values.at("girth_ankle") * mm, calf = values.at("girth_calf") * mm;
  std::vector<SectionAtShare> sections =
      calf_sections_between(values.at("aspect_ankle"), values.at("aspect_knee"), kThinnest, 1.0);
  sections.insert(sections.begin(), {0.0, {0.75, {-0.02, -0.04, -0.015, 0.005, 0.0}}, {0.0, 0.033}});
  return {{{0.0 * mm, values.at("girth_malleoli") * mm, "girth_malleoli"},
           {kThinnest * length, ankle, "girth_ankle"},
           {kLowerLegBellyBegins * length, ankle + kLowerLegShareAtBelly * (calf - ankle)},
           {kLowerLegWidest * length, calf, "girth_calf"},
           {length, values.at("girth_knee") * mm, "girth_knee"}},
          std::move(sections),
          values.at("edge") * mm};
}

std::vector<SiteOnForm> lower_leg_sites() {
  std::vector<SiteOnForm> all = {
      {"medial malleolus", 0.03, 170, 16, 3},
      {"lateral malleolus", 0.015, 352, 16, 3},
      {"tibial nerve and artery behind the malleolus", 0.02, 222, 13, 12, SiteKind::kNerve,
       "Pressed here the sole goes numb."},
      {"nerve on the front of the shin", 0.33, 48, 14, 15, SiteKind::kNerve,
       "The superficial peroneal nerve comes under the skin here."},
      {"sural nerve", 0.28, 300, 13, 20, SiteKind::kNerve},
      {"head of the fibula", 0.985, 335, 14, 4},
      {"common peroneal nerve at the neck of the fibula", 0.95, 335, 18, 5, SiteKind::kNerve,
       "Bone behind, skin in front: pressed here the foot drops. Keep devices below it."}};
  add_row(all, {"Achilles tendon", 0.03, 270, 13, 20, SiteKind::kTendon}, 0.23, 3);
  add_row(all, {"tibial crest and face", 0.1, 112, 24, 4}, 0.96, 8);
  return all;
}

}  // namespace

FormMaker lower_leg_form() {
  std::vector<FormParameter> parameters = calf_parameters();
  parameters.insert(
      parameters.begin(),
      {length_parameter(0.0, {{"tibialheight", 1.0}, {"lateralmalleolusheight", -1.0}},
                        "derived: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), tibialheight "
                        "less lateralmalleolusheight; confirmed"),
       ankle_girth(), malleoli_girth()});
  return {{"lower-leg", "A lower leg from the malleoli (station 0) to the knee, without the foot.",
           std::move(parameters), "calf", true, BodyPart::kLowerLeg},
          lower_leg_sites(),
          limb<lower_leg_shape>};
}

}  // namespace wrapgauge
