#pragma once
#include <filesystem>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

// Copies the demo plans, the layouts they name and the invented readings of one into `folder`, made if it is
// missing; the plans' files.
Result<std::vector<std::filesystem::path>> write_demo(const std::filesystem::path& folder);

}  // namespace wrapgauge
