#include "bodyforms/arm_sections.hpp"

namespace wrapgauge {
namespace {

constexpr double kWrist = 0.18;         // station of the wrist, share of the length: the rest is forearm
constexpr double kForearmShare = 0.33;  // how far up the forearm the form ends

LimbShape wrist_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const double aspect_wrist = values.at("aspect_wrist");
  std::vector<SectionAtShare> sections;
  for (const double up : {0.0, 0.1, 0.2, kForearmShare}) {
    SectionAtShare section = section_between(forearm_sections(aspect_wrist, 1.1), up);
    section.share = kWrist + (1.0 - kWrist) * up / kForearmShare;
    section.centre = Vec2::Zero();
    sections.push_back(section);
  }
  // Towards the hand the section is flatter.
  sections.insert(sections.begin(), {0.0, {1.2 * aspect_wrist, {0.0, -0.03, 0.0, -0.01, 0.0}}, Vec2::Zero()});
  return {{{0.0 * mm, values.at("girth_hand_root") * mm, "girth_hand_root"},
           {kWrist * length, values.at("girth_wrist") * mm, "girth_wrist"},
           {length, values.at("girth_above") * mm, "girth_above"}},
          std::move(sections),
          values.at("edge") * mm};
}

std::vector<SiteOnForm> wrist_sites() {
  std::vector<SiteOnForm> all = {
      {"ulnar styloid", 0.25, 195, 13, 3},
      {"radial styloid", 0.2, 5, 12, 3},
      {"median nerve at the wrist", 0.12, 95, 14, 10, SiteKind::kNerve,
       "Pressed here the palm and thumb go numb: no closing edge or seam on it."},
      {"ulnar nerve and artery at the wrist", 0.12, 150, 10, 8, SiteKind::kNerve,
       "Pressed here the little finger goes numb."},
      {"radial artery", 0.28, 45, 10, 6, SiteKind::kVessel, "Where the pulse is felt."},
      {"radial nerve under the skin", 0.6, 345, 14, 5, SiteKind::kNerve,
       "Tight bands above the wrist numb the back of the thumb."},
      {"tendons on the back of the wrist", 0.2, 275, 18, 5, SiteKind::kTendon}};
  add_row(all, {"back edge of the ulna", 0.55, 225, 12, 5}, 0.95, 3);
  return all;
}

}  // namespace

FormMaker wrist_form() {
  return {{"wrist",
           "A wrist from the root of the hand (station 0) to a third of the way up the forearm.",
           {length_parameter(0.0, {{"radialestylionlength", 0.40}},
                             "judgement: 0.40 of ANSUR II 2012, radialestylionlength"),
            shared_girth("girth_hand_root", {{"wristcircumference", 1.06}}, "at the root of the hand",
                         "judgement: 1.06 of ANSUR II 2012, wristcircumference; not in the survey"),
            measured_girth("girth_wrist", "wristcircumference", "at the styloids"),
            shared_girth("girth_above", {{"girth_wrist", 0.54}, {"forearmcircumferenceflexed", 0.46}},
                         "a third up the forearm",
                         "judgement: 0.54 of the wrist and 0.46 of ANSUR II 2012, "
                         "forearmcircumferenceflexed; not in the survey"),
            aspect_parameter("aspect_wrist", 1.35, "at the wrist", "judgement"), edge_parameter()},
           "wrist dorsal",
           true,
           BodyPart::kWrist},
          wrist_sites(),
          limb<wrist_shape>};
}

}  // namespace wrapgauge
