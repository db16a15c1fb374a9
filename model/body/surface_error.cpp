#include "model/body/surface_error.hpp"

#include <algorithm>
#include <numeric>
#include <vector>

#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {

SurfaceError surface_error(const TriangleMesh& from, const TriangleMesh& to) {
  const NearestPoint nearest(to);
  std::vector<double> distance_m;
  int likely = 0;
  const auto sample = [&](const Vec3& point) {
    const SurfacePoint found = nearest.at(point, likely);
    likely = found.face;
    distance_m.push_back(found.distance_m);
  };
  for (Eigen::Index f = 0; f < from.faces.rows(); ++f) {
    Vec3 corner[3], centre = Vec3::Zero();
    for (int k = 0; k < 3; ++k) {
      corner[k] = from.vertices_m.row(from.faces(f, k));
      centre += corner[k] / 3.0;
    }
    // A corner and an edge are met from every face round them: all points count about alike.
    for (int k = 0; k < 3; ++k) sample(0.5 * (corner[k] + corner[(k + 1) % 3]));
    for (const Vec3& point : corner) sample(point);
    sample(centre);
  }
  if (distance_m.empty()) return {};
  std::sort(distance_m.begin(), distance_m.end());
  const double sum = std::accumulate(distance_m.begin(), distance_m.end(), 0.0);
  const auto at = static_cast<std::size_t>(0.95 * static_cast<double>(distance_m.size() - 1));
  return {Length(sum / static_cast<double>(distance_m.size())), Length(distance_m[at]),
          Length(distance_m.back())};
}

}  // namespace wrapgauge
