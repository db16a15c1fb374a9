#include "model/contact/bond_load.hpp"

#include <algorithm>
#include <cmath>

#include "model/inflation/tissue_contact.hpp"

namespace wrapgauge {

Pressure bond_load(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state) {
  if (!setup.body || !setup.layout.rim_bonded) return Pressure(0.0);
  const std::vector<bool> glued = glued_vertices(setup, sheet);
  double most_pa = 0.0;
  for (Eigen::Index v = 0; v < state.contact_force_n.rows(); ++v) {
    if (!glued[static_cast<std::size_t>(v)] || !(state.contact_area_m2(v) > 0.0)) continue;
    const int node = sheet.skin_node[static_cast<std::size_t>(v)];
    const Vec3 outward = setup.body->at(state.positions_m.row(node).transpose()).gradient.normalized();
    const Vec3 force = state.contact_force_n.row(v).transpose();
    const Vec3 shear = force - force.dot(outward) * outward;
    const double pull = std::max(0.0, -force.dot(outward));  // a push is no load on the bond
    most_pa = std::max(most_pa, std::hypot(shear.norm(), pull) / state.contact_area_m2(v));
  }
  return Pressure(most_pa);
}

}  // namespace wrapgauge
