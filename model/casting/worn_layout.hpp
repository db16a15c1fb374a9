#pragma once
// A layout as worn, and where places of the body lie on it.

#include "model/body/body.hpp"
#include "model/casting/casting_check.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

struct WornLayout {
  std::optional<Length> closing_length;
  FlatMesh flat;
  Wrap wrap;
};

// Laid on the skin and closed, with coarse triangles: for places, not for mechanics. Problems: those of
// resolve_closing_length, triangulate_layout and wrap_layout.
Result<WornLayout> wear_layout(const Body& body, const Layout& layout, const Placement& placement);

// Skin point of a flat point; none beyond what is worn (an overlapping tail).
std::optional<Vec3> skin_point_of(const WornLayout& worn, const Vec2& flat_m);

std::string site_word(SiteKind kind);  // "bony site", "nerve" ...

// A bony site, nerve, vessel or tendon as it comes to lie on the flat layout.
struct SiteOnLayout {
  std::string name;
  SiteKind kind = SiteKind::kBone;
  Vec2 centre_m;      // of the flat point nearest to the site
  Length radius;      // of the site
  Length off_layout;  // from the site's middle to the nearest worn point
};
// Those of the sites that the layout covers or comes near (within the site's radius of the layout).
std::vector<SiteOnLayout> sites_on_layout(const WornLayout& worn, const std::vector<BonySite>& sites);

Phrase site_phrase(const BonySite& site);  // "the bony site 'ulnar styloid'"

// Chambers that come to lie over a site to keep clear.
std::vector<CastingFinding> check_worn_chambers(const Layout& layout, const WornLayout& worn,
                                                const std::vector<BonySite>& sites,
                                                const CastingRules& rules);

// Inlets that come to lie over or near a bony site.
std::vector<CastingFinding> check_worn_inlets(const Layout& layout, const WornLayout& worn,
                                              const std::vector<BonySite>& sites, const CastingRules& rules);

}  // namespace wrapgauge
