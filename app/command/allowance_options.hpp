#pragma once
// What is cast besides the layout itself, as `layout check` and `layout template` ask for it.

#include <CLI/CLI.hpp>
#include <optional>

#include "model/casting/silicone_amount.hpp"

namespace wrapgauge {

struct AllowanceOptions {
  std::optional<double> trim_mm, fusing_mm;  // none: the rules' own

  void add_to(CLI::App& command);
  CastingAllowance over(CastingAllowance allowance) const;
};

}  // namespace wrapgauge
