#pragma once
// What readings of a real device change of its mechanics: a factor on each sheet's law and on the tissue's
// modulus, and what each sheet is thicker than drawn.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct SheetFactors {
  double skin_law = 1.0, outer_law = 1.0;
  Length skin_thicker{}, outer_thicker{};  // < 0: thinner
  double tissue = 1.0;                     // on the foundation's or the layer's modulus
  bool operator==(const SheetFactors&) const = default;

  // A sheet stays one: no thinner than 0.1 mm.
  static Length thickness_of(Length drawn, Length thicker);
};

InflationSetup with_factors(InflationSetup setup, const SheetFactors& factors);

}  // namespace wrapgauge
