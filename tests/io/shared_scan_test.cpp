// Scans of limbs whose clean shape is known, mended and laid over it. The lines printed become the table
// docs/scan-repair.md, see tests/scan_repair.sh.
#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <cstdio>
#include <filesystem>
#include <numbers>

#include "model/body/body_axis.hpp"
#include "model/body/mend.hpp"
#include "model/body/surface_error.hpp"
#include "model/body/vertex_weld.hpp"
#include "model/geometry/nearest_point.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "tests/body/scan_like.hpp"

namespace wrapgauge {
namespace {

const std::filesystem::path kShared = WRAPGAUGE_SHARED_DIR "/data";

Vec3 face_normal(const TriangleMesh& mesh, int face) {
  const Vec3 a = mesh.vertices_m.row(mesh.faces(face, 0)), b = mesh.vertices_m.row(mesh.faces(face, 1)),
             c = mesh.vertices_m.row(mesh.faces(face, 2));
  return (b - a).cross(c - a).normalized();
}

// One step of a rigid motion onto the surface: distances to the planes of the nearest faces, least squares.
// Planes let the body slide along the limb, where nearest points alone would creep. `nearest_face`: a vertex
// each, where to look first.
void step_onto(const TriangleMesh& surface, const NearestPoint& nearest, std::vector<int>& nearest_face,
               Body& body) {
  Points3& points = body.surface.vertices_m;
  const Eigen::RowVector3d middle = points.colwise().mean();
  Eigen::Matrix<double, 6, 6> squares = Eigen::Matrix<double, 6, 6>::Zero();
  Eigen::Matrix<double, 6, 1> right_side = Eigen::Matrix<double, 6, 1>::Zero();
  for (Eigen::Index v = 0; v < points.rows(); v += 3) {
    int& face = nearest_face[static_cast<std::size_t>(v)];
    const SurfacePoint found = nearest.at(points.row(v), face);
    face = found.face;
    const Vec3 normal = face_normal(surface, face), from_middle = (points.row(v) - middle).transpose();
    Eigen::Matrix<double, 6, 1> row;
    row << from_middle.cross(normal), normal;
    squares += row * row.transpose();
    right_side += row * normal.dot(found.point_m - points.row(v).transpose());
  }
  const Eigen::Matrix<double, 6, 1> step = squares.ldlt().solve(right_side);
  const Vec3 turned = step.head<3>();
  const Mat3 turn = Eigen::AngleAxisd(turned.norm(), turned.stableNormalized()).toRotationMatrix();
  points = ((points.rowwise() - middle) * turn.transpose()).rowwise() + (middle + step.tail<3>().transpose());
  body.axis.direction = turn * body.axis.direction;
}

Body laid_over(Body body, const TriangleMesh& surface) {
  const NearestPoint nearest(surface);
  std::vector<int> nearest_face(static_cast<std::size_t>(body.surface.vertices_m.rows()), 0);
  for (int round = 0; round < 15; ++round) step_onto(surface, nearest, nearest_face, body);
  return body;
}

struct ScanCase {
  const char *clean, *scan;  // no scan: one is made of the clean shape
  double noise_mm;
  bool on_table;
};

RawMesh clean_mesh(const ScanCase& scan) {
  auto raw = read_mesh(kShared / "bodies" / scan.clean);
  EXPECT_TRUE(raw.ok());
  return std::move(raw).value();
}

RawMesh scan_mesh(const ScanCase& scan) {
  if (scan.scan) {
    auto raw = read_mesh(kShared / "scans" / scan.scan);
    EXPECT_TRUE(raw.ok()) << raw.problem().message;
    return std::move(raw).value();
  }
  RawMesh raw = clean_mesh(scan);
  weld_vertices(raw.vertices, raw.faces);
  return shapes::scan_of_limb(std::move(raw), scan.noise_mm, scan.on_table);
}

Body clean_body(const ScanCase& scan) {
  const auto checked = check_body(clean_mesh(scan), {scan.clean, LengthUnit::kMillimetre, Vec3(0, 0, 1)});
  EXPECT_TRUE(checked.ok());
  const auto posed = pose_limb({checked->body.surface, checked->body.axis, true}, {DistalEnd::kAsItIs, 0.0});
  return {"", posed->scan.surface, posed->scan.axis, "", {}, {}};
}

// Largest difference, as a share; stations close enough to meet every hole that was filled.
double girth_difference(const Body& mended, const Body& clean) {
  double most = 0.0;
  for (int percent = 10; percent <= 90; ++percent) {
    const Length station = 0.01 * percent * body_length(clean);
    most = std::max(most, std::abs(girth_at(mended, station).girth / girth_at(clean, station).girth - 1.0));
  }
  return most;
}

double figure(const MendedBody& mended, const std::string& name) {
  for (const MendReport& report : mended.reports)
    for (const MendFigure& one : report.figures)
      if (one.name == name) return one.value;
  ADD_FAILURE() << name;
  return 0.0;
}

class SharedScan : public testing::TestWithParam<ScanCase> {};

struct Compared {
  SurfaceError error;
  double girths = 0.0, axis_off_deg = 0.0;
};

Compared compared(const Body& mended, const Body& clean) {
  Body laid = laid_over(mended, clean.surface);
  const double cosine = std::abs(laid.axis.direction.dot(find_axis_direction(clean.surface)));
  laid.axis = clean.axis;
  return {surface_error(laid.surface, clean.surface), girth_difference(laid, clean),
          std::acos(std::min(1.0, cosine)) * 180.0 / std::numbers::pi};
}

void print_row(const ScanCase& scan, const MendedBody& mended, const Compared& difference) {
  const auto of = [&](const char* name) { return figure(mended, name); };
  std::printf(
      "  mended %s (%s), noise %.1f mm, %s: crumbs %.0f, holes %.0f of up to %.0f mm, distance %.2f / %.2f, "
      "girths %.2f, smoothing %.2f, axis %.1f, decimation %.3f / %.3f / %.2f\n",
      scan.clean, scan.scan ? "given" : "made", scan.noise_mm, scan.on_table ? "on a table" : "no table",
      of("pieces_dropped"), of("holes_filled"), of("widest_filled_mm"), difference.error.mean / mm,
      difference.error.percentile_95 / mm, 100.0 * difference.girths, of("girth_change_most_percent"),
      difference.axis_off_deg, of("error_mean_mm"), of("error_percentile_95_mm"), of("error_largest_mm"));
}

TEST_P(SharedScan, MendedAgreesWithItsCleanShape) {
  const ScanCase& scan = GetParam();
  if (!std::filesystem::exists(kShared / "bodies" / scan.clean))
    GTEST_SKIP() << "NOT CHECKED: no " << scan.clean << " in " << kShared
                 << ", so no mended scan was compared with its clean shape";
  const auto mended =
      mend_body(scan_mesh(scan), {"scan", LengthUnit::kMillimetre, std::nullopt}, usual_steps());
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  const Compared difference = compared(mended->checked.body, clean_body(scan));
  print_row(scan, *mended, difference);
  EXPECT_LT(difference.error.mean / mm, 0.3);
  EXPECT_LT(difference.error.percentile_95 / mm, 0.7);
  EXPECT_LT(difference.girths, 0.01);
  // The clean limb's ends are cut square and give its axis; a scan's are ragged, and a calf's shape leads
  // off.
  EXPECT_LT(difference.axis_off_deg, 2.5);
  EXPECT_LT(std::abs(figure(*mended, "girth_change_most_percent")), 0.5);
  EXPECT_EQ(mended->checked.report.open_ends.size(), 2u);
  EXPECT_EQ(figure(*mended, "holes_left"), 0.0);
}

INSTANTIATE_TEST_SUITE_P(Limbs, SharedScan,
                         testing::Values(ScanCase{"mpfb_mA_calf.obj", "scanlike_calf.ply", 0.6, false},
                                         ScanCase{"mpfb_mA_forearm.obj", nullptr, 0.5, true},
                                         ScanCase{"hubmap_VH_M_calf.stl", nullptr, 0.4, false},
                                         ScanCase{"mpfb_mA_thigh.obj", nullptr, 0.6, true}),
                         [](const auto& scan) {
                           const std::string name = scan.param.clean;
                           return name.substr(0, name.find('.'));
                         });

}  // namespace
}  // namespace wrapgauge
