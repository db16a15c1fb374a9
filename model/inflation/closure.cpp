#include "model/inflation/closure.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

double y_of(const FlatMesh& flat, int vertex) {
  return flat.vertices_m(vertex, 1);
}

// Length of line that a vertex of an ordered line stands for.
double line_share_m(const FlatMesh& flat, const std::vector<int>& line, std::size_t k) {
  const double below = k > 0 ? y_of(flat, line[k]) - y_of(flat, line[k - 1]) : 0.0;
  const double above = k + 1 < line.size() ? y_of(flat, line[k + 1]) - y_of(flat, line[k]) : 0.0;
  return 0.5 * (below + above);
}

}  // namespace

std::vector<Stitch> closure_stitches(const FlatMesh& flat, const std::vector<int>& node_of_vertex,
                                     double stitch_pa) {
  std::vector<Stitch> stitches;
  const std::vector<int>&near = flat.closing_from, &far = flat.closing_to;
  constexpr double kSameM = 1e-7;
  for (std::size_t k = 0; k < far.size(); ++k) {
    const double y = y_of(flat, far[k]);
    if (near.size() < 2 || y < y_of(flat, near.front()) - kSameM || y > y_of(flat, near.back()) + kSameM)
      continue;
    std::size_t above = 1;
    while (above + 1 < near.size() && y_of(flat, near[above]) < y) ++above;
    const double y0 = y_of(flat, near[above - 1]), y1 = y_of(flat, near[above]);
    const double w = std::clamp((y - y0) / (y1 - y0), 0.0, 1.0);
    Stitch stitch;
    stitch.stencil.nodes = {node_of_vertex[far[k]], node_of_vertex[near[above - 1]],
                            node_of_vertex[near[above]]};
    stitch.weights = {1.0, -(1.0 - w), -w};
    stitch.stiffness_n_per_m = stitch_pa * line_share_m(flat, far, k);
    stitches.push_back(stitch);
  }
  return stitches;
}

}  // namespace wrapgauge
