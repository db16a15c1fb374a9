#include <cmath>

#include "model/layout/forms/chamber_grid.hpp"

namespace wrapgauge {
namespace {

constexpr double kThinnest_m = 0.04;  // an edge that fits no limb (judgement)

LayoutParameter girth_growth() {
  return {"growth",
          0.0,
          -400.0,
          400.0,
          "how much rounder the limb is at the proximal edge than at the distal one",
          "mm",
          "judgement: straight, unless measured",
          false,
          {},
          std::array{-0.5, 0.5}};
}

Result<Layout> draw_cuff(const LayoutFormValues& values) {
  const double stretch = values.number("stretch");
  const double middle = values.metres("girth"), half = 0.5 * values.metres("growth");
  if (middle - std::abs(half) < kThinnest_m)
    return bad_input(Phrase::worded(
        "A cuff of girth %1 with a growth of %2 comes to less than 40 mm at one edge; check both.",
        {millimetres_of(Length(middle)), millimetres_of(Length(2.0 * half))}));
  return draw_band(values, (middle - half) / (1.0 + stretch), (middle + half) / (1.0 + stretch), stretch,
                   "row");
}

}  // namespace

LayoutFormMaker cuff_layout_form() {
  LayoutForm form{
      "cuff",
      "A cuff of chambers in rows, each row with its own inlet, and a cloth strap; straight, or tapered with "
      "the limb.",
      {measured_girth("girth", 270.0, "at the cuff's middle", 0.0),
       girth_growth(),
       layout_size("height", 100.0, 20.0, 600.0, "extent along the limb"),
       layout_count("chambers", 4, 1, 24, "chambers in a row"),
       layout_count("rows", 1, 1, 12, "rows along the limb"),
       fitted_stretch("stretch", 0.02, -0.2, 0.5, "closing length = girth / (1 + stretch)", {{"girth"}, 0.0}),
       {"backing",
        10.0,
        0.0,
        1000.0,
        "stiffness of the cloth on the outer sheet along x, half of it across",
        "N/mm",
        "judgement",
        false,
        {}}},
      {"00-30", 1.5 * mm},
      {"A10", 2.0 * mm}};
  for (LayoutParameter& parameter : band_parameters()) form.parameters.push_back(std::move(parameter));
  return {std::move(form), draw_cuff};
}

}  // namespace wrapgauge
