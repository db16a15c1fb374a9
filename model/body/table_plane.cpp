#include <Eigen/Dense>
#include <cmath>
#include <random>

#include "model/body/mend_step.hpp"
#include "model/body/thin_face.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr int kTries =
    1200;  // a plane of a fifth of the area is met with three of its faces in all but 1 in 10^4
constexpr double kOneSide = 0.95;  // of the area off the plane

struct Patches {
  Points3 centre_m;
  Eigen::VectorXd area_m2;
};

struct FlatPart {
  Vec3 point_m = Vec3::Zero();
  Vec3 normal = Vec3::UnitZ();  // towards the limb
  double share = 0.0;           // of the area lies within the tolerance
};

Patches patches_of(const TriangleMesh& mesh) {
  Patches patches{Points3(mesh.faces.rows(), 3), Eigen::VectorXd(mesh.faces.rows())};
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    const Vec3 a = mesh.vertices_m.row(mesh.faces(f, 0)), b = mesh.vertices_m.row(mesh.faces(f, 1)),
               c = mesh.vertices_m.row(mesh.faces(f, 2));
    patches.centre_m.row(f) = (a + b + c) / 3.0;
    patches.area_m2[f] = 0.5 * (b - a).cross(c - a).norm();
  }
  return patches;
}

Eigen::ArrayXd heights(const Patches& patches, const FlatPart& plane) {
  return (patches.centre_m.rowwise() - plane.point_m.transpose()) * plane.normal;
}

double share_near(const Patches& patches, const FlatPart& plane, double tolerance_m) {
  const Eigen::ArrayXd near = (heights(patches, plane).abs() <= tolerance_m).cast<double>();
  return (near * patches.area_m2.array()).sum() / patches.area_m2.sum();
}

// Faces drawn with a chance in proportion to their area, by a generator whose numbers the standard fixes.
class FaceDraw {
 public:
  explicit FaceDraw(const Eigen::VectorXd& area_m2) : sum_(area_m2.size()) {
    double sum = 0.0;
    for (Eigen::Index f = 0; f < area_m2.size(); ++f) sum_[f] = sum += area_m2[f];
  }
  Eigen::Index next() {
    const double wanted = sum_[sum_.size() - 1] * (static_cast<double>(random_()) / 4294967296.0);
    return std::upper_bound(sum_.begin(), sum_.end() - 1, wanted) - sum_.begin();
  }

 private:
  Eigen::VectorXd sum_;
  std::mt19937 random_{20240607};
};

// The plane of least squares through the faces near `plane`.
FlatPart refined(const Patches& patches, FlatPart plane, double tolerance_m) {
  for (int round = 0; round < 5; ++round) {
    const Eigen::VectorXd weight =
        (heights(patches, plane).abs() <= tolerance_m).cast<double>() * patches.area_m2.array();
    plane.point_m = patches.centre_m.transpose() * weight / weight.sum();
    const Points3 moved = patches.centre_m.rowwise() - plane.point_m.transpose();
    const Eigen::SelfAdjointEigenSolver<Mat3> solver(moved.transpose() * weight.asDiagonal() * moved);
    plane.normal = solver.eigenvectors().col(0);
  }
  plane.share = share_near(patches, plane, tolerance_m);
  return plane;
}

FlatPart largest_plane(const Patches& patches, double tolerance_m) {
  FaceDraw draw(patches.area_m2);
  FlatPart best;
  for (int attempt = 0; attempt < kTries; ++attempt) {
    const Vec3 a = patches.centre_m.row(draw.next()), b = patches.centre_m.row(draw.next()),
               c = patches.centre_m.row(draw.next());
    const Vec3 cross = (b - a).cross(c - a);
    if (cross.norm() <= 1e-3 * (b - a).norm() * (c - a).norm()) continue;
    FlatPart plane{a, cross.normalized(), 0.0};
    plane.share = share_near(patches, plane, tolerance_m);
    if (plane.share > best.share) best = plane;
  }
  return best.share > 0.0 ? refined(patches, best, tolerance_m) : best;
}

