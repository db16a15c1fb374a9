#include "model/body/person.hpp"

namespace wrapgauge {

std::string_view sex_name(Sex sex) {
  return sex == Sex::kMale ? "male" : "female";
}

std::string_view side_name(BodySide side) {
  return side == BodySide::kRight ? "right" : "left";
}

std::optional<Sex> sex_from_name(std::string_view name) {
  for (const Sex sex : {Sex::kMale, Sex::kFemale})
    if (sex_name(sex) == name) return sex;
  return std::nullopt;
}

std::optional<BodySide> side_from_name(std::string_view name) {
  for (const BodySide side : {BodySide::kRight, BodySide::kLeft})
    if (side_name(side) == name) return side;
  return std::nullopt;
}

}  // namespace wrapgauge
