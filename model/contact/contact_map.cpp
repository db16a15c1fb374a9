#include "model/contact/contact_map.hpp"

#include <algorithm>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_refinement.hpp"
#include "model/contact/skin_side.hpp"
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

}  // namespace

ContactMap contact_map(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state) {
  const TriangleMesh side = skin_side(setup, path.sheet, state.positions_m);
  return {state.contact_pressure_pa, disc_average_pa(side, state.contact_pressure_pa)};
}

SkinMap skin_map(const Body& body, const InflationSetup& setup, const LoadPath& path,
                 const EquilibriumState& state) {
  const TriangleMesh side = skin_side(setup, path.sheet, state.positions_m);
  if (side.faces.rows() == 0 || body.surface.faces.rows() == 0)
    return {body.surface, Eigen::VectorXd::Zero(body.surface.vertices_m.rows())};
  const NearestPoint nearest(side);
  const double reach = reach_m(state);
  SkinMap map;
  map.skin = refined_where(body.surface, [&](const Vec3& centre, double radius) {
    return nearest.is_within(centre, radius + reach);
  });
  map.pressure_pa = pressure_on_skin(map.skin, side, nearest, state.contact_pressure_pa, reach);
  return map;
}

}  // namespace wrapgauge
