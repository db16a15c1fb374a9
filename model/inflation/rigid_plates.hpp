#pragma once
// Rigid planes that the sheets press on without friction: a table under the skin sheet, a plate over the
// outer sheet. E = 1/2 k A <g>^2 where g < 0, g = height over the plane less the sheet's own thickness, A the
// node's rest area: k is so large that the gap is missed by micrometres, and the force does not depend on A.

#include <vector>

#include "model/inflation/block_matrix.hpp"
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct PlateNode {
  int node = 0;
  std::size_t plate = 0;  // of the setup's
  double stiffness_n_per_m = 0.0;
  double offset_m = 0.0;  // of the sheet's face from the node, which lies in the middle of the skin sheet

  // < 0: it presses.
  double gap_m(const RigidPlate& on, const Vec3& position_m) const {
    return (position_m - on.point_m).dot(on.towards_device) - offset_m;
  }
};

// A node each of the sheet that a plate faces, fused nodes included; straps too. Chambers that are empty have
// both sheets at one height in the model, so that the outer face lies half the skin sheet and the outer sheet
// above its nodes.
std::vector<PlateNode> plate_nodes(const InflationSetup& setup, const SheetMesh& sheet);

// What each plate takes in a shape, N.
std::vector<double> plate_forces_n(const std::vector<RigidPlate>& plates, const std::vector<PlateNode>& nodes,
                                   const Points3& positions_m);

}  // namespace wrapgauge
