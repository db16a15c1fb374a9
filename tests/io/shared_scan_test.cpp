#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <filesystem>

#include "model/body/mend.hpp"
#include "model/body/surface_error.hpp"
#include "model/geometry/nearest_point.hpp"
#include "model/io/mesh_reader.hpp"

namespace wrapgauge {
namespace {

const std::filesystem::path kShared = WRAPGAUGE_SHARED_DIR "/data";

// Rigid motion that brings the points onto the surface: nearest points and a best fit, again and again.
Points3 fitted(Points3 points, const TriangleMesh& surface) {
  const NearestPoint nearest(surface);
  for (int round = 0; round < 40; ++round) {
    Points3 goal(points.rows(), 3);
    for (Eigen::Index v = 0; v < points.rows(); ++v) goal.row(v) = nearest.at(points.row(v)).point_m;
    const Eigen::RowVector3d from = points.colwise().mean(), to = goal.colwise().mean();
    const Mat3 spread = (points.rowwise() - from).transpose() * (goal.rowwise() - to);
    const Eigen::JacobiSVD<Mat3> svd(spread, Eigen::ComputeFullU | Eigen::ComputeFullV);
    Mat3 turn = svd.matrixV() * svd.matrixU().transpose();
    if (turn.determinant() < 0.0)
      turn = svd.matrixV() * Vec3(1, 1, -1).asDiagonal() * svd.matrixU().transpose();
    points = ((points.rowwise() - from) * turn.transpose()).rowwise() + to;
  }
  return points;
}

Scan clean_calf() {
  const auto raw = read_mesh(kShared / "bodies/mpfb_mA_calf.obj");
  EXPECT_TRUE(raw.ok());
  const auto body = check_body(*raw, {"calf", LengthUnit::kMillimetre, Vec3(Vec3::UnitZ())});
  EXPECT_TRUE(body.ok());
  const auto posed = pose_limb({body->body.surface, body->body.axis, true}, {DistalEnd::kAsItIs, 0.0});
  return posed->scan;
}

// A synthetic scan of a calf whose clean shape is known: 0.6 mm noise, holes, ragged ends, 25 crumbs, posed
// at random.
TEST(SharedScan, TheMendedCalfAgreesWithTheCleanOne) {
  if (!std::filesystem::exists(kShared / "scans/scanlike_calf.ply"))
    GTEST_SKIP() << "no scans in " << kShared << ": the mended scan was NOT compared with its clean shape";
  const auto raw = read_mesh(kShared / "scans/scanlike_calf.ply");
  ASSERT_TRUE(raw.ok()) << raw.problem().message;
  const auto mended = mend_body(*raw, {"scan", LengthUnit::kMillimetre, std::nullopt}, usual_steps());
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  const Scan clean = clean_calf();
  Body scanned = mended->checked.body;
  scanned.surface.vertices_m = fitted(scanned.surface.vertices_m, clean.surface);
  const SurfaceError error = surface_error(scanned.surface, clean.surface);
  RecordProperty("mean_mm", std::to_string(error.mean / mm));
  RecordProperty("percentile_95_mm", std::to_string(error.percentile_95 / mm));
  EXPECT_LT(error.mean / mm, 0.4);
  EXPECT_LT(error.percentile_95 / mm, 1.0);
  const Body reference{"", clean.surface, clean.axis, "", {}, {}};
  scanned.axis = clean.axis;
  for (double share = 0.1; share < 0.95; share += 0.1) {
    const Length station = share * body_length(reference);
    EXPECT_NEAR(girth_at(scanned, station).girth / girth_at(reference, station).girth, 1.0, 0.01)
        << station / mm;
  }
}

}  // namespace
}  // namespace wrapgauge
