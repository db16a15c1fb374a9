#pragma once
// A checked body surface: a limb or torso someone wears something on.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/body/body_part.hpp"
#include "model/body/person.hpp"
#include "model/core/quantity.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// The long axis of the limb. Station = distance along `direction` from `origin_m`; the distal-most vertex has
// station 0 and stations grow towards the trunk (proximal).
struct Axis {
  Vec3 origin_m = Vec3::Zero();
  Vec3 direction = Vec3::UnitZ();  // unit, distal -> proximal
};

// What makes a place bear less than soft tissue.
enum class SiteKind { kBone, kNerve, kVessel, kTendon };

std::string_view site_kind_name(SiteKind kind);  // as plans write it: "bone"
std::optional<SiteKind> site_kind_from_name(std::string_view name);

// A place where bone, a nerve, a vessel or a tendon lies close under the skin. Limits treat all kinds alike.
struct BonySite {
  std::string name;
  Vec3 point_m = Vec3::Zero();  // on or near the skin
  Length radius;
  Length tissue_depth;  // skin to bone there
  SiteKind kind = SiteKind::kBone;
  std::string status{};  // how sure place and depth are: "from memory", "judgement" ...; empty: not said
  std::string words{};   // what to mind there; may be empty
  bool operator==(const BonySite&) const = default;
};

struct Body {
  std::string name;
  TriangleMesh surface;  // metres, manifold, one component, outward normals; open ends allowed
  Axis axis;
  std::string tissue_site;         // row of the tissue table, e.g. "forearm relaxed"
  Eigen::VectorXd tissue_depth_m;  // a vertex each; empty: the depth of the tissue row everywhere
  std::vector<BonySite> bony_sites;
  std::optional<BodyPart> part{};  // none: not said yet, and nothing may be solved
  std::optional<BodySide> side{};  // none: has none, or not said
  std::optional<Vec3> front{};     // towards the front of the person, unit, across the axis; none: not said
};

}  // namespace wrapgauge
