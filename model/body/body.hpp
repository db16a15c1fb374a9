#pragma once
// A checked body surface: a limb or torso someone wears something on.

#include <optional>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// The long axis of the limb. Station = distance along `direction` from `origin_m`; the distal-most vertex has
// station 0 and stations grow towards the trunk (proximal).
struct Axis {
  Vec3 origin_m = Vec3::Zero();
  Vec3 direction = Vec3::UnitZ();  // unit, distal -> proximal
};

// A place where bone or a nerve lies close under the skin.
struct BonySite {
  std::string name;
  Vec3 point_m = Vec3::Zero();  // on or near the skin
  Length radius;
  Length tissue_depth;  // skin to bone there
};

struct Body {
  std::string name;
  TriangleMesh surface;  // metres, manifold, one component, outward normals; open ends allowed
  Axis axis;
  std::string tissue_site;         // row of the tissue table, e.g. "forearm relaxed"
  Eigen::VectorXd tissue_depth_m;  // a vertex each; empty: the depth of the tissue row everywhere
  std::vector<BonySite> bony_sites;
};

}  // namespace wrapgauge
