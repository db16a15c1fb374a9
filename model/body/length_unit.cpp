#include "model/body/length_unit.hpp"

#include <array>
#include <cmath>
#include <cstdio>

namespace wrapgauge {
namespace {

// Judgement: from a child's wrist section to a whole leg or trunk.
constexpr double kShortest = 0.040, kLongest = 2.0;
// Judgement: a limb segment as it is usually scanned or cut, metres.
constexpr double kUsualLength = 0.25, kUsualWidth = 0.09;
// Judgement: mesh files in inches are rarer than those in metric units; in log units of size.
constexpr double kInchPenalty = 0.1;
// Another unit is named beside the guess when it is stranger by less than this. Judgement.
constexpr double kClose = 1.0;

bool possible(double along_m) {
  return along_m >= kShortest && along_m <= kLongest;
}

double strangeness(const FileExtent& extent, LengthUnit unit) {
  const double scale = length_of(unit).si();
  return std::abs(std::log(extent.along * scale / kUsualLength)) +
         std::abs(std::log(extent.across * scale / kUsualWidth)) +
         (unit == LengthUnit::kInch ? kInchPenalty : 0.0);
}

std::optional<LengthUnit> likeliest(const FileExtent& extent) {
  std::optional<LengthUnit> best;
  for (const LengthUnit unit : kLengthUnits)
    if (possible(extent.along * length_of(unit).si()) &&
        (!best || strangeness(extent, unit) < strangeness(extent, *best)))
      best = unit;
  return best;
}

std::string with_unit(double along_m) {
  char text[48];
  if (along_m >= 2.0)
    std::snprintf(text, sizeof text, "%.3g m", along_m);
  else
    std::snprintf(text, sizeof text, "%.3g mm", along_m * 1e3);
  return text;
}

std::string plain(double value) {
  char text[48];
  std::snprintf(text, sizeof text, "%.6g", value);
  return text;
}

// A unit this program does not read, that would explain the size.
Phrase unread_unit(double along) {
  const std::array<std::pair<Phrase, double>, 4> others = {{{Phrase::worded("micrometre"), 1e-6},
                                                            {Phrase::worded("nanometre"), 1e-9},
                                                            {Phrase::worded("kilometre"), 1e3},
                                                            {Phrase::worded("tenth of a millimetre"), 1e-4}}};
  for (const auto& [name, size] : others)
    if (along * size >= 0.1 && along * size <= 1.0)
      return Phrase::worded("the likely unit is the %1 (%2)", {name, figures_of(with_unit(along * size))});
  return Phrase::worded("no usual unit makes it a limb");
}

}  // namespace

Length length_of(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::kMillimetre:
      return mm;
    case LengthUnit::kCentimetre:
      return cm;
    case LengthUnit::kMetre:
      return metre;
    case LengthUnit::kInch:
      return inch;
  }
  return mm;
}

std::string_view unit_name(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::kMillimetre:
      return "mm";
    case LengthUnit::kCentimetre:
      return "cm";
    case LengthUnit::kMetre:
      return "m";
    case LengthUnit::kInch:
      return "in";
  }
  return "mm";
}

std::optional<LengthUnit> unit_from_name(std::string_view name) {
  for (const LengthUnit unit : kLengthUnits)
    if (unit_name(unit) == name) return unit;
  return std::nullopt;
}

Result<UnitChoice> choose_unit(const FileExtent& extent, std::optional<LengthUnit> stated, bool by_format) {
  const std::optional<LengthUnit> likely = likeliest(extent);
  const auto said = [&](LengthUnit unit) {
    return Phrase::worded("%1 (%2 long)", {name_of(std::string(unit_name(unit))),
                                           figures_of(with_unit(extent.along * length_of(unit).si()))});
  };
  if (stated && possible(extent.along * length_of(*stated).si())) {
    const std::vector<Phrase> values = {said(*stated)};
    UnitChoice choice{*stated, false,
                      by_format ? Phrase::worded("The unit is %1, as the file's format defines it.", values)
                                : Phrase::worded("The unit is %1, as stated.", values)};
    if (likely && *likely != *stated)
      choice.sentence =
          in_a_row({choice.sentence, Phrase::worded("From its size it could also be %1.", {said(*likely)})});
    return choice;
  }
  const Phrase size = figures_of(plain(extent.along));
  if (stated)
    return bad_input(Phrase::worded(
        "The body is %1 units long: in the stated unit %2 that is no limb; %3.",
        {size, said(*stated),
         likely ? Phrase::worded("the likely unit is %1", {said(*likely)}) : unread_unit(extent.along)}));
  if (!likely)
    return bad_input(Phrase::worded(
        "The body is %1 units long, which is no limb in %2, cm, %3 or in; %4: save it in one of these units.",
        {size, said(LengthUnit::kMillimetre), said(LengthUnit::kMetre), unread_unit(extent.along)}));
  UnitChoice guess{*likely, true,
                   Phrase::worded("No unit was stated; from its size of %1 units it was taken as %2.",
                                  {figures_of(plain(extent.along)), said(*likely)})};
  for (const LengthUnit unit : kLengthUnits)
    if (unit != *likely && possible(extent.along * length_of(unit).si()) &&
        strangeness(extent, unit) < strangeness(extent, *likely) + kClose)
      guess.sentence = in_a_row(
          {guess.sentence, Phrase::worded("It could also be %1: state the unit to be sure.", {said(unit)})});
  return guess;
}

}  // namespace wrapgauge
