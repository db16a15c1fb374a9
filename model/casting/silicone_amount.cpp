#include "model/casting/silicone_amount.hpp"

#include <cmath>
#include <numbers>

#include "model/core/number_text.hpp"
#include "model/layout/layout_lines.hpp"

namespace wrapgauge {
namespace {

SheetAmount amount_of(const std::string& name, const Sheet& sheet, const SiliconeGrade& grade, double area_m2,
                      double spill) {
  SheetAmount amount{.sheet = name,
                     .material = sheet.material,
                     .thickness = sheet.thickness,
                     .area = Area(area_m2 / sheet.prestretch),
                     .volume = {},
                     .to_mix = {},
                     .grams_to_mix = 0.0,
                     .density_source = grade.sheet_source};
  amount.volume = amount.area * amount.thickness;
  amount.to_mix = (1.0 + spill) * amount.volume;
  amount.grams_to_mix = 1e3 * amount.to_mix.si() * grade.density.si();
  return amount;
}

double bordered_area_m2(const Polygon& outline, double border_m) {
  return std::abs(signed_area_m2(outline)) + perimeter_m(outline) * border_m +
         std::numbers::pi * border_m * border_m;
}

// Where the two sheets meet: rim, seams and inset seams.
double fused_area_m2(const Layout& layout) {
  const LayoutLines lines = layout_lines(layout_shapes(layout, 1e-3), std::nullopt);
  const RegionMesh mesh = with_regions(constrained_delaunay(lines.graph), lines.sides);
  double area = 0.0;
  for (std::size_t t = 0; t < mesh.regions.size(); ++t) {
    if (!mesh.regions[t] || mesh.regions[t]->kind != RegionKind::kWeld) continue;
    const auto& [a, b, c] = mesh.mesh.triangles[t];
    area += signed_area_m2({mesh.mesh.points_m[a], mesh.mesh.points_m[b], mesh.mesh.points_m[c]});
  }
  return area;
}

}  // namespace

CastingAllowance casting_allowance(const CastingRules& rules) {
  return {rules.value(CastingRule::kTrimBorder) * mm, rules.value(CastingRule::kFusingLayer) * mm,
          0.01 * rules.value(CastingRule::kSpill)};
}

std::vector<SheetAmount> silicone_amounts(const Layout& layout, const SheetGrades& grades,
                                          const CastingAllowance& allowance) {
  const double sheet_m2 = bordered_area_m2(layout.outline_m, allowance.trim_border.si());
  std::vector<SheetAmount> amounts{
      amount_of("skin sheet", layout.skin_sheet, grades.skin, sheet_m2, allowance.spill),
      amount_of("outer sheet", layout.outer_sheet, grades.outer, sheet_m2, allowance.spill)};
  if (allowance.fusing_layer.si() > 0.0)
    amounts.push_back(amount_of("fusing layer", {layout.outer_sheet.material, allowance.fusing_layer},
                                grades.outer, fused_area_m2(layout), allowance.spill));
  return amounts;
}

double grams_of(const std::vector<SheetAmount>& amounts) {
  double total = 0.0;
  for (const SheetAmount& amount : amounts) total += amount.grams_to_mix;
  return total;
}

std::string about_amount(double amount) {
  const double step = amount < 20.0 ? 1.0 : amount < 200.0 ? 5.0 : amount < 1000.0 ? 10.0 : 50.0;
  return fixed_text(step * std::round(amount / step), 0);
}

}  // namespace wrapgauge
