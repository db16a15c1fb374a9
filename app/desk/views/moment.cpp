#include "app/desk/views/moment.hpp"

#include <algorithm>
#include <cmath>

#include "model/contact/skin_side.hpp"
#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {
namespace {

Moment recorded(const ShownPlan& shown, int state) {
  const StateContact& contact = *shown.contact(state);
  const EquilibriumState& at = shown.estimate()->path.states[static_cast<std::size_t>(state)];
  return {contact.on_skin, contact.map.on_layout_pa, contact.share_of_limit, at.positions_m,
          at.indentation_m};
}

Moment between(const Moment& a, const Moment& b, double share) {
  const auto mix = [share](const auto& from, const auto& to) {
    return ((1.0 - share) * from + share * to).eval();
  };
  return {{mix(a.on_skin.points_m, b.on_skin.points_m), mix(a.on_skin.normals, b.on_skin.normals)},
          mix(a.pressure_pa, b.pressure_pa),
          mix(a.share_of_limit, b.share_of_limit),
          mix(a.positions_m, b.positions_m),
          mix(a.indentation_m, b.indentation_m)};
}

TriangleMesh outer_side(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m) {
  TriangleMesh side;
  side.faces = setup.flat.triangles;
  side.vertices_m.resize(setup.flat.vertices_m.rows(), 3);
  for (Eigen::Index v = 0; v < side.vertices_m.rows(); ++v)
    side.vertices_m.row(v) = positions_m.row(sheet.outer_node[static_cast<std::size_t>(v)]);
  return side;
}

}  // namespace

std::optional<Moment> moment_at(const ShownPlan& shown, double filling) {
  const int lower = static_cast<int>(std::floor(filling));
  const double share = filling - lower;
  if (!shown.contact(lower) || (share > 0.0 && !shown.contact(lower + 1))) return std::nullopt;
  const Moment from = recorded(shown, lower);
  return share > 0.0 ? between(from, recorded(shown, lower + 1), share) : from;
}

DeviceFaces device_faces(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m) {
  const TriangleMesh skin = skin_side(setup, sheet, positions_m),
                     outer = outer_side(setup, sheet, positions_m);
  return {skin.vertices_m, vertex_normals(skin), outer.vertices_m, vertex_normals(outer),
          (outer.vertices_m - skin.vertices_m).rowwise().norm()};
}

}  // namespace wrapgauge
