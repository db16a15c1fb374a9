#include "model/body/body_part.hpp"

namespace wrapgauge {

std::string_view body_part_name(BodyPart part) {
  switch (part) {
    case BodyPart::kFinger:
      return "finger";
    case BodyPart::kHand:
      return "hand";
    case BodyPart::kWrist:
      return "wrist";
    case BodyPart::kForearm:
      return "forearm";
    case BodyPart::kElbow:
      return "elbow";
    case BodyPart::kUpperArm:
      return "upper arm";
    case BodyPart::kShoulder:
      return "shoulder";
    case BodyPart::kChest:
      return "chest";
    case BodyPart::kAbdomen:
      return "abdomen";
    case BodyPart::kBack:
      return "back";
    case BodyPart::kHip:
      return "hip";
    case BodyPart::kThigh:
      return "thigh";
    case BodyPart::kKnee:
      return "knee";
    case BodyPart::kLowerLeg:
      return "lower leg";
    case BodyPart::kAnkle:
      return "ankle";
    case BodyPart::kFoot:
      return "foot";
    case BodyPart::kHead:
      return "head";
    case BodyPart::kNeck:
      return "neck";
    case BodyPart::kFace:
      return "face";
    case BodyPart::kTestObject:
      return "test object";
  }
  return "";
}

std::optional<BodyPart> body_part_from_name(std::string_view name) {
  for (const BodyPart part : kBodyParts)
    if (name == body_part_name(part)) return part;
  return std::nullopt;
}

std::string body_part_names() {
  std::string names;
  for (const BodyPart part : kBodyParts)
    if (!is_refused(part)) (names += names.empty() ? "" : ", ") += body_part_name(part);
  return names;
}

bool is_worn(BodyPart part) {
  return part != BodyPart::kTestObject;
}

bool is_refused(BodyPart part) {
  return part == BodyPart::kNeck || part == BodyPart::kFace;
}

bool needs_clearance_all_round(BodyPart part) {
  // All round the back is all round chest or abdomen.
  return part == BodyPart::kChest || part == BodyPart::kAbdomen || part == BodyPart::kBack ||
         part == BodyPart::kHead;
}

}  // namespace wrapgauge
