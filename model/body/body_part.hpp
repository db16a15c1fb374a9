#pragma once
// Which part of a person a body is. Not knowing it never gives a laxer answer than knowing it, so a plan
// whose body has none is not solved.

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace wrapgauge {

enum class BodyPart {
  kFinger,
  kHand,
  kWrist,
  kForearm,
  kElbow,
  kUpperArm,
  kShoulder,
  kChest,
  kAbdomen,
  kBack,
  kHip,
  kThigh,
  kKnee,
  kLowerLeg,
  kAnkle,
  kFoot,
  kHead,
  kNeck,
  kFace,
  kTestObject,  // a dummy on the bench, never worn: no limit, no ceiling, no note
};
inline constexpr std::array kBodyParts = {
    BodyPart::kFinger,   BodyPart::kHand,     BodyPart::kWrist, BodyPart::kForearm,  BodyPart::kElbow,
    BodyPart::kUpperArm, BodyPart::kShoulder, BodyPart::kChest, BodyPart::kAbdomen,  BodyPart::kBack,
    BodyPart::kHip,      BodyPart::kThigh,    BodyPart::kKnee,  BodyPart::kLowerLeg, BodyPart::kAnkle,
    BodyPart::kFoot,     BodyPart::kHead,     BodyPart::kNeck,  BodyPart::kFace,     BodyPart::kTestObject};

std::string_view body_part_name(BodyPart part);  // as plans write it: "upper arm"
std::optional<BodyPart> body_part_from_name(std::string_view name);
std::string body_part_names();  // those that may be pressed on, for a sentence: "finger, hand, ..."

bool is_worn(BodyPart part);     // all but a test object
bool is_refused(BodyPart part);  // neck and face: never solved
// Chest, abdomen, back and head: what goes all round them may stop breathing or reach eyes and airway, so a
// clinician has to be named.
bool needs_clearance_all_round(BodyPart part);

}  // namespace wrapgauge
