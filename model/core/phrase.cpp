#include "model/core/phrase.hpp"

#include <utility>

#include "model/core/clean_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"

namespace wrapgauge {
namespace {

// A per cent sign that no value belongs to stays what it is.
std::string filled(const std::string& pattern, const std::vector<std::string>& values) {
  std::string text;
  for (std::size_t at = 0; at < pattern.size(); ++at) {
    const int place = pattern[at] == '%' && at + 1 < pattern.size() ? pattern[at + 1] - '1' : -1;
    if (place < 0 || place >= static_cast<int>(values.size())) {
      text += pattern[at];
      continue;
    }
    text += values[static_cast<std::size_t>(place)];
    ++at;
  }
  return text;
}

std::string joined(const std::vector<std::string>& values, const std::string& between) {
  std::string text;
  for (std::size_t i = 0; i < values.size(); ++i) text.append(i ? between : "").append(values[i]);
  return text;
}

}  // namespace

Phrase Phrase::worded(const char* pattern, std::vector<Phrase> values) {
  return {Kind::kWords, pattern, std::move(values)};
}

Phrase name_of(std::string name) {
  return {Phrase::Kind::kName, std::move(name), {}};
}

Phrase figures_of(std::string figures) {
  return {Phrase::Kind::kFigures, std::move(figures), {}};
}

Phrase figures_of(Pressure pressure) {
  return figures_of(pressure_text(pressure));
}

Phrase figures_of(Time time) {
  return figures_of(time_text(time));
}

Phrase figures_of(int count) {
  return figures_of(std::to_string(count));
}

Phrase millimetres_of(Length length, int decimals) {
  return figures_of(fixed_text(length / mm, decimals) + " mm");
}

Phrase percent_of(double share) {
  return figures_of(fixed_text(100.0 * share, 0) + " %");
}

Phrase table_words(std::string words) {
  return {Phrase::Kind::kWords, std::move(words), {}};
}

Phrase in_a_row(std::vector<Phrase> phrases, std::string between) {
  return {Phrase::Kind::kRow, std::move(between), std::move(phrases)};
}

std::string said(const Phrase& phrase, const Wording& wording) {
  std::vector<std::string> values;
  for (const Phrase& value : phrase.values) values.push_back(said(value, wording));
  switch (phrase.kind) {
    case Phrase::Kind::kWords:
      return filled(wording.pattern(phrase.text), values);
    case Phrase::Kind::kFigures:
      return wording.figures(phrase.text);
    case Phrase::Kind::kRow:
      return joined(values, phrase.text);
    case Phrase::Kind::kName:
      break;
  }
  return clean_text(phrase.text);
}

std::string english(const Phrase& phrase) {
  const auto as_it_is = [](const std::string& text) { return text; };
  return said(phrase, {as_it_is, as_it_is});
}

std::vector<std::string> english(const std::vector<Phrase>& phrases) {
  std::vector<std::string> texts;
  for (const Phrase& phrase : phrases) texts.push_back(english(phrase));
  return texts;
}

std::optional<std::string> english(const std::optional<Phrase>& phrase) {
  if (!phrase) return std::nullopt;
  return english(*phrase);
}

}  // namespace wrapgauge
