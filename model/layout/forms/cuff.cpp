#include "model/layout/forms/chamber_grid.hpp"

namespace wrapgauge {
namespace {

Result<Layout> draw_cuff(const LayoutFormValues& values) {
  const double stretch = values.number("stretch");
  const double width = values.metres("girth") / (1.0 + stretch);
  return draw_band(values, width, width, stretch, "row");
}

}  // namespace

LayoutFormMaker cuff_layout_form() {
  LayoutForm form{
      "cuff",
      "A straight cuff of chambers in rows, each row with its own inlet, and a cloth strap.",
      {measured_girth("girth", 270.0, "at the cuff's middle", 0.0),
       layout_size("height", 100.0, 20.0, 600.0, "extent along the limb"),
       layout_count("chambers", 4, 1, 24, "chambers in a row"),
       layout_count("rows", 1, 1, 12, "rows along the limb"),
       {"stretch", 0.02, -0.2, 0.5, "closing length = girth / (1 + stretch)", "", "judgement", false, {}},
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
