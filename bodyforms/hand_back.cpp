#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

constexpr double kKnuckles = 0.12;  // station of the hand girth, share of the length

// Judgement: a flat rounded rectangle at the knuckles, an oval at the wrist; its breadth comes out within a
// few millimetres of the survey's hand breadth.
LimbShape hand_back_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length hand = values.at("girth_hand") * mm;
  const double flat = values.at("aspect_hand");
  return {{{0.0 * mm, 0.97 * hand},
           {kKnuckles * length, hand, "girth_hand"},
           {length, values.at("girth_wrist") * mm, "girth_wrist"}},
          {{0.0, {flat, {0.0, 0.0, 0.0, -0.06, 0.0}}},
           {kKnuckles, {flat, {0.0, 0.0, 0.01, -0.06, 0.0}}},
           {0.6, {0.78 * flat, {0.0, 0.02, 0.02, -0.04, 0.0}}, {0.0, -0.01}},
           {1.0, {1.45, {0.0, -0.02, 0.0, -0.01, 0.0}}}},
          values.at("edge") * mm};
}

std::vector<SiteOnForm> hand_back_sites() {
  std::vector<SiteOnForm> all = {
      {"second knuckle", 0.1, 333, 10, 2},
      {"third knuckle", 0.1, 292, 10, 2},
      {"fourth knuckle", 0.1, 248, 10, 2},
      {"fifth knuckle", 0.1, 207, 10, 2},
      {"nerve to the back of the thumb", 0.85, 340, 12, 4, SiteKind::kNerve},
      {"nerve to the back of the little finger", 0.85, 205, 12, 4, SiteKind::kNerve},
      {"median nerve in the palm", 0.92, 95, 14, 10, SiteKind::kNerve,
       "Pressed here the palm and thumb go numb: no closing edge or seam on it."},
      {"ulnar nerve beside the pisiform", 0.92, 150, 11, 6, SiteKind::kNerve,
       "Pressed here the little finger goes numb."}};
  add_row(all, {"back of the metacarpals", 0.35, 270, 20, 4, SiteKind::kTendon, "Bone and tendons."}, 0.85,
          3);
  return all;
}

}  // namespace

FormMaker hand_back_form() {
  return {{"hand-back",
           "A hand from the knuckles (station 0) to the wrist, without thumb and fingers; its back faces -y.",
           {length_parameter(0.0, {{"palmlength", 0.72}}, "judgement: 0.72 of ANSUR II 2012, palmlength"),
            measured_girth("girth_hand", "handcircumference", "round the knuckles without the thumb"),
            measured_girth("girth_wrist", "wristcircumference", "at the wrist"),
            aspect_parameter("aspect_hand", 2.9, "at the knuckles", "judgement"), edge_parameter()},
           "wrist dorsal",
           true,
           BodyPart::kHand},
          hand_back_sites(),
          limb<hand_back_shape>};
}

}  // namespace wrapgauge
