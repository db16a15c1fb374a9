#pragma once
#include <string>

#include "model/body/body.hpp"

namespace wrapgauge {

// A place that bears less, where it lies on a part of every size: at the same share of the length and in the
// same direction from the middle of the section. Angles are those of a right part, from its outer side over
// the front (forms: +x over +y); on a left one they are mirrored.
struct StandardSite {
  std::string name;
  double share = 0.0;
  double angle_deg = 0.0;
  double radius_mm = 0.0, depth_mm = 0.0;  // depth: skin to bone
  SiteKind kind = SiteKind::kBone;
  std::string words = {};
};

}  // namespace wrapgauge
