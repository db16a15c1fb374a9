#include "model/core/number_text.hpp"

#include <charconv>
#include <cmath>

namespace wrapgauge {
namespace {

std::string written(double value, std::chars_format format, int precision) {
  char buffer[400];  // the longest double written in full has 309 digits before the point
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value, format, precision);
  return {buffer, end.ptr};
}

}  // namespace

std::string number_text(double value, int significant_digits) {
  return written(value, std::chars_format::general, significant_digits);
}

std::string fixed_text(double value, int decimals) {
  const std::string text = written(value, std::chars_format::fixed, decimals);
  const bool is_zero = text.find_first_of("123456789infa") == std::string::npos;
  return is_zero && text.front() == '-' ? text.substr(1) : text;
}

std::string number_word(double value) {
  char text[32];
  const auto [end, error] = std::to_chars(text, text + sizeof text, value);
  return std::string(text, end);
}

}  // namespace wrapgauge
