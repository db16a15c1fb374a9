#include "model/body/body.hpp"

namespace wrapgauge {

std::string_view site_kind_name(SiteKind kind) {
  switch (kind) {
    case SiteKind::kBone:
      return "bone";
    case SiteKind::kNerve:
      return "nerve";
    case SiteKind::kVessel:
      return "vessel";
    case SiteKind::kTendon:
      break;
  }
  return "tendon";
}

std::optional<SiteKind> site_kind_from_name(std::string_view name) {
  for (const SiteKind kind : {SiteKind::kBone, SiteKind::kNerve, SiteKind::kVessel, SiteKind::kTendon})
    if (site_kind_name(kind) == name) return kind;
  return std::nullopt;
}

}  // namespace wrapgauge
