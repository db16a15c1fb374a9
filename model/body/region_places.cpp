#include "model/body/region_places.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

template <class Named>
const Named* find_named(const std::vector<Named>& list, const std::string& name) {
  const auto found =
      std::find_if(list.begin(), list.end(), [&](const Named& one) { return one.name == name; });
  return found == list.end() ? nullptr : &*found;
}

template <class Named>
void add_names(const std::vector<Named>& list, std::string& names) {
  for (const Named& one : list) names += (names.empty() ? "'" : ", '") + one.name + "'";
}

Problem unknown_place(const SkinRegion& region, const std::string& name, const NamedPlaces& places) {
  std::string names;
  add_names(places.landmarks, names);
  add_names(places.plan_sites, names);
  add_names(places.body_sites, names);
  return bad_input(Phrase::worded(
      "The region '%1' lies near '%2', which neither the plan nor the body has; they have %3.",
      {name_of(region.name), name_of(name), names.empty() ? Phrase::worded("none") : name_of(names)}));
}

}  // namespace

Result<std::vector<SkinRegion>> placed_regions(std::vector<SkinRegion> regions, const NamedPlaces& places) {
  for (SkinRegion& region : regions) {
    auto* near = std::get_if<NearPoint>(&region.place);
    if (!near || near->landmark.empty() || find_named(places.landmarks, near->landmark) ||
        find_named(places.plan_sites, near->landmark))
      continue;
    const BonySite* site = find_named(places.body_sites, near->landmark);
    if (!site) return unknown_place(region, near->landmark, places);
    near->point_m = site->point_m;
  }
  return regions;
}

}  // namespace wrapgauge
