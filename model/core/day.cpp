#include "model/core/day.hpp"

#include <charconv>
#include <chrono>

namespace wrapgauge {

bool is_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  int year = 0, month = 0, day = 0;
  const auto number = [&](std::size_t from, std::size_t length, int& value) {
    const char* end = text.data() + from + length;
    return std::from_chars(text.data() + from, end, value).ptr == end && value > 0;
  };
  return number(0, 4, year) && number(5, 2, month) && number(8, 2, day) &&
         std::chrono::year_month_day(std::chrono::year(year),
                                     std::chrono::month(static_cast<unsigned>(month)),
                                     std::chrono::day(static_cast<unsigned>(day)))
             .ok();
}

}  // namespace wrapgauge
