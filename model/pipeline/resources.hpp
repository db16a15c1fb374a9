#pragma once
// The tables that the program ships.

#include <filesystem>
#include <vector>

#include "model/core/result.hpp"
#include "model/limits/comparison.hpp"
#include "model/limits/limit_set.hpp"
#include "model/material/silicone.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

struct Resources {
  std::vector<SiliconeGrade> silicones;
  std::vector<TissueSite> tissues;
  LimitSet limits;
  Comparisons comparisons;
  std::vector<Phrase> differ{};  // what differs from the tables that the program ships, a sentence each
};
Result<Resources> read_resources(const std::filesystem::path& folder);

}  // namespace wrapgauge
