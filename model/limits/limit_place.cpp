#include "model/limits/limit_place.hpp"

namespace wrapgauge {

LimitPlaces::LimitPlaces(const LimitSet& limits, UsePattern use, const std::vector<BonySite>& bony_sites,
                         double share_of_girth)
    : limits_(limits),
      use_(use),
      bony_sites_(bony_sites),
      circumferential_(share_of_girth >= limits.circumferential_share) {}

PlaceLimit LimitPlaces::at(const Vec3& skin_point_m, Area pressed) const {
  const SiteClass site = circumferential_ ? SiteClass::kCircumferential : SiteClass::kSoft;
  PlaceLimit place{find_row(limits_, site, use_, pressed), nullptr};
  for (const BonySite& bony_site : bony_sites_) {
    if (!lies_on(bony_site, skin_point_m)) continue;
    const LimitRow* row = find_row(limits_, SiteClass::kBony, use_, pressed);
    if (row && (!place.row || row->limit <= place.row->limit)) place = {row, &bony_site};
  }
  return place;
}

bool lies_on(const BonySite& site, const Vec3& skin_point_m) {
  return (skin_point_m - site.point_m).norm() <= site.radius.si();
}

}  // namespace wrapgauge
