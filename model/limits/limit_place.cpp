#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

// Takes the row over where it is as strict as the one that holds, or stricter.
void hold_stricter(PlaceLimit& place, const LimitRow* row, const BonySite* site) {
  if (row && (!place.row || row->limit <= place.row->limit)) place = {row, site};
}

}  // namespace

LimitPlaces::LimitPlaces(const LimitSet& limits, const LimitInputs& inputs, double share_of_girth)
    : limits_(limits), inputs_(inputs), circumferential_(share_of_girth >= limits.circumferential_share) {}

PlaceLimit LimitPlaces::at(const Vec3& skin_point_m, Area pressed) const {
  if (is_test_object(inputs_)) return {};
  const SiteClass site = circumferential_ ? SiteClass::kCircumferential : SiteClass::kSoft;
  PlaceLimit place{find_row(limits_, site, inputs_.use, pressed), nullptr};
  const LimitRow* bony = find_row(limits_, SiteClass::kBony, inputs_.use, pressed);
  if (bony_everywhere(inputs_)) hold_stricter(place, bony, nullptr);
  for (const BonySite& bony_site : inputs_.bony_sites)
    if (lies_on(bony_site, skin_point_m)) hold_stricter(place, bony, &bony_site);
  return place;
}

bool lies_on(const BonySite& site, const Vec3& skin_point_m) {
  return (skin_point_m - site.point_m).norm() <= site.radius.si();
}

bool bony_everywhere(const LimitInputs& inputs) {
  return !inputs.sites_known || !inputs.part;
}

bool is_test_object(const LimitInputs& inputs) {
  return inputs.part && !is_worn(*inputs.part);
}

}  // namespace wrapgauge
