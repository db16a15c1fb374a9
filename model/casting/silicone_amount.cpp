#include "model/casting/silicone_amount.hpp"

#include <cmath>

namespace wrapgauge {
namespace {

SheetAmount amount_of(const std::string& name, const Sheet& sheet, const SiliconeGrade& grade,
                      double outline_m2, double spill) {
  SheetAmount amount{.sheet = name,
                     .material = sheet.material,
                     .thickness = sheet.thickness,
                     .area = Area(outline_m2 / sheet.prestretch),
                     .volume = {},
                     .to_mix = {},
                     .grams_to_mix = 0.0,
                     .density_source = grade.sheet_source};
  amount.volume = amount.area * amount.thickness;
  amount.to_mix = (1.0 + spill) * amount.volume;
  amount.grams_to_mix = 1e3 * amount.to_mix.si() * grade.density.si();
  return amount;
}

}  // namespace

std::vector<SheetAmount> silicone_amounts(const Layout& layout, const SheetGrades& grades,
                                          const CastingRules& rules) {
  const double outline_m2 = std::abs(signed_area_m2(layout.outline_m));
  const double spill = 0.01 * rules.value(CastingRule::kSpill);
  return {amount_of("skin sheet", layout.skin_sheet, grades.skin, outline_m2, spill),
          amount_of("outer sheet", layout.outer_sheet, grades.outer, outline_m2, spill)};
}

}  // namespace wrapgauge