// Turns the normal to the side with more area; returns that side's share of what is off the plane.
double turn_to_limb(const Patches& patches, FlatPart& plane, double tolerance_m) {
  const Eigen::ArrayXd height = heights(patches, plane), area = patches.area_m2.array();
  const double above = ((height > tolerance_m).cast<double>() * area).sum();
  const double below = ((height < -tolerance_m).cast<double>() * area).sum();
  if (below > above) plane.normal = -plane.normal;
  return std::max(above, below) / std::max(above + below, 1e-12);
}

// Root mean square of the places of the faces with `weight` along `direction`, about their mean.
double spread_m(const Patches& patches, const Eigen::VectorXd& weight, const Vec3& direction) {
  const Eigen::ArrayXd along = patches.centre_m * direction;
  const double mean = (along * weight.array()).sum() / weight.sum();
  return std::sqrt(((along - mean).square() * weight.array()).sum() / weight.sum());
}

// A table reaches out from under the limb, also in the direction in which less of it was scanned. The flat
// side or flat end of a limb does not: it is narrower than the limb.
bool wider_than_rest(const Patches& patches, const FlatPart& plane, double tolerance_m) {
  const Eigen::ArrayXd on = (heights(patches, plane).abs() <= tolerance_m).cast<double>();
  const Eigen::VectorXd table = on * patches.area_m2.array(), rest = (1.0 - on) * patches.area_m2.array();
  if (!(rest.sum() > 0.0)) return true;
  const Points3 moved = patches.centre_m.rowwise() - plane.point_m.transpose();
  const Eigen::SelfAdjointEigenSolver<Mat3> solver(moved.transpose() * table.asDiagonal() * moved);
  const Vec3 narrow = solver.eigenvectors().col(1);  // col(0) is across the plane
  return spread_m(patches, table, narrow) > spread_m(patches, rest, narrow);
}

MendReport none_found(const FlatPart& plane) {
  return {MendKind::kDropTable,
          Phrase::worded(
              "No table was found: the largest flat part has %1 of the area and is too small, has parts "
              "of the scan on both sides, or does not reach out from under the limb.",
              {percent_of(plane.share)}),
          {{"largest_plane_share_percent", 100.0 * plane.share}, {"faces_dropped", 0.0}}};
}

}  // namespace

Result<Mended> drop_table(const Scan& scan, const DropTable& options) {
  const Patches patches = patches_of(scan.surface);
  FlatPart plane = largest_plane(patches, options.tolerance.si());
  const double one_side = turn_to_limb(patches, plane, options.tolerance.si());
  if (plane.share < options.least_share || one_side < kOneSide ||
      !wider_than_rest(patches, plane, options.tolerance.si()))
    return Mended{scan, none_found(plane)};
  const Eigen::ArrayXd height = heights(patches, plane);
  std::vector<char> keep(static_cast<std::size_t>(height.size()));
  for (Eigen::Index f = 0; f < height.size(); ++f)
    keep[static_cast<std::size_t>(f)] = height[f] > options.tolerance.si();
  TriangleMesh rest = scan.surface;
  keep_faces(rest.faces, keep);
  if (rest.faces.rows() == 0)
    return bad_input(Phrase::worded("The scan is a flat plane and nothing else; there is no limb in it."));
  const auto dropped = static_cast<double>(scan.surface.faces.rows() - rest.faces.rows());
  MendReport report{
      MendKind::kDropTable,
      Phrase::worded(
          "Dropped a table: a plane with %1 of the area, %2 faces within %3 of it or "
          "beyond it.",
          {percent_of(plane.share), figures_of(fixed_text(dropped, 0)), millimetres_of(options.tolerance)}),
      {{"largest_plane_share_percent", 100.0 * plane.share}, {"faces_dropped", dropped}}};
  return Mended{with_surface(scan, std::move(rest)), std::move(report)};
}

}  // namespace wrapgauge
