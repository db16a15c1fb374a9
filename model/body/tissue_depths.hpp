#pragma once
// Depths of tissue given for the points of a body's mesh, when the body becomes another one.

#include <optional>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// The depth that all points share; none: there are no points, or several depths.
std::optional<double> one_depth_mm(const std::vector<double>& depth_mm);

struct BroughtDepths {
  std::vector<double> depth_mm;  // a point of the new body each, to 0.01 mm
  Length farthest;               // from a point of the new body to the body before
};

// Each point takes the depth of the nearest place of the body before, in proportion between that one's
// points. `depth_mm`: a point of `before` each, which has at least one face. `points_m`: of the new body.
BroughtDepths depths_at_nearest(const std::vector<double>& depth_mm, const TriangleMesh& before,
                                const Points3& points_m);

}  // namespace wrapgauge
