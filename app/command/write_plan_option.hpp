#pragma once
#include <filesystem>
#include <optional>

#include "model/core/result.hpp"

namespace wrapgauge {

// Of --write: it names the plan itself.
std::optional<Problem> writes_over_plan(const std::optional<std::filesystem::path>& write,
                                        const std::filesystem::path& plan);

}  // namespace wrapgauge
