#include "model/inflation/sheet_contact.hpp"

#include <algorithm>

namespace wrapgauge {

std::vector<SheetPair> sheet_pairs(const InflationSetup& setup, const SheetMesh& sheet) {
  const auto squeeze = [](const HyperelasticLaw& law, const Sheet& of) {
    return 3.0 * initial_shear_modulus(law).si() / of.thickness.si();
  };
  const double pa_per_m = std::min(squeeze(setup.skin_law, setup.layout.skin_sheet),
                                   squeeze(setup.outer_law, setup.layout.outer_sheet));
  Eigen::VectorXd area_m2 = Eigen::VectorXd::Zero(setup.flat.vertices_m.rows());
  for (Eigen::Index t = 0; t < setup.flat.triangles.rows(); ++t) {
    const Vec2 a = setup.flat.vertices_m.row(setup.flat.triangles(t, 0)),
               b = setup.flat.vertices_m.row(setup.flat.triangles(t, 1)),
               c = setup.flat.vertices_m.row(setup.flat.triangles(t, 2));
    const Vec2 p = b - a, q = c - a;
    for (int corner = 0; corner < 3; ++corner)
      area_m2(setup.flat.triangles(t, corner)) += (p.x() * q.y() - p.y() * q.x()) / 6.0;
  }
  std::vector<SheetPair> pairs;
  for (std::size_t v = 0; v < sheet.skin_node.size(); ++v) {
    if (sheet.skin_node[v] == sheet.outer_node[v]) continue;
    SheetPair pair;
    pair.stencil.nodes = {sheet.skin_node[v], sheet.outer_node[v]};
    pair.stiffness_n_per_m = pa_per_m * area_m2(static_cast<Eigen::Index>(v));
    pair.normal = setup.start_outward.row(static_cast<Eigen::Index>(v)).transpose();
    pairs.push_back(pair);
  }
  return pairs;
}

}  // namespace wrapgauge
