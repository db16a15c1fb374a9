#include "model/pipeline/resources.hpp"

namespace wrapgauge {

Result<Resources> read_resources(const std::filesystem::path& folder) {
  auto silicones = read_silicone_grades(folder / "silicones.json");
  if (!silicones) return silicones.problem();
  auto tissues = read_tissue_sites(folder / "tissues.json");
  if (!tissues) return tissues.problem();
  auto limits = read_limit_set(folder / "limits.json");
  if (!limits) return limits.problem();
  auto comparisons = read_comparisons(folder / "comparisons.json");
  if (!comparisons) return comparisons.problem();
  return Resources{std::move(silicones).value(), std::move(tissues).value(), std::move(limits).value(),
                   std::move(comparisons).value()};
}

}  // namespace wrapgauge
