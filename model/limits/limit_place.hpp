#pragma once
// Which row of the limit set holds at a place on the skin.

#include <vector>

#include "model/body/body.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

struct PlaceLimit {
  const LimitRow* row = nullptr;
  const BonySite* bony_site = nullptr;  // set when the bony row holds
};

// Round a limb the circumferential row holds, else the soft row; within a bony site's radius (straight
// distance from the skin point) the bony row, unless the other is stricter.
class LimitPlaces {
 public:
  LimitPlaces(const LimitSet& limits, UsePattern use, const std::vector<BonySite>& bony_sites,
              double share_of_girth);

  bool circumferential() const { return circumferential_; }
  PlaceLimit at(const Vec3& skin_point_m, Area pressed) const;

 private:
  const LimitSet& limits_;
  UsePattern use_;
  const std::vector<BonySite>& bony_sites_;
  bool circumferential_;
};

bool lies_on(const BonySite& site, const Vec3& skin_point_m);

}  // namespace wrapgauge
