#include "model/pipeline/fastening_pressure.hpp"

#include <algorithm>
#include <numbers>

#include "model/layout/closing_lines.hpp"
#include "model/wrap/fit_words.hpp"

namespace wrapgauge {
namespace {

// Of an incompressible sheet pulled round while skin and seams hold its width.
LineTension sheet_stiffness(const SiliconeGrade& grade, const Sheet& sheet) {
  return LineTension(4.0 * initial_shear_modulus(grade.law).si() * sheet.thickness.si());
}

// Tension over strain of threads with the energy 1/2 s E^2 of the Green strain E.
LineTension cloth_stiffness(LineTension stiffness, double strain) {
  return stiffness * ((1.0 + 0.5 * strain) * (1.0 + strain));
}

// Tension over strain, whole layout and straps one after the other along x.
LineTension stiffness_along(const Prepared& prepared, Length closing_length, double strain) {
  const Layout& layout = prepared.setup.layout;
  const Bounds2 box = bounds(layout.outline_m);
  const double from_m = layout.closure->from_x_m, to_m = from_m + closing_length.si();
  const double sheets_m = std::min(to_m, box.high.x()) - std::max(from_m, box.low.x());
  const double strap_m = closing_length.si() - sheets_m;
  const LineTension sheets = cloth_stiffness(layout.backing.along, strain) +
                             sheet_stiffness(prepared.skin_grade, layout.skin_sheet) +
                             sheet_stiffness(prepared.outer_grade, layout.outer_sheet);
  double gives = sheets_m / sheets.si();
  if (strap_m > 0.0 && !layout.straps.empty())
    gives += strap_m / cloth_stiffness(layout.straps.front().stiffness, strain).si();
  return LineTension(closing_length.si() / gives);
}

}  // namespace

Pressure ring_pressure(double strain, LineTension stiffness, Length radius, double foundation_pa_per_m) {
  if (!(strain > 0.0)) return {};
  const double r = radius.si(), s = stiffness.si();
  return Pressure(s * strain / (r + s / (foundation_pa_per_m * r)));
}

Pressure fastening_pressure(const Prepared& prepared) {
  const GirthSection& section = tightest(prepared.wrap.fit);
  const double foundation_pa_per_m = prepared.bed.foundation_pa_per_m.mean();
  const Length radius =
      section.girth / (2.0 * std::numbers::pi) + 0.5 * prepared.setup.layout.skin_sheet.thickness;
  const double strain = 2.0 * std::numbers::pi * (radius / section.closing_length) - 1.0;
  Pressure pressure;
  for (int pass = 0; pass < 40;
       ++pass) {  // the stiffness is that of the strain that is left; half-steps settle
    const double left = std::max(0.0, strain - pressure.si() / (foundation_pa_per_m * radius.si()));
    const LineTension stiffness = stiffness_along(prepared, section.closing_length, left);
    pressure = 0.5 * (pressure + ring_pressure(strain, stiffness, radius, foundation_pa_per_m));
  }
  return pressure;
}

}  // namespace wrapgauge
