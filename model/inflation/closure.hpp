#pragma once
// The two lines that meet when the layout is closed, stitched: each node of one line is tied to the point of
// the other line at the same y. The stitch is so stiff that it opens by micrometres.

#include <vector>

#include "model/inflation/block_matrix.hpp"
#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

struct Stitch {
  Stencil<3> stencil;       // node on the far line, the two nodes on the near line around it
  Eigen::Vector3d weights;  // 1, -(1-w), -w
  double stiffness_n_per_m = 0.0;
};

// `node_of_vertex`: the sheet node of each flat vertex; `stitch_pa`: force a length of line and of opening.
// Nodes beyond the other line's ends stay free.
std::vector<Stitch> closure_stitches(const FlatMesh& flat, const std::vector<int>& node_of_vertex,
                                     double stitch_pa);

}  // namespace wrapgauge
