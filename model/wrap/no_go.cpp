#include "model/wrap/no_go.hpp"

#include <Eigen/Geometry>
#include <array>

#include "model/core/number_text.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

struct Covered {
  double area_m2 = 0.0;
  Vec3 first_m = Vec3::Zero();
};

// Corners, edge middles and the centre of a triangle.
std::array<Vec3, 7> samples_of(const Vec3& a, const Vec3& b, const Vec3& c) {
  return {a, b, c, 0.5 * (a + b), 0.5 * (b + c), 0.5 * (c + a), (a + b + c) / 3.0};
}

// Each triangle counts with the share of its samples that lie on the region.
Covered covered(const SkinRegion& region, const Axis& axis, const FlatMesh& flat, const Points3& worn_m) {
  Covered result;
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const Vec3 a = worn_m.row(flat.triangles(t, 0)), b = worn_m.row(flat.triangles(t, 1)),
               c = worn_m.row(flat.triangles(t, 2));
    const auto samples = samples_of(a, b, c);
    int on = 0;
    for (const Vec3& sample : samples) {
      if (distance_outside(region, axis, sample) > Length()) continue;
      if (result.area_m2 == 0.0 && on == 0) result.first_m = sample;
      ++on;
    }
    result.area_m2 += 0.5 * (b - a).cross(c - a).norm() * on / static_cast<double>(samples.size());
  }
  if (result.area_m2 > 0.0) return result;
  // A place smaller than a triangle may lie between its samples.
  if (const auto* place = std::get_if<NearPoint>(&region.place)) {
    const SurfacePoint nearest = NearestPoint({worn_m, flat.triangles}).at(place->point_m);
    if (nearest.distance_m <= place->radius.si()) return {1e-12, nearest.point_m};
  }
  return result;
}

}  // namespace

std::optional<Problem> covered_no_go(const std::vector<SkinRegion>& regions, const Axis& axis,
                                     const FlatMesh& flat, const Points3& worn_m) {
  for (const SkinRegion& region : regions) {
    if (!region.no_go) continue;
    const Covered found = covered(region, axis, flat, worn_m);
    if (!(found.area_m2 > 0.0)) continue;
    const auto mm_of = [&](int k) { return figures_of(fixed_text(1e3 * found.first_m[k], 0)); };
    return bad_input(
        Phrase::worded("The layout lies on '%1', where nothing may lie (%2 cm² of it, first at (%3, %4, %5) "
                       "mm): move or turn "
                       "it, or make it smaller; change the region only if it is wrong.",
                       {name_of(region.name), figures_of(fixed_text(std::max(0.1, 1e4 * found.area_m2), 1)),
                        mm_of(0), mm_of(1), mm_of(2)}));
  }
  return std::nullopt;
}

}  // namespace wrapgauge
