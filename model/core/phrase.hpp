#pragma once
// A sentence as a pattern and the values in it. The command line and the note put it together in English; the
// window puts it together in its own language, from the translated pattern and the same values.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"

namespace wrapgauge {

struct Phrase {
  enum class Kind {
    kWords,    // a pattern: %1 to %9 stand for `values`
    kName,     // what someone called a thing: the same in every language
    kFigures,  // numbers with their units, "4.2 kPa (32 mmHg)": each point in it is a decimal point
    kRow,      // `values` one after the other, `text` between them
  };
  Kind kind = Kind::kRow;
  std::string text;
  std::vector<Phrase> values;

  // The list of what is to be translated is gathered from these calls, so `pattern` is a literal there.
  static Phrase worded(const char* pattern, std::vector<Phrase> values = {});

  bool operator==(const Phrase&) const = default;
};

Phrase name_of(std::string name);
Phrase figures_of(std::string figures);
Phrase figures_of(Pressure pressure);  // "4.2 kPa (32 mmHg)"
Phrase figures_of(Time time);          // "12.5 min"
Phrase figures_of(int count);
Phrase millimetres_of(Length length, int decimals = 1);  // "12.5 mm"
Phrase percent_of(double share);                         // 0.25: "25 %"
// Words of a data file, such as where a limit comes from. Those of the program's own files are translated.
Phrase table_words(std::string words);
Phrase in_a_row(std::vector<Phrase> phrases, std::string between = " ");

// How a language says patterns and figures.
struct Wording {
  std::function<std::string(const std::string&)> pattern, figures;
};
std::string said(const Phrase& phrase, const Wording& wording);

std::string english(const Phrase& phrase);
std::vector<std::string> english(const std::vector<Phrase>& phrases);
std::optional<std::string> english(const std::optional<Phrase>& phrase);

}  // namespace wrapgauge
