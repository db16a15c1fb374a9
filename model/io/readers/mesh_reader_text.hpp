#pragma once
// Words and numbers of mesh files, read strictly and the same in every locale.

#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "model/core/phrase.hpp"

namespace wrapgauge {

// Coordinates beyond this are refused in every format: no unit makes them part of something worn.
inline constexpr double kLargestCoordinate = 1e12;
// Vertices or faces beyond this are refused. Judgement: the checks are tried out up to 2.5 million faces.
inline constexpr std::size_t kMostElements = 10'000'000;

// The whole word as a number; "nan" and "inf" are numbers here. None for anything else, decimal commas too.
std::optional<double> parse_number(std::string_view word);
std::optional<long long> parse_integer(std::string_view word);

// Whether a coordinate can be used as it is.
inline bool is_usable(double value) {
  return std::abs(value) <= kLargestCoordinate;  // of no number that is not one
}
// Why a coordinate cannot be used ("is not a number"), or none. `word`: as written, or the value in words.
std::optional<Phrase> coordinate_fault(std::string_view word, std::optional<double> value);

// In sentences, as a vertex or a line is counted.
Phrase count_of(std::size_t count);
// A clipped, quoted, printable form of bytes from a file, for messages.
std::string in_quotes(std::string_view bytes, std::size_t most = 24);

// Takes the next line off `text`: ended by LF, CR LF, a lone CR or the end.
std::string_view take_line(std::string_view& text);
// Takes the next word off `text`, skipping white space before it; empty at the end.
std::string_view take_word(std::string_view& text);

bool same_word(std::string_view a, std::string_view lower_case);  // whatever the case of `a`

}  // namespace wrapgauge
