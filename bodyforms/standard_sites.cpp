#include "bodyforms/standard_sites.hpp"

#include "bodyforms/form_values.hpp"

namespace wrapgauge {

std::vector<StandardSite> standard_sites(BodyPart part) {
  switch (part) {
    case BodyPart::kHand:
      return hand_back_form().sites;
    case BodyPart::kWrist:
      return wrist_form().sites;
    case BodyPart::kForearm:
      return forearm_form().sites;
    case BodyPart::kUpperArm:
      return upper_arm_form().sites;
    case BodyPart::kChest:
    case BodyPart::kAbdomen:
    case BodyPart::kBack:
      return torso_form().sites;
    case BodyPart::kThigh:
      return thigh_form().sites;
    case BodyPart::kKnee:
      return knee_form().sites;
    case BodyPart::kLowerLeg:
      return lower_leg_form().sites;
    case BodyPart::kAnkle:
      return ankle_form().sites;
    case BodyPart::kHead:
      return head_band_form().sites;
    default:
      return {};
  }
}

}  // namespace wrapgauge
