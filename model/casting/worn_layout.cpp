#include "model/casting/worn_layout.hpp"

#include <algorithm>
#include <limits>

#include "model/casting/casting_check_parts.hpp"
#include "model/wrap/body_surface.hpp"

namespace wrapgauge {
namespace {

constexpr Length kEdge = 6.0 * mm;  // of the triangles; skin points are then right within about 0.5 mm

// Shares of a triangle's corners at the point of it nearest to `p` (Ericson's regions, by projecting onto the
// plane and then onto the edges).
template <class Point>
Vec3 nearest_shares(const Point& a, const Point& b, const Point& c, const Point& p) {
  const Point ab = b - a, ac = c - a, ap = p - a;
  const double d00 = ab.dot(ab), d01 = ab.dot(ac), d11 = ac.dot(ac), d20 = ap.dot(ab), d21 = ap.dot(ac);
  const double det = d00 * d11 - d01 * d01;
  if (det > 0.0) {
    const double v = (d11 * d20 - d01 * d21) / det, w = (d00 * d21 - d01 * d20) / det;
    if (v >= 0.0 && w >= 0.0 && v + w <= 1.0) return {1.0 - v - w, v, w};
  }
  Vec3 best(1.0, 0.0, 0.0);
  double least = std::numeric_limits<double>::infinity();
  const Point corners[3] = {a, b, c};
  for (int k = 0; k < 3; ++k) {
    const Point from = corners[k], along = corners[(k + 1) % 3] - from;
    const double length2 = along.dot(along);
    const double t = length2 > 0.0 ? std::clamp((p - from).dot(along) / length2, 0.0, 1.0) : 0.0;
    const double distance2 = (p - from - t * along).squaredNorm();
    if (distance2 >= least) continue;
    least = distance2;
    best = Vec3::Zero();
    best[k] = 1.0 - t;
    best[(k + 1) % 3] = t;
  }
  return best;
}

// A point of a triangle, on the flat layout and on the skin.
struct WornPoint {
  Vec2 flat_m = Vec2::Zero();
  Vec3 skin_m = Vec3::Zero();
};

WornPoint point_of(const WornLayout& worn, Eigen::Index triangle, const Vec3& shares) {
  WornPoint point;
  for (int k = 0; k < 3; ++k) {
    const int corner = worn.flat.triangles(triangle, k);
    point.flat_m += shares[k] * worn.flat.vertices_m.row(corner).transpose();
    point.skin_m += shares[k] * worn.wrap.worn_m.row(corner).transpose();
  }
  return point;
}

// The worn point nearest to a place, among the triangles of some regions.
struct NearestWorn {
  Vec2 flat_m = Vec2::Zero();
  double off_m = std::numeric_limits<double>::infinity();  // as the crow flies
};

template <class Counts>
NearestWorn nearest_worn(const WornLayout& worn, const Vec3& place_m, const Counts& counts) {
  NearestWorn nearest;
  for (Eigen::Index t = 0; t < worn.flat.triangles.rows(); ++t) {
    if (!counts(worn.flat.regions[t])) continue;
    const auto corner = [&](int k) { return Vec3(worn.wrap.worn_m.row(worn.flat.triangles(t, k))); };
    const WornPoint point = point_of(worn, t, nearest_shares<Vec3>(corner(0), corner(1), corner(2), place_m));
    const double off_m = (point.skin_m - place_m).norm();
    if (off_m < nearest.off_m) nearest = {point.flat_m, off_m};
  }
  return nearest;
}

Phrase inlet_words(const Inlet& inlet, const BonySite& site, double from_edge_m, double clear_m) {
  const Phrase name = name_of(inlet.name), place = place_phrase(inlet.point_m),
               clear = length_phrase(clear_m);
  if (from_edge_m <= 0.0)
    return Phrase::worded(
        "worn, inlet '%1' at %2 lies over %3, %4 from its middle; keep it %5 or more outside "
        "the site: move the inlet, or place the layout elsewhere.",
        {name, place, site_phrase(site), length_phrase(from_edge_m + site.radius.si()), clear});
  return Phrase::worded(
      "worn, inlet '%1' at %2 lies %3 from %4; keep it %5 or more outside the site: move the "
      "inlet, or place the layout elsewhere.",
      {name, place, lengths_told_apart(from_edge_m, clear_m).value, site_phrase(site), clear});
}

Phrase chamber_words(const Phrase& chamber, const NearestWorn& nearest, const BonySite& site,
                     double from_edge_m, double clear_m) {
  const Phrase place = place_phrase(nearest.flat_m), clear = length_phrase(clear_m);
  if (from_edge_m <= 0.0)
    return Phrase::worded(
        "worn, %1 lies over %2 at %3, %4 from the site's middle; keep it %5 or more outside "
        "the site: move the chamber, or place the layout elsewhere.",
        {chamber, site_phrase(site), place, length_phrase(nearest.off_m), clear});
  return Phrase::worded(
      "worn, %1 comes within %2 of %3 at %4; keep it %5 or more outside the site: move the "
      "chamber, or place the layout elsewhere.",
      {chamber, lengths_told_apart(from_edge_m, clear_m).value, site_phrase(site), place, clear});
}

}  // namespace

std::string site_word(SiteKind kind) {
  return kind == SiteKind::kBone ? "bony site" : std::string(site_kind_name(kind));
}

Result<WornLayout> wear_layout(const Body& body, const Layout& layout, const Placement& placement) {
  if (body.surface.faces.rows() == 0) return bad_input(Phrase::worded("The body has no faces."));
  const BodySurface surface(body);
  const auto closing = resolve_closing_length(surface, layout, placement);
  if (!closing) return closing.problem();
  auto flat = triangulate_layout(layout, *closing, {.edge = kEdge, .seam_edge = kEdge});
  if (!flat) return flat.problem();
  auto wrap = wrap_layout(surface, layout, *flat, placement);
  if (!wrap) return wrap.problem();
  return WornLayout{*closing, std::move(flat).value(), std::move(wrap).value()};
}

std::optional<Vec3> skin_point_of(const WornLayout& worn, const Vec2& flat_m) {
  constexpr double kOutside_m = 1e-4;
  double least = kOutside_m;
  std::optional<Vec3> found;
  for (Eigen::Index t = 0; t < worn.flat.triangles.rows(); ++t) {
    const auto corner = [&](int k) { return Vec2(worn.flat.vertices_m.row(worn.flat.triangles(t, k))); };
    const WornPoint point = point_of(worn, t, nearest_shares<Vec2>(corner(0), corner(1), corner(2), flat_m));
    if (const double off = (point.flat_m - flat_m).norm(); off < least) {
      least = off;
      found = point.skin_m;
    }
  }
  return found;
}

std::vector<SiteOnLayout> sites_on_layout(const WornLayout& worn, const std::vector<BonySite>& sites) {
  std::vector<SiteOnLayout> found;
  for (const BonySite& site : sites) {
    const NearestWorn nearest = nearest_worn(worn, site.point_m, [](const FlatRegion&) { return true; });
    if (nearest.off_m <= site.radius.si())
      found.push_back({site.name, site.kind, nearest.flat_m, site.radius, Length(nearest.off_m)});
  }
  return found;
}

Phrase site_phrase(const BonySite& site) {
  const Phrase name = name_of(site.name);
  switch (site.kind) {
    case SiteKind::kBone:
      return Phrase::worded("the bony site '%1'", {name});
    case SiteKind::kNerve:
      return Phrase::worded("the nerve '%1'", {name});
    case SiteKind::kVessel:
      return Phrase::worded("the vessel '%1'", {name});
    case SiteKind::kTendon:
      break;
  }
  return Phrase::worded("the tendon '%1'", {name});
}

std::vector<CastingFinding> check_worn_chambers(const Layout& layout, const WornLayout& worn,
                                                const std::vector<BonySite>& sites,
                                                const CastingRules& rules) {
  const double clear_m = 1e-3 * rules.value(CastingRule::kChamberToSite);
  std::vector<CastingFinding> findings;
  for (int i = 0; i < static_cast<int>(layout.chambers.size()); ++i)
    for (const BonySite& site : sites) {
      const NearestWorn nearest = nearest_worn(worn, site.point_m, [&](const FlatRegion& region) {
        return region.kind == RegionKind::kChamber && region.part == i;
      });
      const double from_edge = nearest.off_m - site.radius.si();
      if (!falls_short(from_edge, clear_m)) continue;
      const Phrase chamber = part_phrase(layout, {RegionKind::kChamber, i});
      findings.push_back({CastingRule::kChamberToSite,
                          chamber_words(chamber, nearest, site, from_edge, clear_m),
                          1e3 * from_edge,
                          1e3 * clear_m,
                          nearest.flat_m,
                          {{ProblemPlace::Kind::kChamber, i}}});
    }
  return findings;
}

std::vector<CastingFinding> check_worn_inlets(const Layout& layout, const WornLayout& worn,
                                              const std::vector<BonySite>& sites, const CastingRules& rules) {
  const double clear_m = 1e-3 * rules.value(CastingRule::kInletToBone);
  std::vector<CastingFinding> findings;
  for (int i = 0; i < static_cast<int>(layout.inlets.size()); ++i) {
    const Inlet& inlet = layout.inlets[i];
    const auto skin = skin_point_of(worn, inlet.point_m);
    if (!skin) continue;
    for (const BonySite& site : sites) {
      const double from_edge = (*skin - site.point_m).norm() - site.radius.si();
      if (!falls_short(from_edge, clear_m)) continue;
      findings.push_back({CastingRule::kInletToBone,
                          inlet_words(inlet, site, from_edge, clear_m),
                          1e3 * from_edge,
                          1e3 * clear_m,
                          inlet.point_m,
                          {{ProblemPlace::Kind::kInlet, i}}});
    }
  }
  return findings;
}

}  // namespace wrapgauge
