#pragma once
// The two sheets of an open region lie on each other where the chamber is not blown up. Round each flat
// vertex the space between them is a cell: from the skin sheet's cell straight to the outer sheet's,
//   V = (o - s) . a,   a = 1/6 sum over the ring of (m_i x m_i+1 + 1/3 h_i x h_i+1),
// o and s the vertex on the outer and the skin sheet, m and h the mean and half the difference of both at the
// vertices round it. a is the cell's area vector, the mean over the way from one sheet to the other, so that
// neither tilting nor sliding along a surface is taken for a gap; the cells of a chamber add up to its volume
// exactly. With g = V/A, A the cell's rest area, and c the film:
//   E = A f(g),  pressure p = -f' = P u^2 for 0 < u = 1 - g/c < 1, P (2u - 1) beyond, none for u <= 0.
// A potential of all nodes round the vertex, with no normal that is held: its derivatives are exact. A cell
// is below zero only where the sheets press on each other with more than P.

#include <optional>
#include <vector>

#include "model/inflation/block_matrix.hpp"
#include "model/inflation/load_path.hpp"
#include "model/inflation/membrane.hpp"

namespace wrapgauge {

struct GapCell {
  // Of `nodes`; the same twice where the sheets are fused.
  struct RingPlace {
    int skin, outer;
  };
  std::vector<int> nodes;        // the vertex on the skin sheet, on the outer sheet, then those round it
  std::vector<RingPlace> ring;   // counter-clockwise in the layout frame
  std::vector<BlockSlot> slots;  // of node pairs (0,0) (1,0) (1,1) (2,0) ...
  double rest_area_m2 = 0.0;

  void list_pairs(std::vector<std::pair<int, int>>& pairs) const;
  void bind(const BlockMatrix& matrix);
};

// Where both sheets are free to part: a cell for each vertex that is doubled.
std::vector<GapCell> gap_cells(const FlatMesh& flat, const SheetMesh& sheet);

double gap_volume_m3(const GapCell& cell, const Points3& positions_m);

// How two sheets press on each other across a gap (V/A, m).
struct GapLaw {
  double film_m = 0.0;       // they begin to press this far apart
  double pressure_pa = 0.0;  // when nothing is left between them

  double energy_n_per_m(double gap_m) const;  // J a m2
  double pressure_at(double gap_m) const;     // Pa
  double stiffness_at(double gap_m) const;    // -dp/dg, Pa/m, >= 0
};

// The film is a share of the thinner sheet; the pressure is some shear moduli of the stiffer one: the tension
// that presses one sheet on the other stays far below it.
GapLaw gap_law(const InflationSetup& setup, const SheetSettings& settings);

struct GapTerms {
  double energy = 0.0;
  Eigen::Matrix3Xd gradient;  // a column for each of the cell's nodes
  Eigen::MatrixXd hessian;    // empty unless asked for
};

// None where the sheets are apart. kProjected leaves the volume's own curvature out: positive semi-definite.
std::optional<GapTerms> gap_terms(const GapCell& cell, const GapLaw& law, const Points3& positions_m,
                                  TangentKind kind);

}  // namespace wrapgauge
