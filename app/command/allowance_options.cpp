#include "app/command/allowance_options.hpp"

namespace wrapgauge {

void AllowanceOptions::add_to(CLI::App& command) {
  command
      .add_option("--trim", trim_mm,
                  "What the sheets are cast wider all round, mm; as casting.json if not given")
      ->check(CLI::Range(0.0, 100.0))
      ->type_name("MM");
  command
      .add_option("--fusing", fusing_mm,
                  "Thickness of the layer that fuses the sheets, mm, 0: none; as casting.json if not given")
      ->check(CLI::Range(0.0, 10.0))
      ->type_name("MM");
}

CastingAllowance AllowanceOptions::over(CastingAllowance allowance) const {
  if (trim_mm) allowance.trim_border = *trim_mm * mm;
  if (fusing_mm) allowance.fusing_layer = *fusing_mm * mm;
  return allowance;
}

}  // namespace wrapgauge
