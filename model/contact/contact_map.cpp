#include "model/contact/contact_map.hpp"

#include <algorithm>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_refinement.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/both_at_once.hpp"
#include "model/geometry/mesh_topology.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

// How far the deformed sheet may lie from the skin at rest: the deepest indentation and a little.
double reach_m(const EquilibriumState& state) {
  constexpr double kMargin_m = 3e-3;
  return kMargin_m + (state.indentation_m.size() > 0 ? state.indentation_m.maxCoeff() : 0.0);
}

// Pressure of the sheet point nearest to each skin vertex. A vertex beyond the device's rim has its nearest
// point on the rim but not above it: it is not covered.
Eigen::VectorXd pressure_on_skin(const TriangleMesh& skin, const TriangleMesh& side,
                                 const NearestPoint& nearest, const Eigen::VectorXd& pressure_pa,
                                 double reach) {
  constexpr double kSideways_m = 0.5e-3;
  const Points3 normals = face_normals(side);
  Eigen::VectorXd on_skin = Eigen::VectorXd::Zero(skin.vertices_m.rows());
  for (Eigen::Index v = 0; v < on_skin.size(); ++v) {
    const Vec3 point = skin.vertices_m.row(v);
    const auto found = nearest.within(point, reach);
    if (!found) continue;
    const Vec3 normal = normals.row(found->face), offset = point - found->point_m;
    const bool on_edge = found->barycentric.minCoeff() <= 0.0;
    if (on_edge && (offset - offset.dot(normal) * normal).norm() > kSideways_m) continue;
    for (int corner = 0; corner < 3; ++corner)
      on_skin[v] += found->barycentric[corner] * pressure_pa[side.faces(found->face, corner)];
  }
  return on_skin;
}

// The body's surface, fine where the sheet lies near, with the pressure on it.
void put_on_skin(const TriangleMesh& body, const TriangleMesh& side, double reach, ContactMap& map) {
  if (side.faces.rows() == 0 || body.faces.rows() == 0) {
    map.skin = body;
    map.on_skin_pa = Eigen::VectorXd::Zero(body.vertices_m.rows());
    return;
  }
  const NearestPoint nearest(side);
  map.skin = refined_where(
      body, [&](const Vec3& centre, double radius) { return nearest.is_within(centre, radius + reach); });
  map.on_skin_pa = pressure_on_skin(map.skin, side, nearest, map.on_layout_pa, reach);
}

}  // namespace

ContactMap contact_map(const Body& body, const InflationSetup& setup, const LoadPath& path,
                       const EquilibriumState& state) {
  ContactMap map;
  map.on_layout_pa = state.contact_pressure_pa;
  const TriangleMesh side = skin_side(setup, path.sheet, state.positions_m);
  both_at_once([&] { put_on_skin(body.surface, side, reach_m(state), map); },
               [&] { map.mean_1cm2_pa = disc_average_pa(side, map.on_layout_pa); });
  return map;
}

}  // namespace wrapgauge
