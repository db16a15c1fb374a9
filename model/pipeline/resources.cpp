#include "model/pipeline/resources.hpp"

#include "model/core/json_object.hpp"
#include "model/core/shipped_table.hpp"

namespace wrapgauge {
namespace {

// Tables with other values than those the program was built with; how they are laid out in the file makes no
// difference. Limits are held against the shipped ones number by number elsewhere.
std::vector<Phrase> tables_that_differ(const std::filesystem::path& folder) {
  std::vector<Phrase> differ;
  for (const char* name : {"silicones.json", "tissues.json", "comparisons.json"}) {
    const auto shipped = parse_json(shipped_table(name).value_or(""), name), read = read_json(folder / name);
    if (!shipped || !read || *shipped != *read)
      differ.push_back(
          Phrase::worded("The table '%1' is not the one that the program ships.", {name_of(name)}));
  }
  return differ;
}

}  // namespace

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
                   std::move(comparisons).value(), tables_that_differ(folder)};
}

}  // namespace wrapgauge
