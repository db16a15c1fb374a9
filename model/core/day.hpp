#pragma once
#include <string_view>

namespace wrapgauge {

// A day of the calendar as plans and notes write it: "2026-11-29".
bool is_day(std::string_view text);

}  // namespace wrapgauge
