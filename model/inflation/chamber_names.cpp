#include "model/inflation/chamber_names.hpp"

#include <algorithm>

namespace wrapgauge {

std::string chambers_of(const InflationSetup& setup, GroupId group) {
  std::string names;
  const std::size_t count = std::min(setup.flat.chamber_group.size(), setup.layout.chambers.size());
  for (std::size_t c = 0; c < count; ++c)
    if (setup.flat.chamber_group[c] == group)
      names += (names.empty() ? "'" : ", '") + setup.layout.chambers[c].name + "'";
  return names.empty() ? "of an unnamed group" : names;
}

}  // namespace wrapgauge
