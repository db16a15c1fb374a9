#include "model/body/tissue_depths.hpp"

#include <algorithm>
#include <cmath>

#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {

std::optional<double> one_depth_mm(const std::vector<double>& depth_mm) {
  const auto differs = [&](double depth) { return depth != depth_mm.front(); };
  if (depth_mm.empty() || std::any_of(depth_mm.begin(), depth_mm.end(), differs)) return std::nullopt;
  return depth_mm.front();
}

BroughtDepths depths_at_nearest(const std::vector<double>& depth_mm, const TriangleMesh& before,
                                const Points3& points_m) {
  constexpr double kSteps_per_mm = 100.0;  // finer than any depth is known
  const NearestPoint nearest(before);
  BroughtDepths brought;
  double farthest_m = 0.0;
  for (Eigen::Index v = 0; v < points_m.rows(); ++v) {
    const SurfacePoint at = nearest.at(points_m.row(v));
    double depth = 0.0;
    for (int corner = 0; corner < 3; ++corner)
      depth += at.barycentric[corner] * depth_mm[static_cast<std::size_t>(before.faces(at.face, corner))];
    brought.depth_mm.push_back(std::round(kSteps_per_mm * depth) / kSteps_per_mm);
    farthest_m = std::max(farthest_m, at.distance_m);
  }
  brought.farthest = Length(farthest_m);
  return brought;
}

}  // namespace wrapgauge
