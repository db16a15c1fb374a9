#include "app/job/casting_tables.hpp"

#include "app/job/resource_folder.hpp"

namespace wrapgauge {

Result<CastingTables> read_casting_tables() {
  const auto folder = resource_folder();
  if (!folder) return folder.problem();
  auto rules = read_casting_rules(*folder / "casting.json");
  if (!rules) return rules.problem();
  auto silicones = read_silicone_grades(*folder / "silicones.json");
  if (!silicones) return silicones.problem();
  return CastingTables{std::move(rules).value(), std::move(silicones).value()};
}

}  // namespace wrapgauge
