#pragma once
// Which row of the limit set holds at a place on the skin.

#include <vector>

#include "model/body/body.hpp"
#include "model/limits/finding.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

struct PlaceLimit {
  const LimitRow* row = nullptr;        // none: a test object, which has no skin
  const BonySite* bony_site = nullptr;  // set when the bony row holds because of it
};

// Round a limb the circumferential row holds, else the soft row; the bony row wherever it is stricter or as
// strict within a bony site's radius (straight distance from the skin point), and everywhere on a body whose
// sites or whose part nobody knows.
class LimitPlaces {
 public:
  // `inputs` and `limits` outlive it.
  LimitPlaces(const LimitSet& limits, const LimitInputs& inputs, double share_of_girth);

  bool circumferential() const { return circumferential_; }
  PlaceLimit at(const Vec3& skin_point_m, Area pressed) const;

 private:
  const LimitSet& limits_;
  const LimitInputs& inputs_;
  bool circumferential_;
};

bool lies_on(const BonySite& site, const Vec3& skin_point_m);

// The bony row holds on the whole body: its sites are not known, or not even its part.
bool bony_everywhere(const LimitInputs& inputs);

// A dummy on the bench: no row holds on it.
bool is_test_object(const LimitInputs& inputs);

}  // namespace wrapgauge
