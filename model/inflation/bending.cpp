#include "model/inflation/bending.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <tuple>

#include "model/core/jet.hpp"
#include "model/inflation/curl.hpp"
#include "model/material/stretch_pull.hpp"

namespace wrapgauge {
namespace {

// One side of a flat edge.
struct EdgeSide {
  int low, high;  // flat vertices of the edge
  int flat_triangle, opposite;
  bool operator<(const EdgeSide& o) const {
    return std::tie(low, high, flat_triangle) < std::tie(o.low, o.high, o.flat_triangle);
  }
};

std::vector<EdgeSide> sorted_edge_sides(const FlatMesh& flat) {
  std::vector<EdgeSide> sides;
  for (int t = 0; t < flat.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner) {
      const int a = flat.triangles(t, corner), b = flat.triangles(t, (corner + 1) % 3);
      sides.push_back({std::min(a, b), std::max(a, b), t, flat.triangles(t, (corner + 2) % 3)});
    }
  std::sort(sides.begin(), sides.end());
  return sides;
}

bool is_open(SheetLayer layer) {
  return layer == SheetLayer::kSkin || layer == SheetLayer::kOuter;
}

bool bend_together(SheetLayer a, SheetLayer b) {
  return !(is_open(a) && is_open(b)) || a == b;
}

// Share of its flat area below which a triangle is crushed to nothing: it is refused elsewhere.
constexpr double kLeastArea = 1e-6;

// Of a flat triangle pair laid on the parabola of that curvature along x, its vertex at the edge.
double rest_angle(const FlatMesh& flat, const SheetMesh& sheet, const std::array<int, 4>& nodes,
                  double curvature_per_m) {
  if (curvature_per_m == 0.0) return 0.0;
  const auto at = [&](int a) -> Vec2 { return flat.vertices_m.row(sheet.flat_vertex[nodes[a]]).transpose(); };
  const double vertex = 0.5 * (at(0).x() + at(1).x());
  std::array<Vec3, 4> corners;
  for (int a = 0; a < 4; ++a)
    corners[a] = {at(a).x(), at(a).y(), 0.5 * curvature_per_m * std::pow(at(a).x() - vertex, 2)};
  return Dihedral(corners).measures(Dihedral::kAngle);
}

int node_at(const SheetMesh& sheet, SheetLayer layer, int flat_vertex) {
  return layer == SheetLayer::kOuter ? sheet.outer_node[flat_vertex] : sheet.skin_node[flat_vertex];
}

// The edge runs so that triangle 1 lies on its left: both normals point away from the body.
Hinge make_hinge(const FlatMesh& flat, const SheetMesh& sheet, const std::vector<SheetElement>& elements,
                 const EdgeSide& one, const EdgeSide& two, int t1, int t2) {
  const SheetLayer l1 = sheet.layer[t1], l2 = sheet.layer[t2];
  const SheetLayer edge_layer =
      l1 == SheetLayer::kOuter || l2 == SheetLayer::kOuter ? SheetLayer::kOuter : l1;
  const Vec2 low = flat.vertices_m.row(one.low), high = flat.vertices_m.row(one.high),
             corner = flat.vertices_m.row(one.opposite);
  const Vec2 edge = high - low, way = corner - low;
  const bool left = edge.x() * way.y() - edge.y() * way.x() > 0.0;
  Hinge hinge;
  hinge.nodes = {node_at(sheet, edge_layer, left ? one.low : one.high),
                 node_at(sheet, edge_layer, left ? one.high : one.low), node_at(sheet, l1, one.opposite),
                 node_at(sheet, l2, two.opposite)};
  hinge.triangles = {t1, t2};
  hinge.rest_angle = rest_angle(flat, sheet, hinge.nodes, shared_curvature_per_m(elements[t1], elements[t2]));
  return hinge;
}

// The gradient of the opposite corner's shape function: it points across the edge and is one over the
// altitude.
Vec2 across_edge(const Eigen::Matrix<double, 3, 2>& shape, const SheetMesh& sheet, int t, int corner_node) {
  for (int k = 0; k < 3; ++k)
    if (sheet.triangles(t, k) == corner_node) return shape.row(k).transpose();
  return Vec2::Zero();
}

Weld make_weld(const Hinge& hinge, const SheetMesh& sheet, const std::vector<SheetElement>& elements) {
  const SheetElement &open = elements[hinge.triangles[0]], &welded = elements[hinge.triangles[1]];
  const SheetLayerRest& layer = open.layers[0];
  const Vec2 own = across_edge(layer.shape, sheet, hinge.triangles[0], hinge.nodes[2]);
  Weld weld;
  weld.nodes = hinge.nodes;
  weld.triangles = hinge.triangles;
  weld.rest_angle = hinge.rest_angle;
  weld.law = layer.law;
  weld.thickness_m = layer.thickness_m;
  weld.rest_area_m2 = layer.rest_area_m2;
  weld.rest_length_m = 2.0 * layer.rest_area_m2 * own.norm();
  const double share = 1.0 / (1.0 + welded.flat_area_m2 * open.bending_stiffness_nm /
                                        (open.flat_area_m2 * welded.bending_stiffness_nm));
  weld.hinge_pull_n_per_m = 4.0 * open.bending_stiffness_nm * std::pow(share * own.norm(), 2);
  return weld;
}

}  // namespace

PlateFlexibility plate_flexibility(const SheetElement& element, double area_m2) {
  const Jet<1> area = Jet<1>::variable(area_m2, 0);
  Jet<1> stiffness = 0.0;
  for (int k = 0; k < element.layer_count; ++k) {
    const SheetLayerRest& layer = element.layers[k];
    stiffness =
        stiffness + layer.bending_stiffness_nm *
                        (layer.stretched ? layer.stretched->at(area / layer.rest_area_m2)
                                         : stretched_stiffness(*layer.law, area / layer.rest_area_m2));
  }
  const Jet<1> flexibility = area / stiffness;
  return {flexibility.value, flexibility.gradient(0), flexibility.hessian(0, 0)};
}

PlateFlexibility plate_flexibility(const SheetElement& element, const SheetMesh& sheet, Eigen::Index t,
                                   const Points3& positions_m) {
  const auto nodes = sheet.triangles.row(t);
  const Vec3 a = positions_m.row(nodes(0)), b = positions_m.row(nodes(1)), c = positions_m.row(nodes(2));
  const double least = kLeastArea * element.flat_area_m2;
  return plate_flexibility(element, std::max(least, 0.5 * (b - a).cross(c - a).norm()));
}

DihedralEnergy hinge_energy(const Hinge& hinge, const Dihedral::Measures& at, const PlateFlexibility& one,
                            const PlateFlexibility& two) {
  const double angle = at(Dihedral::kAngle) - hinge.rest_angle, length = at(Dihedral::kLength);
  const double stiffness = length * length / (one.value + two.value);
  // d ln E by the measures, and its own derivative; the angle apart, which may be 0.
  const Eigen::Vector3d by_size(2.0 / length, -one.slope / (one.value + two.value),
                                -two.slope / (one.value + two.value));
  Eigen::Matrix3d change = by_size * by_size.transpose();
  change(0, 0) -= 0.5 * by_size(0) * by_size(0);
  change.bottomRightCorner<2, 2>() += by_size.tail<2>() * by_size.tail<2>().transpose();
  change(1, 1) -= one.curvature / (one.value + two.value);
  change(2, 2) -= two.curvature / (one.value + two.value);
  DihedralEnergy energy;
  energy.value = 0.5 * stiffness * angle * angle;
  energy.slope(0) = stiffness * angle;
  energy.slope.tail<3>() = energy.value * by_size;
  energy.curvature(0, 0) = stiffness;
  energy.curvature.block<3, 1>(1, 0) = stiffness * angle * by_size;
  energy.curvature.block<1, 3>(0, 1) = energy.curvature.block<3, 1>(1, 0).transpose();
  energy.curvature.bottomRightCorner<3, 3>() = energy.value * change;
  return energy;
}

namespace {

// Of the hinge's pull: where a weld's own sets in. With a corner instead of a bend there, welds that are
// hardly pulled come to rest on the corner and Newton's steps go round it; a wider bend makes a thick sheet
// stiffer.
constexpr double kOnset = 0.25;

// The pull where it pulls, none where it pushes, with two continuous derivatives.
template <int N>
Jet<N> only_pulling(const Jet<N>& pull, double onset) {
  if (pull.value <= 0.0) return 0.0;
  return pull * pull * pull / (pull * pull + onset * onset);
}

// What a weld's layer does as it is pulled, by length and area of the open triangle over their rest sizes.
struct WeldLayer {
  Jet<2> stiffness, curved, held;  // D, what a turn adds to it, Ne
};

// E = 8 L sqrt(Dc Ne) sin^2(angle/4), Dc = D + curved sin^2(angle/2), the angle's derivatives by hand: one
// variable less is half the work.
DihedralEnergy turned(const WeldLayer& layer, double angle, const Weld& weld) {
  const Jet<1> a = Jet<1>::variable(angle, 0), half = sin(0.5 * a), quarter = sin(0.25 * a);
  const Jet<1> curving = half * half, turn = 8.0 * weld.rest_length_m * quarter * quarter;
  const Jet<2> inside = (layer.stiffness + layer.curved * curving.value) * layer.held;
  const Jet<2> root = sqrt(inside);
  // The same by the angle: with s = sin^2(angle/2), d root/ds = curved held / (2 root).
  const Jet<2> by_curving = 0.5 * (layer.curved * layer.held) / root;
  const double twice = -by_curving.value * by_curving.value / root.value;
  const double slope = by_curving.value * curving.gradient(0);
  const double curvature =
      by_curving.value * curving.hessian(0, 0) + twice * std::pow(curving.gradient(0), 2);
  const Eigen::Vector2d sizes(1.0 / weld.rest_length_m, 1.0 / weld.rest_area_m2);
  DihedralEnergy energy;
  energy.value = turn.value * root.value;
  energy.slope(0) = turn.gradient(0) * root.value + turn.value * slope;
  energy.slope.segment<2>(1) = turn.value * root.gradient.cwiseProduct(sizes);
  energy.curvature(0, 0) =
      turn.hessian(0, 0) * root.value + 2.0 * turn.gradient(0) * slope + turn.value * curvature;
  const Eigen::Vector2d mixed =
      turn.gradient(0) * root.gradient + turn.value * curving.gradient(0) * by_curving.gradient;
  energy.curvature.block<2, 1>(1, 0) = mixed.cwiseProduct(sizes);
  energy.curvature.block<1, 2>(0, 1) = energy.curvature.block<2, 1>(1, 0).transpose();
  energy.curvature.block<2, 2>(1, 1) = turn.value * sizes.asDiagonal() * root.hessian * sizes.asDiagonal();
  return energy;
}

}  // namespace

DihedralEnergy weld_energy(const Weld& weld, const Dihedral::Measures& at) {
  using Number = Jet<2>;  // length, area
  const Number along = Number::variable(at(Dihedral::kLength) / weld.rest_length_m, 0);
  const Number area = Number::variable(at(Dihedral::kArea1) / weld.rest_area_m2, 1);
  const Number across = area / along;
  const double t = weld.thickness_m;
  const StretchPull<Number> stress = stretch_pull(*weld.law, across, along);
  const Number stiffness =
      t * t * t / 12.0 * bending_modulus(*weld.law, stress, across) / (across * area * area);
  const Number pull = only_pulling(t * stress.w1, kOnset * weld.hinge_pull_n_per_m);
  const Number held = sqrt(pull * pull + weld.hinge_pull_n_per_m * weld.hinge_pull_n_per_m);
  return turned({stiffness, t * t / 6.0 * pull, held}, at(Dihedral::kAngle) - weld.rest_angle, weld);
}

DihedralEnergy edge_energy(const BendingEdges& edges, std::size_t k, const Dihedral::Measures& at,
                           const std::vector<PlateFlexibility>& flexibilities) {
  if (k >= edges.hinges.size()) return weld_energy(edges.welds[k - edges.hinges.size()], at);
  const Hinge& hinge = edges.hinges[k];
  return hinge_energy(hinge, at, flexibilities[hinge.triangles[0]], flexibilities[hinge.triangles[1]]);
}

Points3 bending_forces_n(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m) {
  const std::vector<HyperelasticLaw> strap_laws = strap_ground_laws(setup.layout);
  const std::vector<SheetElement> elements = sheet_elements(setup, sheet, strap_laws);
  const BendingEdges edges = bending_edges(setup.flat, sheet, elements);
  std::vector<PlateFlexibility> flexibilities;
  for (std::size_t t = 0; t < elements.size(); ++t)
    flexibilities.push_back(plate_flexibility(elements[t], sheet, static_cast<Eigen::Index>(t), positions_m));
  Points3 forces = Points3::Zero(positions_m.rows(), 3);
  for (std::size_t k = 0; k < edges.count(); ++k) {
    const std::array<int, 4>& nodes = edges.nodes(k);
    const Dihedral at(nodes, positions_m);
    const DihedralEnergy energy = edge_energy(edges, k, at.measures, flexibilities);
    for (int a = 0; a < 4; ++a) forces.row(nodes[a]) -= (at.gradients[a] * energy.slope).transpose();
  }
  return forces;
}

BendingEdges bending_edges(const FlatMesh& flat, const SheetMesh& sheet,
                           const std::vector<SheetElement>& elements) {
  std::vector<std::vector<int>> sheet_triangles(flat.triangles.rows());
  for (std::size_t t = 0; t < sheet.flat_triangle.size(); ++t)
    sheet_triangles[sheet.flat_triangle[t]].push_back(static_cast<int>(t));
  BendingEdges edges;
  const auto add = [&](const EdgeSide& one, const EdgeSide& two, int t1, int t2) {
    const bool open_1 = is_open(sheet.layer[t1]), open_2 = is_open(sheet.layer[t2]);
    const Hinge hinge = open_2 && !open_1 ? make_hinge(flat, sheet, elements, two, one, t2, t1)
                                          : make_hinge(flat, sheet, elements, one, two, t1, t2);
    if (open_1 == open_2)
      edges.hinges.push_back(hinge);
    else
      edges.welds.push_back(make_weld(hinge, sheet, elements));
  };
  const std::vector<EdgeSide> sides = sorted_edge_sides(flat);
  for (std::size_t s = 0; s + 1 < sides.size(); ++s) {
    const EdgeSide &one = sides[s], &two = sides[s + 1];
    if (one.low != two.low || one.high != two.high) continue;
    for (int t1 : sheet_triangles[one.flat_triangle])
      for (int t2 : sheet_triangles[two.flat_triangle])
        if (bend_together(sheet.layer[t1], sheet.layer[t2])) add(one, two, t1, t2);
  }
  return edges;
}

}  // namespace wrapgauge
