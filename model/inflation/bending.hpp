#pragma once
// How sheets bend: the energy that the thickness adds to a membrane, to second order in curvature x
// thickness. docs/05-inflation.md derives it.
//
// Inside a sheet, a hinge at each edge: E = 1/2 (angle - rest angle)^2 l^2 / (a1/D1 + a2/D2), the true
// dihedral angle, present length and areas, and D of each triangle as it is stretched now. A sheet of law W
// stretched equally both ways, J its present area over its rest area, bends with
//   D(J) = t^3/(12 J^3) (l^2 W11 - l W1), l = sqrt J;   neo-Hookean: mu t^3/3 J^-5.
//
// At a weld, for each open sheet that leaves it, instead of its hinge: the layer in which a pulled sheet
// turns to its clamp, narrower than a usual triangle (`Weld`).

#include <array>
#include <vector>

#include "model/inflation/dihedral.hpp"
#include "model/inflation/sheet_elements.hpp"

namespace wrapgauge {

// a / D of a triangle of present area a: how it gives way as one of two plates in series. 1/(N m) m2.
struct PlateFlexibility {
  double value = 0.0, slope = 0.0, curvature = 0.0;  // by the present area
};
PlateFlexibility plate_flexibility(const SheetElement& element, double area_m2);

// The same of triangle t as it lies at `positions_m`.
PlateFlexibility plate_flexibility(const SheetElement& element, const SheetMesh& sheet, Eigen::Index t,
                                   const Points3& positions_m);

struct Hinge {
  std::array<int, 4> nodes;      // edge start, edge end, opposite corner of triangle 1, of triangle 2
  std::array<int, 2> triangles;  // of the sheet
  double rest_angle = 0.0;
};

// Reads the angle and the edge; the areas are in the flexibilities.
DihedralEnergy hinge_energy(const Hinge& hinge, const Dihedral::Measures& at,
                            const PlateFlexibility& triangle_1, const PlateFlexibility& triangle_2);

// An open sheet of thickness t that leaves a weld at an angle, pulled across by N a metre of rest length and
// stretched by l across and lT along:
//   E = 4 L sqrt(Dc Ne) (1 - cos(angle/2)),  Ne^2 = <N>^2 + (4 D0 s^2/H^2)^2,
//   Dc = D + <N> t^2/6 sin^2(angle/2),  D = t^3/12 (W11 - W1/l) / (l lT^2),
// L and H rest length and altitude of the open triangle, D0 of the unstretched sheet. Without pull, or as H
// goes to 0, it is a hinge of the open triangle; s <= 1 is what the welded stack gives way in series. <N> is
// N where it pulls, N^3/(N^2 + (D0 s^2/H^2)^2), and 0 where it pushes. Backing is left out: its threads,
// which hardly give way, would make the layer's energy change by leaps.
struct Weld {
  std::array<int, 4> nodes;  // as a hinge's, triangle 1 the open one
  std::array<int, 2> triangles;
  double rest_angle = 0.0;
  const HyperelasticLaw* law = nullptr;  // of the open sheet, whose own rest sizes follow
  double thickness_m = 0.0, rest_length_m = 0.0, rest_area_m2 = 0.0;
  double hinge_pull_n_per_m = 0.0;  // 4 D0 s^2/H^2
};

DihedralEnergy weld_energy(const Weld& weld, const Dihedral::Measures& at);

// Every pair of triangles across an edge that bend together: skin with skin, outer with outer, and welded or
// strap triangles with each other; and every open triangle beside a welded one. An edge without a second
// triangle is free.
struct BendingEdges {
  std::vector<Hinge> hinges;
  std::vector<Weld> welds;
  // Counted through: hinges first, then welds.
  std::size_t count() const { return hinges.size() + welds.size(); }
  const std::array<int, 4>& nodes(std::size_t k) const {
    return k < hinges.size() ? hinges[k].nodes : welds[k - hinges.size()].nodes;
  }
};
BendingEdges bending_edges(const FlatMesh& flat, const SheetMesh& sheet,
                           const std::vector<SheetElement>& elements);

// What edge k stores; flexibilities a triangle each.
DihedralEnergy edge_energy(const BendingEdges& edges, std::size_t k, const Dihedral::Measures& at,
                           const std::vector<PlateFlexibility>& flexibilities);

// The force of all bending on each node of a shape, N: a row each; they sum to zero over a body.
Points3 bending_forces_n(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m);

}  // namespace wrapgauge
