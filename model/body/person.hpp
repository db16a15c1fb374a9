#pragma once
// Whose body a form is: which row of an anthropometric table it takes, and which side.

#include <optional>
#include <string_view>

namespace wrapgauge {

enum class Sex { kMale, kFemale };
enum class BodySide { kRight, kLeft };

struct Person {
  std::optional<Sex> sex;            // none: the form's defaults, medians of men
  std::optional<double> percentile;  // 1 .. 99; none: 50
  BodySide side = BodySide::kRight;
  bool operator==(const Person&) const = default;
};

std::string_view sex_name(Sex sex);         // as plans write it: "male"
std::string_view side_name(BodySide side);  // "right"
std::optional<Sex> sex_from_name(std::string_view name);
std::optional<BodySide> side_from_name(std::string_view name);

}  // namespace wrapgauge
