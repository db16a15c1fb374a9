#include "model/inflation/sheet_factors.hpp"

#include <algorithm>

namespace wrapgauge {

Length SheetFactors::thickness_of(Length drawn, Length thicker) {
  constexpr Length kThinnest = 0.1 * mm;
  return std::max(drawn + thicker, kThinnest);
}

InflationSetup with_factors(InflationSetup setup, const SheetFactors& factors) {
  setup.skin_law = scaled(setup.skin_law, factors.skin_law);
  setup.outer_law = scaled(setup.outer_law, factors.outer_law);
  Sheet &skin = setup.layout.skin_sheet, &outer = setup.layout.outer_sheet;
  skin.thickness = SheetFactors::thickness_of(skin.thickness, factors.skin_thicker);
  outer.thickness = SheetFactors::thickness_of(outer.thickness, factors.outer_thicker);
  setup.foundation_pa_per_m *= factors.tissue;
  if (setup.coupled_tissue) setup.coupled_tissue->young_pa *= factors.tissue;
  return setup;
}

}  // namespace wrapgauge
