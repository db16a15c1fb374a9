#include "model/wrap/tissue_bed.hpp"

#include <algorithm>

#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

Eigen::VectorXd depth_from_map(const Body& body, const Points3& worn_m) {
  const NearestPoint nearest(body.surface);
  Eigen::VectorXd depth = Eigen::VectorXd::Zero(worn_m.rows());
  for (Eigen::Index v = 0; v < worn_m.rows(); ++v) {
    const SurfacePoint found = nearest.at(worn_m.row(v));
    for (int corner = 0; corner < 3; ++corner)
      depth[v] += found.barycentric[corner] * body.tissue_depth_m[body.surface.faces(found.face, corner)];
  }
  return depth;
}

// 1 within the radius, 0 beyond 1.5 radii, smooth between.
double share_of_site(double distance_m, double radius_m) {
  const double fade = std::clamp(3.0 - 2.0 * distance_m / radius_m, 0.0, 1.0);
  return fade * fade * (3.0 - 2.0 * fade);
}

void blend_in(const BonySite& site, const Points3& worn_m, Eigen::VectorXd& depth_m) {
  if (site.radius.si() <= 0.0) return;
  for (Eigen::Index v = 0; v < worn_m.rows(); ++v) {
    const double distance = (worn_m.row(v).transpose() - site.point_m).norm();
    const double share = share_of_site(distance, site.radius.si());
    depth_m[v] = share * site.tissue_depth.si() + (1.0 - share) * depth_m[v];
  }
}

// A region's factor stands on the whole body's own.
void paint(const SkinRegion& region, const Axis& axis, const Points3& worn_m, Eigen::VectorXd& depth_m,
           Eigen::VectorXd& factor) {
  for (Eigen::Index v = 0; v < worn_m.rows(); ++v) {
    const double share = share_of_region(region, axis, worn_m.row(v));
    if (share == 0.0) continue;
    if (const auto depth = tissue_depth_at(region, worn_m.row(v)))
      depth_m[v] += share * (depth->si() - depth_m[v]);
    if (const auto own = stiffness_factor_at(region, worn_m.row(v))) factor[v] *= 1.0 + share * (*own - 1.0);
  }
}

}  // namespace

Result<TissueBed> tissue_bed(const Body& body, const TissueSite& tissue, const TissueChanges& changes,
                             const Points3& worn_m) {
  TissueBed bed;
  bed.depth_m = body.tissue_depth_m.size() > 0 ? depth_from_map(body, worn_m)
                                               : Eigen::VectorXd::Constant(worn_m.rows(), tissue.depth.si());
  if (changes.bone_anywhere) bed.depth_m = bed.depth_m.cwiseMin(changes.bone_anywhere->si());
  bed.stiffness_factor = Eigen::VectorXd::Constant(worn_m.rows(), changes.stiffness_factor);
  for (const SkinRegion& region : changes.regions)
    paint(region, body.axis, worn_m, bed.depth_m, bed.stiffness_factor);
  for (const BonySite& site : changes.sites) blend_in(site, worn_m, bed.depth_m);
  bed.foundation_pa_per_m.resize(worn_m.rows());
  for (Eigen::Index v = 0; v < worn_m.rows(); ++v) {
    const auto modulus =
        foundation_modulus(tissue.young * bed.stiffness_factor[v], tissue.poisson, Length(bed.depth_m[v]));
    if (!modulus) return modulus.problem();
    bed.foundation_pa_per_m[v] = modulus->si();
  }
  return bed;
}

}  // namespace wrapgauge
