#include "app/command/write_plan_option.hpp"

namespace wrapgauge {

std::optional<Problem> writes_over_plan(const std::optional<std::filesystem::path>& write,
                                        const std::filesystem::path& plan) {
  std::error_code none;
  if (!write || !std::filesystem::equivalent(*write, plan, none)) return std::nullopt;
  return bad_input("--write names the plan itself, " + plan.filename().string() +
                   ": name another file, so that the plan stays as it is.");
}

}  // namespace wrapgauge
