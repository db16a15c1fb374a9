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

}  // namespace

std::string site_word(SiteKind kind) {
  return kind == SiteKind::kBone ? "bony site" : std::string(site_kind_name(kind));
}

Result<WornLayout> wear_layout(const Body& body, const Layout& layout, const Placement& placement) {
  if (body.surface.faces.rows() == 0) return bad_input("The body has no faces.");
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
    const Vec3 shares = nearest_shares<Vec2>(corner(0), corner(1), corner(2), flat_m);
    Vec2 nearest = Vec2::Zero();
    Vec3 skin = Vec3::Zero();
    for (int k = 0; k < 3; ++k) {
      nearest += shares[k] * corner(k);
      skin += shares[k] * worn.wrap.worn_m.row(worn.flat.triangles(t, k)).transpose();
    }
    if (const double off = (nearest - flat_m).norm(); off < least) {
      least = off;
      found = skin;
    }
  }
  return found;
}

std::vector<SiteOnLayout> sites_on_layout(const WornLayout& worn, const std::vector<BonySite>& sites) {
  std::vector<SiteOnLayout> found;
  for (const BonySite& site : sites) {
    SiteOnLayout nearest{site.name, site.kind, Vec2::Zero(), site.radius, Length(1e9)};
    for (Eigen::Index t = 0; t < worn.flat.triangles.rows(); ++t) {
      const auto corner = [&](int k) { return Vec3(worn.wrap.worn_m.row(worn.flat.triangles(t, k))); };
      const Vec3 shares = nearest_shares<Vec3>(corner(0), corner(1), corner(2), site.point_m);
      Vec3 skin = Vec3::Zero();
      Vec2 flat = Vec2::Zero();
      for (int k = 0; k < 3; ++k) {
        skin += shares[k] * corner(k);
        flat += shares[k] * worn.flat.vertices_m.row(worn.flat.triangles(t, k)).transpose();
      }
      if (const Length off((skin - site.point_m).norm()); off < nearest.off_layout) {
        nearest.off_layout = off;
        nearest.centre_m = flat;
      }
    }
    if (nearest.off_layout <= site.radius) found.push_back(nearest);
  }
  return found;
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
      if (from_edge >= clear_m) continue;
      findings.push_back(
          {CastingRule::kInletToBone,
           "worn, inlet '" + inlet.name + "' at " + at_mm(inlet.point_m) +
               (from_edge <= 0.0 ? " lies over the " + site_word(site.kind) + " '" + site.name + "', " +
                                       in_millimetres(from_edge + site.radius.si()) + " from its middle"
                                 : " lies " + in_millimetres(from_edge) + " from the " +
                                       site_word(site.kind) + " '" + site.name + "'") +
               "; keep it " + in_millimetres(clear_m) +
               " or more outside the site: move the inlet, or place the layout elsewhere.",
           1e3 * from_edge,
           1e3 * clear_m,
           inlet.point_m,
           {{ProblemPlace::Kind::kInlet, i}}});
    }
  }
  return findings;
}

}  // namespace wrapgauge
