#pragma once
// The unit a body file is drawn in: stated, or guessed from the size of what it shows.

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "model/core/phrase.hpp"
#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

enum class LengthUnit { kMillimetre, kCentimetre, kMetre, kInch };
inline constexpr std::array kLengthUnits = {LengthUnit::kMillimetre, LengthUnit::kCentimetre,
                                            LengthUnit::kMetre, LengthUnit::kInch};

Length length_of(LengthUnit unit);
std::string_view unit_name(LengthUnit unit);  // "mm", "cm", "m", "in"
std::optional<LengthUnit> unit_from_name(std::string_view name);

// How long and how wide a body is in file units: extent along its axis, larger extent across it.
struct FileExtent {
  double along = 0.0;
  double across = 0.0;
};

struct UnitChoice {
  LengthUnit unit = LengthUnit::kMillimetre;
  bool guessed = false;
  Phrase sentence;  // how it was chosen, for the reader
};

// Takes a stated unit if the body is then 40 mm to 2 m long; otherwise guesses the unit that makes it most
// like a worn limb. Problems, with the likely unit named: no unit, or not the stated one, gives a possible
// length.
// `by_format`: stated by the format of the file, not by someone.
Result<UnitChoice> choose_unit(const FileExtent& extent, std::optional<LengthUnit> stated,
                               bool by_format = false);

}  // namespace wrapgauge
