#pragma once
// The volume enclosed between the sheets of one chamber group, with its derivatives.
// V = 1/6 sum x1 . (x2 x x3) over outer triangles minus skin triangles: a closed surface, so the origin drops
// out.

#include "model/inflation/sheet_mesh.hpp"

namespace wrapgauge {

// Six times one triangle's share: value, gradients at its corners, and the off-diagonal Hessian blocks.
struct VolumeShare {
  double value;                    // m3
  Vec3 gradient[3];                // m2
  Mat3 block10, block20, block21;  // d2V / dx_i dx_j, m; diagonal blocks are zero
};

VolumeShare volume_share(const Vec3& x0, const Vec3& x1, const Vec3& x2);

double cavity_volume_m3(const SheetMesh& sheet, GroupId group, const Points3& positions_m);

// Between the sheets over one open flat triangle, ruled straight from one sheet to the other. The prisms of a
// group add up to its volume, and the sheets' own thickness plays no part: 0 where their inner faces touch.
double prism_volume_m3(const FlatMesh& flat, Eigen::Index t, const SheetMesh& sheet,
                       const Points3& positions_m);

// The same added up.
struct PrismVolumes {
  std::vector<double> group_m3, chamber_m3;  // a group, a chamber each; channels count for their group alone
};
PrismVolumes volumes_by_prisms(const FlatMesh& flat, const SheetMesh& sheet, const Points3& positions_m);

}  // namespace wrapgauge
