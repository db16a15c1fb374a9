#include "bodyforms/leg_parameters.hpp"
#include "bodyforms/leg_sections.hpp"

namespace wrapgauge {
namespace {

// Where along the lower leg its girths lie, from ankle to knee. Judgement: the belly of the calf begins at a
// third and is widest at seven tenths.
constexpr double kCalfBellyBegins = 0.33, kCalfWidest = 0.7;
constexpr double kCalfShareAtBelly = 0.35;  // of the way from ankle girth to calf girth

LimbShape calf_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length ankle = values.at("girth_ankle") * mm, calf = values.at("girth_calf") * mm;
  return {{{0.0 * mm, ankle, "girth_ankle"},
           {kCalfBellyBegins * length, ankle + kCalfShareAtBelly * (calf - ankle)},
           {kCalfWidest * length, calf, "girth_calf"},
           {length, values.at("girth_knee") * mm, "girth_knee"}},
          calf_sections(values.at("aspect_ankle"), values.at("aspect_knee")),
          values.at("edge") * mm};
}

std::vector<SiteOnForm> calf_sites() {
  std::vector<SiteOnForm> all = {
      {"lower end of the fibula", 0.04, 350, 14, 4},
      {"nerve on the front of the shin", 0.25, 48, 14, 15, SiteKind::kNerve,
       "The superficial peroneal nerve comes under the skin here."},
      {"sural nerve", 0.2, 300, 13, 20, SiteKind::kNerve},
      {"head of the fibula", 0.985, 335, 14, 4},
      {"common peroneal nerve at the neck of the fibula", 0.95, 335, 18, 5, SiteKind::kNerve,
       "Bone behind, skin in front: pressed here the foot drops. Keep devices below it."}};
  add_row(all, {"Achilles tendon", 0.03, 270, 13, 20, SiteKind::kTendon}, 0.17, 2);
  add_row(all, {"tibial crest and face", 0.05, 112, 24, 4}, 0.95, 8);
  return all;
}

}  // namespace

std::vector<SectionAtShare> calf_sections(double aspect_ankle, double aspect_knee) {
  return {{0.0, {aspect_ankle, {-0.030, -0.030, -0.010, -0.004, 0.0}}, {0.0, 0.036}},
          {0.2,
           {aspect_ankle + 0.45 * (1.0 - aspect_ankle), {-0.020, -0.010, 0.003, -0.005, 0.004}},
           {0.0, 0.019}},
          {0.5, {0.98, {0.004, 0.028, -0.004, 0.001, 0.007}}, {0.0, -0.005}},
          {0.75, {1.0, {-0.001, 0.028, -0.003, 0.017, 0.009}}, {-0.002, -0.019}},
          {1.0, {aspect_knee, {-0.003, 0.038, -0.024, 0.020, 0.008}}, {-0.002, -0.004}}};
}

std::vector<SectionAtShare> calf_sections_between(double aspect_ankle, double aspect_knee, double from,
                                                  double to) {
  std::vector<SectionAtShare> sections = calf_sections(aspect_ankle, aspect_knee);
  for (SectionAtShare& section : sections) {
    section.share = from + (to - from) * section.share;
    section.centre *= to - from;
  }
  return sections;
}

FormMaker calf_form() {
  std::vector<FormParameter> parameters = calf_parameters();
  parameters.insert(
      parameters.begin(),
      {length_parameter(-112.0, {{"tibialheight", 1.0}},
                        "derived: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), tibialheight, "
                        "confirmed, less 112 mm to above the malleoli (judgement)"),
       ankle_girth()});
  return {{"calf", "A lower leg from above the ankle (station 0) to below the knee.", std::move(parameters),
           "calf", true, BodyPart::kLowerLeg},
          calf_sites(),
          limb<calf_shape>};
}

}  // namespace wrapgauge
