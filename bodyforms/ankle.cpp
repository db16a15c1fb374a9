#include "bodyforms/leg_parameters.hpp"
#include "bodyforms/leg_sections.hpp"

namespace wrapgauge {
namespace {

constexpr double kThinnest = 0.35;  // station of the ankle girth, share of the length

LimbShape ankle_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  // Above the thinnest place the lower quarter of the calf.
  std::vector<SectionAtShare> sections;
  for (const double up : {0.0, 0.12, 0.25}) {
    SectionAtShare section = section_between(calf_sections(values.at("aspect_ankle"), 0.9), up);
    section.share = kThinnest + (1.0 - kThinnest) * up / 0.25;
    section.centre.y() -= 0.03;
    sections.push_back(section);
  }
  sections.insert(sections.begin(),
                  {0.0, {values.at("aspect_malleoli"), {-0.02, -0.04, -0.015, 0.005, 0.0}}, Vec2::Zero()});
  return {{{0.0 * mm, values.at("girth_malleoli") * mm, "girth_malleoli"},
           {kThinnest * length, values.at("girth_ankle") * mm, "girth_ankle"},
           {length, values.at("girth_above") * mm, "girth_above"}},
          std::move(sections),
          values.at("edge") * mm};
}

std::vector<SiteOnForm> ankle_sites() {
  std::vector<SiteOnForm> all = {
      {"medial malleolus", 0.08, 170, 16, 3},
      {"lateral malleolus", 0.04, 352, 16, 3},
      {"tibial nerve and artery behind the malleolus", 0.06, 222, 13, 12, SiteKind::kNerve,
       "Pressed here the sole goes numb."},
      {"sural nerve", 0.1, 312, 12, 12, SiteKind::kNerve},
      {"tendons, nerve and artery on the front", 0.1, 85, 16, 8, SiteKind::kTendon},
      {"nerve on the outer front", 0.4, 45, 14, 12, SiteKind::kNerve}};
  add_row(all, {"Achilles tendon", 0.1, 270, 13, 20, SiteKind::kTendon}, 0.8, 3);
  add_row(all, {"tibial crest and face", 0.35, 112, 20, 4}, 0.95, 3);
  return all;
}

}  // namespace

FormMaker ankle_form() {
  return {
      {"ankle",
       "An ankle from the malleoli (station 0) to the lower shin, without the foot.",
       {length_parameter(0.0, {{"tibialheight", 0.28}}, "judgement: 0.28 of ANSUR II 2012, tibialheight"),
        ankle_girth(), malleoli_girth(),
        shared_girth("girth_above", {{"girth_ankle", 0.76}, {"calfcircumference", 0.24}}, "on the lower shin",
                     "judgement: 0.76 of the ankle and 0.24 of ANSUR II 2012, calfcircumference; not in "
                     "the survey"),
        aspect_parameter("aspect_malleoli", 0.75, "over the malleoli, x from side to side", "judgement"),
        ankle_aspect(), edge_parameter()},
       "shin",
       true,
       BodyPart::kAnkle},
      ankle_sites(),
      limb<ankle_shape>};
}

}  // namespace wrapgauge
