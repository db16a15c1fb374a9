#include "model/layout/drawing_colour.hpp"

#include <charconv>
#include <map>
#include <optional>

namespace wrapgauge {
namespace {

std::string small_and_trimmed(std::string_view text) {
  constexpr std::string_view kSpace = " \t\r\n\f";
  const std::size_t first = text.find_first_not_of(kSpace);
  if (first == text.npos) return "";
  std::string out(text.substr(first, text.find_last_not_of(kSpace) - first + 1));
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

// "255, 0, 10" as six digits; none when it is not three whole numbers from 0 to 255.
std::optional<std::string> hex_of(std::string_view numbers) {
  constexpr const char* kDigits = "0123456789abcdef";
  std::string out = "#";
  for (int i = 0; i < 3; ++i) {
    numbers.remove_prefix(std::min(numbers.size(), numbers.find_first_not_of(" ,\t")));
    int value = -1;
    const auto [end, error] = std::from_chars(numbers.data(), numbers.data() + numbers.size(), value);
    if (error != std::errc{} || value < 0 || value > 255) return std::nullopt;
    numbers.remove_prefix(static_cast<std::size_t>(end - numbers.data()));
    out += kDigits[value / 16];
    out += kDigits[value % 16];
  }
  return numbers.find_first_not_of(" \t") == numbers.npos ? std::optional(out) : std::nullopt;
}

const std::map<std::string, std::string, std::less<>>& colour_words() {
  static const std::map<std::string, std::string, std::less<>> words = {
      {"maroon", "#800000"}, {"red", "#ff0000"},    {"orange", "#ffa500"},  {"yellow", "#ffff00"},
      {"olive", "#808000"},  {"purple", "#800080"}, {"fuchsia", "#ff00ff"}, {"white", "#ffffff"},
      {"lime", "#00ff00"},   {"green", "#008000"},  {"navy", "#000080"},    {"blue", "#0000ff"},
      {"aqua", "#00ffff"},   {"teal", "#008080"},   {"black", "#000000"},   {"silver", "#c0c0c0"},
      {"gray", "#808080"}};
  return words;
}

}  // namespace

std::string plain_colour(std::string_view text) {
  const std::string colour = small_and_trimmed(text);
  if (colour.size() == 4 && colour[0] == '#')
    return {'#', colour[1], colour[1], colour[2], colour[2], colour[3], colour[3]};
  if (colour.starts_with("rgb(") && colour.ends_with(")"))
    if (const auto hex = hex_of(std::string_view(colour).substr(4, colour.size() - 5))) return *hex;
  const auto word = colour_words().find(colour);
  return word == colour_words().end() ? colour : word->second;
}

}  // namespace wrapgauge
