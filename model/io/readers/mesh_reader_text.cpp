#include "model/io/readers/mesh_reader_text.hpp"

#include <charconv>
#include <cmath>
#include <limits>

namespace wrapgauge {
namespace {

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\v' || c == '\f';
}

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string_view without_plus(std::string_view word) {
  if (word.size() > 1 && word[0] == '+' && word[1] != '-' && word[1] != '+') word.remove_prefix(1);
  return word;
}

}  // namespace

std::optional<double> parse_number(std::string_view word) {
  word = without_plus(word);
  double value = 0.0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (end != word.data() + word.size() || word.empty()) return std::nullopt;
  if (error == std::errc::result_out_of_range) {
    const bool tiny = word.find("e-") != word.npos || word.find("E-") != word.npos;
    return tiny ? 0.0 : std::numeric_limits<double>::infinity();
  }
  if (error != std::errc{}) return std::nullopt;
  return value;
}

std::optional<long long> parse_integer(std::string_view word) {
  word = without_plus(word);
  long long value = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (word.empty() || error != std::errc{} || end != word.data() + word.size()) return std::nullopt;
  return value;
}

std::optional<Phrase> coordinate_fault(std::string_view word, std::optional<double> value) {
  const Phrase quoted = name_of(in_quotes(word));
  if (!value) {
    if (word.empty()) return Phrase::worded("has fewer than three coordinates");
    if (word.find(',') != word.npos)
      return Phrase::worded("has %1 where a number belongs; write decimal points, not commas", {quoted});
    return Phrase::worded("has %1 where a number belongs", {quoted});
  }
  if (!std::isfinite(*value))
    return Phrase::worded("has the coordinate %1, which is not a finite number", {quoted});
  if (std::abs(*value) > kLargestCoordinate)
    return Phrase::worded("has the coordinate %1, beyond the largest that is read (1e12)", {quoted});
  return std::nullopt;
}

Phrase count_of(std::size_t count) {
  return figures_of(std::to_string(count));
}

std::string in_quotes(std::string_view bytes, std::size_t most) {
  std::string text = "\"";
  for (const char c : bytes.substr(0, most)) text += c >= 32 && c < 127 && c != '"' ? c : '?';
  return text + (bytes.size() > most ? "...\"" : "\"");
}

std::string_view take_line(std::string_view& text) {
  const std::size_t end = text.find_first_of("\r\n");
  const std::string_view line = text.substr(0, end);
  std::size_t skip = line.size();
  if (end != text.npos) skip += text[end] == '\r' && end + 1 < text.size() && text[end + 1] == '\n' ? 2 : 1;
  text.remove_prefix(skip);
  return line;
}

std::string_view take_word(std::string_view& text) {
  std::size_t begin = 0;
  while (begin < text.size() && is_space(text[begin])) ++begin;
  std::size_t end = begin;
  while (end < text.size() && !is_space(text[end])) ++end;
  const std::string_view word = text.substr(begin, end - begin);
  text.remove_prefix(end);
  return word;
}

bool same_word(std::string_view a, std::string_view lower_case) {
  if (a.size() != lower_case.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (lower(a[i]) != lower_case[i]) return false;
  return true;
}

}  // namespace wrapgauge
