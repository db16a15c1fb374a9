#pragma once
// Published pressures that are no limits here: compression classes to compare with, and tables that are
// refused as a limit for a pressure that is held.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "model/core/phrase.hpp"
#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct CompressionClass {
  std::string scheme, name;  // class numbers differ by country: read mmHg
  Pressure low;
  std::optional<Pressure> high;               // none: open upwards
  std::string place, source, status, remark;  // status: "secondary page" and those of limits
};

struct RefusedSource {
  std::string name;
  std::vector<std::string> named_as;  // a row whose source holds one of these is refused
  std::string reason, source, status;
};

struct Comparisons {
  std::string remark;
  std::vector<CompressionClass> classes;
  std::vector<RefusedSource> refused;
};

// Problems: an unknown key, a number out of range, a class that falls.
Result<Comparisons> read_comparisons(const std::filesystem::path& file);

// Where a pressure would stand among the classes: "class 1 of RAL-GZ 387 (18 to 21 mmHg at the ankle, ...)".
// None when it lies in none.
std::optional<Phrase> classes_words(const Comparisons& comparisons, Pressure pressure);

}  // namespace wrapgauge
