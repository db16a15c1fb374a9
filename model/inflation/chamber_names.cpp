#include "model/inflation/chamber_names.hpp"

namespace wrapgauge {

std::string chambers_of(const InflationSetup& setup, GroupId group) {
  std::string names;
  for (std::size_t c = 0; c < setup.flat.chamber_group.size(); ++c)
    if (setup.flat.chamber_group[c] == group)
      names += (names.empty() ? "'" : ", '") + setup.layout.chambers[c].name + "'";
  return names;
}

}  // namespace wrapgauge
