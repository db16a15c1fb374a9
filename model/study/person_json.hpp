#pragma once
#include <optional>
#include <string>

#include "model/study/people.hpp"

namespace wrapgauge {

// One person's answer as JSON in one line, in mm, kPa and mL, and back. None: the text is another's.
std::string person_json(const PersonAnswer& answer);
std::optional<PersonAnswer> person_from(const std::string& json);

}  // namespace wrapgauge
