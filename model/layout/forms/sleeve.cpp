#include "model/layout/forms/chamber_grid.hpp"

namespace wrapgauge {
namespace {

constexpr double kThinnestMiddle_m = 0.04;  // a middle that fits no limb (judgement)

// The flat widths at both ends and halfway; the stretch of the closure is that halfway.
Result<Layout> draw_sleeve(const LayoutFormValues& values, double ease_distal, double ease_proximal) {
  const double distal = values.metres("girth-distal"), proximal = values.metres("girth-proximal");
  const double lower = distal / (1.0 + ease_distal), upper = proximal / (1.0 + ease_proximal);
  const double stretch = (distal + proximal) / (lower + upper) - 1.0, bulge = values.metres("bulge");
  if (0.5 * (distal + proximal) + bulge < kThinnestMiddle_m)
    return bad_input(Phrase::worded(
        "A sleeve between girths of %1 and %2 with a bulge of %3 comes to less than 40 mm at its middle; "
        "check "
        "all three.",
        {millimetres_of(Length(distal)), millimetres_of(Length(proximal)), millimetres_of(Length(bulge))}));
  return draw_band(values, lower, upper, stretch, "band", bulge / (1.0 + stretch));
}

LayoutParameter limb_bulge() {
  LayoutParameter bulge{"bulge",
                        0.0,
                        -200.0,
                        200.0,
                        "how much rounder the limb is halfway than the mean of both edges; the closing lines "
                        "bend there",
                        "mm",
                        "judgement: straight, unless measured",
                        false,
                        {}};
  bulge.measured_bulge = {-0.5, 0.0, 0.5};
  return bulge;
}

Result<Layout> draw_even(const LayoutFormValues& values) {
  return draw_sleeve(values, values.number("stretch"), values.number("stretch"));
}

Result<Layout> draw_graduated(const LayoutFormValues& values) {
  const double distal = values.number("stretch-distal"), proximal = values.number("stretch-proximal");
  if (proximal > distal)
    return bad_input(
        Phrase::worded("A graduated sleeve has to be tighter at its distal end: \"stretch-proximal\" may not "
                       "be above \"stretch-distal\"."));
  return draw_sleeve(values, distal, proximal);
}

LayoutParameter stretch(std::string name, double usual, const std::string& where, LayoutFit fit) {
  return fitted_stretch(
      std::move(name), usual, -0.2, 0.3,
      "stretch round the limb" + where + ", below 0 slack: flat width = girth / (1 + stretch)",
      std::move(fit));
}

LayoutForm sleeve_form(std::string name, std::string about, std::vector<LayoutParameter> eases) {
  LayoutForm form{std::move(name),
                  std::move(about),
                  {measured_girth("girth-distal", 250.0, "at the sleeve's distal edge", -0.5),
                   measured_girth("girth-proximal", 330.0, "at the sleeve's proximal edge", 0.5),
                   limb_bulge(),
                   layout_size("height", 160.0, 40.0, 800.0, "extent along the limb"),
                   layout_count("chambers", 3, 1, 24, "chambers in a band"),
                   layout_count("bands", 2, 1, 12, "bands along the limb, each with its own inlet"),
                   {"backing",
                    1.5,
                    0.0,
                    1000.0,
                    "stiffness of the cloth on the outer sheet along x, half of it across",
                    "N/mm",
                    "judgement",
                    false,
                    {}}},
                  {"00-30", 1.5 * mm},
                  {"A10", 2.0 * mm}};
  for (LayoutParameter& parameter : eases) form.parameters.push_back(std::move(parameter));
  for (LayoutParameter& parameter : band_parameters()) form.parameters.push_back(std::move(parameter));
  return form;
}

}  // namespace

LayoutFormMaker sleeve_layout_form() {
  return {sleeve_form("sleeve",
                      "A tapered sleeve, alike tight at both ends, of chambers in bands; its closing lines "
                      "slant with the limb and bend where it bulges.",
                      {stretch("stretch", 0.03, "", {{"girth-distal", "girth-proximal"}, 0.0})}),
          draw_even};
}

LayoutFormMaker graduated_sleeve_layout_form() {
  return {
      sleeve_form("graduated-sleeve",
                  "A tapered sleeve that is tighter at its distal end; inflate its bands less and less "
                  "towards proximal.",
                  {stretch("stretch-distal", 0.05, " at the distal edge", {{"girth-distal"}, 0.03}),
                   stretch("stretch-proximal", 0.02, " at the proximal edge", {{"girth-proximal"}, 0.0})}),
      draw_graduated};
}

}  // namespace wrapgauge
