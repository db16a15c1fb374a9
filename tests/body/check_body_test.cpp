#include "model/body/check_body.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <numbers>
#include <string>

#include "scan_like.hpp"
#include "shapes.hpp"

namespace wrapgauge {
namespace {

int repaired(const CheckedBody& body, RepairKind kind) {
  for (const Repair& repair : body.report.repairs)
    if (repair.what == kind) return repair.count;
  return 0;
}

std::string all_notes(const CheckedBody& body) {
  std::string text;
  for (const Phrase& note : body.report.notes) text += english(note) + "\n";
  return text;
}

CheckedBody must_check(const RawMesh& raw, const BodyOptions& options = {}) {
  auto result = check_body(raw, options);
  if (!result) throw std::runtime_error(result.problem().message);
  return std::move(result).value();
}

std::string refusal(const RawMesh& raw, const BodyOptions& options = {}) {
  const auto result = check_body(raw, options);
  return result ? "" : result.problem().message;
}

// Six times the enclosed volume, ends closed at their centres on the axis; positive when normals point
// outward.
double outwardness(const Body& body) {
  double sum = 0.0;
  for (int f = 0; f < body.surface.faces.rows(); ++f) {
    const Vec3 a = body.surface.vertices_m.row(body.surface.faces(f, 0)),
               b = body.surface.vertices_m.row(body.surface.faces(f, 1)),
               c = body.surface.vertices_m.row(body.surface.faces(f, 2));
    const Vec3 centre = (a + b + c) / 3.0;
    const Vec3 from_axis = centre - body.axis.origin_m;
    sum += (b - a).cross(c - a).dot(from_axis - from_axis.dot(body.axis.direction) * body.axis.direction);
  }
  return sum;
}

void expect_clean_limb(const CheckedBody& body) {
  EXPECT_EQ(body.body.surface.faces.rows(), 2 * 48 * 60);
  EXPECT_EQ(body.body.surface.vertices_m.rows(), 48 * 61);
  EXPECT_GT(outwardness(body.body), 0.0);
  ASSERT_EQ(body.report.open_ends.size(), 2u);
  EXPECT_NEAR(body.report.girths[5].girth / mm, 96 * 35.0 * std::sin(std::numbers::pi / 48), 1e-6);
}

TEST(CheckBody, LeavesACleanLimbAsItIs) {
  const CheckedBody body = must_check(shapes::limb());
  expect_clean_limb(body);
  EXPECT_TRUE(body.report.repairs.empty());
  EXPECT_NEAR(body.report.length / mm, 240.0, 1e-9);
  EXPECT_NEAR(body.report.width_most / mm, 80.0, 0.2);
  EXPECT_NEAR(body.body.axis.direction.z(), 1.0, 1e-12);
  EXPECT_NEAR(body.body.axis.origin_m.norm(), 0.0, 1e-9);
  EXPECT_EQ(body.report.open_ends[0].kind, OpenEndKind::kDistal);
  EXPECT_NEAR(body.report.open_ends[0].length / mm, 96 * 30.0 * std::sin(std::numbers::pi / 48), 1e-9);
  EXPECT_EQ(body.report.open_ends[1].kind, OpenEndKind::kProximal);
}

TEST(CheckBody, WeldsASoupIntoTheSameBody) {
  const CheckedBody body = must_check(shapes::unwelded(shapes::limb()));
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kWelded), 3 * 2 * 48 * 60 - 48 * 61);
}

TEST(CheckBody, WeldsCornersThatDifferByRounding) {
  RawMesh soup = shapes::unwelded(shapes::limb());
  for (int v = 0; v < soup.vertices.rows(); ++v)
    soup.vertices(v, v % 3) += 1e-5 * ((v * 7919) % 11 - 5) / 5.0;
  const CheckedBody body = must_check(soup);
  EXPECT_EQ(body.body.surface.vertices_m.rows(), 48 * 61);
}

TEST(CheckBody, AStrayVertexIsNamedWhetherOrNotTheSizeIsStillALimbs) {
  RawMesh raw = shapes::limb();
  raw.vertices.row(1234) << 1e5, 0.0, 0.0;
  EXPECT_NE(refusal(raw).find("Vertex 1235, at (100000, 0, 0), lies"), std::string::npos) << refusal(raw);
  raw.vertices.row(1234) << 900.0, 0.0, 100.0;
  EXPECT_NE(all_notes(must_check(raw)).find("Vertex 1235, at (900, 0, 100)"), std::string::npos);
  EXPECT_EQ(all_notes(must_check(shapes::limb())).find("Vertex"), std::string::npos);
}

TEST(CheckBody, ATableTakenForTheBodyIsNamedAsOne) {
  RawMesh raw = shapes::limb();
  shapes::add_table(raw, 6.0, 0.0, 20.0);
  EXPECT_NE(refusal(raw).find("if it is a table under a limb, drop it with 'wrapgauge body repair'"),
            std::string::npos)
      << refusal(raw);
}

TEST(CheckBody, AnAxisLiesAcrossEndsThatAreCutSquare) {
  // Bulged to one side, so that its shape alone leads the axis astray.
  RawMesh raw = shapes::limb(30.0, 45.0, 120.0);
  for (Eigen::Index v = 0; v < raw.vertices.rows(); ++v)
    if (raw.vertices(v, 0) > 0.0) raw.vertices(v, 0) *= 1.0 + 0.008 * raw.vertices(v, 2);
  const CheckedBody square = must_check(raw);
  EXPECT_NEAR(square.body.axis.direction.z(), 1.0, 1e-9);
  // Cut askew by 6 degrees at one end the edges say nothing, and the shape leads off.
  for (Eigen::Index v = 0; v < raw.vertices.rows(); ++v)
    if (raw.vertices(v, 2) > 119.0) raw.vertices(v, 2) += 0.105 * raw.vertices(v, 0);
  EXPECT_LT(must_check(raw).body.axis.direction.z(), std::cos(1.0 * std::numbers::pi / 180.0));
}

TEST(CheckBody, ABentLimbIsSaidToBeBentAndAStraightOneIsNot) {
  RawMesh raw = shapes::limb();
  EXPECT_EQ(all_notes(must_check(raw)).find("bent"), std::string::npos);
  for (Eigen::Index v = 0; v < raw.vertices.rows(); ++v)
    raw.vertices(v, 0) += 0.7 * std::max(0.0, raw.vertices(v, 2) - 120.0);  // 35 degrees half way
  const std::string notes = all_notes(must_check(raw, {"", {}, Vec3(0.3, 0.0, 1.0)}));
  EXPECT_NE(notes.find("its two halves run 3"), std::string::npos) << notes;
}

TEST(CheckBody, TurnsEveryFaceOutward) {
  RawMesh raw = shapes::limb();
  for (int f = 0; f < raw.faces.rows(); ++f) std::swap(raw.faces(f, 0), raw.faces(f, 1));
  CheckedBody body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kTurned), 2 * 48 * 60);
  for (int f = 0; f < 1000; ++f) std::swap(raw.faces(f, 0), raw.faces(f, 1));
  body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kTurned), 2 * 48 * 60 - 1000);
}

TEST(CheckBody, DropsFacesThatAreThereTwice) {
  RawMesh raw = shapes::limb();
  for (int f = 0; f < 10; ++f) shapes::append_face(raw, raw.faces(f, 2), raw.faces(f, 1), raw.faces(f, 0));
  const CheckedBody body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kDoubled), 10);
}

TEST(CheckBody, DropsFacesWithoutArea) {
  RawMesh raw = shapes::limb();
  shapes::append_face(raw, 5, 5, 77);
  shapes::append_face(raw, 9, 9, 9);
  const CheckedBody body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kNoArea), 2);
}

TEST(CheckBody, MendsAFaceWithoutHeightAndOpensNoSlit) {
  // A vertex in the middle of an edge of face 100 only: the face between that edge and its halves has no
  // height.
  RawMesh raw = shapes::limb();
  const int a = raw.faces(100, 0), b = raw.faces(100, 1), c = raw.faces(100, 2);
  const Vec3 middle = 0.5 * (raw.vertices.row(a) + raw.vertices.row(b));
  const int m = shapes::append_vertex(raw, middle.x(), middle.y(), middle.z());
  raw.faces.row(100) << a, m, c;
  shapes::append_face(raw, m, b, c);
  shapes::append_face(raw, a, b, m);
  const CheckedBody body = must_check(raw);
  EXPECT_EQ(repaired(body, RepairKind::kNoArea), 1);
  EXPECT_EQ(body.report.open_ends.size(), 2u);
  EXPECT_EQ(body.body.surface.vertices_m.rows(), 48 * 61 + 1);
  EXPECT_EQ(body.body.surface.faces.rows(), 2 * 48 * 60 + 2);
}

TEST(CheckBody, CutsOffAFin) {
  RawMesh raw = shapes::limb();
  const int tip = shapes::append_vertex(raw, 80, 0, 100);
  shapes::append_face(raw, raw.faces(500, 0), raw.faces(500, 1), tip);
  const CheckedBody body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kFin), 1);
}

TEST(CheckBody, RefusesAnInnerWallAndNamesItsEdge) {
  // Two limbs of equal weight grown together along one edge of each.
  RawMesh raw = shapes::limb();
  RawMesh other = shapes::limb();
  const int a = raw.faces(600, 0), b = raw.faces(600, 1);
  const int shift = static_cast<int>(raw.vertices.rows());
  shapes::append_mesh(raw, other, 120.0);
  for (int i = 0; i < raw.faces.size(); ++i) {
    int& v = raw.faces.data()[i];
    if (v == shift + a) v = a;
    if (v == shift + b) v = b;
  }
  const std::string message = refusal(raw);
  EXPECT_NE(message.find("belongs to 4 faces"), std::string::npos) << message;
  EXPECT_NE(message.find("vertex " + std::to_string(std::min(a, b) + 1)), std::string::npos) << message;
}

TEST(CheckBody, RefusesASurfaceWithOneSide) {
  // A twisted ring of squares, each cut in two.
  RawMesh ring;
  const int count = 40;
  ring.vertices.resize(2 * count, 3);
  for (int i = 0; i < count; ++i) {
    const double turn = 2 * std::numbers::pi * i / count, half = turn / 2;
    for (int side = 0; side < 2; ++side) {
      const double w = side == 0 ? -30 : 30, r = 100 + w * std::cos(half);
      ring.vertices.row(2 * i + side) << r * std::cos(turn), r * std::sin(turn), w * std::sin(half);
    }
  }
  for (int i = 0; i < count; ++i) {
    const int a = 2 * i, b = a + 1, c = i + 1 < count ? a + 2 : 1, d = i + 1 < count ? a + 3 : 0;
    shapes::append_face(ring, a, b, d);
    shapes::append_face(ring, a, d, c);
  }
  EXPECT_NE(refusal(ring).find("only one side"), std::string::npos);
}

TEST(CheckBody, KeepsTheLargestPiece) {
  RawMesh raw = shapes::limb(10, 12, 150, 24, 30);
  shapes::append_mesh(raw, shapes::limb(), 200.0);
  const CheckedBody body = must_check(raw);
  expect_clean_limb(body);
  EXPECT_EQ(repaired(body, RepairKind::kOtherPieces), 2 * 24 * 30);
}

TEST(CheckBody, SplitsAVertexWhereTwoPartsOnlyTouch) {
  RawMesh raw = shapes::limb();
  // A ring vertex keeps an upper and a lower fan that nothing joins: the faces on both sides of it are left
  // out.
  const int v = 30 * 48 + 7;
  Triangles kept(0, 3);
  int dropped = 0;
  for (int f = 0; f < raw.faces.rows(); ++f) {
    const bool beside = (raw.faces.row(f).array() == v).any() && (raw.faces.row(f).array() == v - 1).any();
    const bool other = (raw.faces.row(f).array() == v).any() && (raw.faces.row(f).array() == v + 1).any();
    if (beside || other) {
      ++dropped;
      continue;
    }
    kept.conservativeResize(kept.rows() + 1, 3);
    kept.bottomRows(1) = raw.faces.row(f);
  }
  ASSERT_EQ(dropped, 4);
  raw.faces = kept;
  const CheckedBody body = must_check(raw);
  EXPECT_EQ(repaired(body, RepairKind::kSplitVertices), 1);
  EXPECT_EQ(body.body.surface.vertices_m.rows(), 48 * 61 + 1);
}

TEST(CheckBody, ReportsAHoleAndDoesNotShrinkTheGirthSilently) {
  RawMesh raw = shapes::limb();
  Triangles kept(0, 3);
  for (int f = 0; f < raw.faces.rows(); ++f) {
    const int ring = raw.faces(f, 0) / 48, place = raw.faces(f, 0) % 48;
    if (ring >= 28 && ring < 32 && place >= 10 && place < 14) continue;
    kept.conservativeResize(kept.rows() + 1, 3);
    kept.bottomRows(1) = raw.faces.row(f);
  }
  raw.faces = kept;
  const CheckedBody body = must_check(raw);
  ASSERT_EQ(body.report.open_ends.size(), 3u);
  EXPECT_EQ(body.report.open_ends[2].kind, OpenEndKind::kHole);
  const Girth& girth = body.report.girths[5];
  EXPECT_EQ(girth.kind, SectionKind::kOpen);
  const double whole = 96 * 35.0 * std::sin(std::numbers::pi / 48);
  EXPECT_GT(girth.bridged / mm, 15.0);
  EXPECT_LT(girth.girth / mm, whole);
  EXPECT_GT(girth.girth / mm, whole - 1.0);
  EXPECT_NE(all_notes(body).find("true girth is larger"), std::string::npos);
}

TEST(CheckBody, ReportsASurfaceThatPassesThroughItself) {
  RawMesh raw = shapes::limb();
  raw.vertices.row(30 * 48 + 5) << -60, -10, 120;  // one vertex pulled through the opposite wall
  const CheckedBody body = must_check(raw);
  EXPECT_GT(body.report.self_crossings, 0);
  EXPECT_NE(all_notes(body).find("passes through itself"), std::string::npos);
}

TEST(CheckBody, RefusesWhatIsNoLimb) {
  RawMesh flat = shapes::limb();
  flat.vertices.col(1).setZero();
  EXPECT_NE(refusal(flat).find("flat"), std::string::npos);
  RawMesh triangle;
  triangle.vertices.resize(3, 3);
  triangle.vertices << 0, 0, 0, 100, 0, 0, 0, 100, 0;
  triangle.faces.resize(1, 3);
  triangle.faces << 0, 1, 2;
  EXPECT_NE(refusal(triangle).find("1 face"), std::string::npos);
  triangle.faces << 0, 0, 0;
  EXPECT_NE(refusal(triangle).find("no face with any area"), std::string::npos);
  EXPECT_FALSE(refusal(RawMesh{}).empty());
  BodyOptions options;
  options.axis_direction = Vec3::Zero();
  EXPECT_NE(refusal(shapes::limb(), options).find("axis"), std::string::npos);
}

TEST(CheckBody, RefusesIndicesAndNumbersThatAreNone) {
  RawMesh raw = shapes::limb();
  raw.faces(3, 1) = 1 << 20;
  EXPECT_FALSE(refusal(raw).empty());
  raw = shapes::limb();
  raw.vertices(17, 2) = std::nan("");
  EXPECT_FALSE(refusal(raw).empty());
}

TEST(CheckBody, FindsTheAxisOfATubeWiderThanLong) {
  RawMesh raw = shapes::limb(60, 61, 70);
  const Eigen::AngleAxisd turn(0.7, Vec3(1, 2, 0.5).normalized());
  raw.vertices = (raw.vertices * turn.toRotationMatrix().transpose()).eval();
  raw.vertices.rowwise() += Eigen::RowVector3d(500, -300, 200);
  const CheckedBody body = must_check(raw, {"", LengthUnit::kMillimetre, std::nullopt});
  EXPECT_NEAR(body.body.axis.direction.dot(turn * Vec3::UnitZ()), 1.0, 1e-9);
  EXPECT_NEAR(body.report.length / mm, 70.0, 1e-6);
}

TEST(CheckBody, PutsStationZeroAtTheDistalMostVertex) {
  RawMesh raw = shapes::limb();
  raw.vertices.rowwise() += Eigen::RowVector3d(10, 20, 1000);
  CheckedBody body = must_check(raw);
  EXPECT_NEAR((body.body.axis.origin_m - Vec3(0.010, 0.020, 1.0)).norm(), 0.0, 1e-9);
  BodyOptions options;
  options.axis_direction = Vec3(0, 0, -3);
  body = must_check(raw, options);
  EXPECT_NEAR((body.body.axis.origin_m - Vec3(0.010, 0.020, 1.24)).norm(), 0.0, 1e-9);
  EXPECT_EQ(body.body.axis.direction, Vec3(0, 0, -1));
  EXPECT_NEAR(girth_at(body.body, 240.0 * mm * 0.999999).girth / mm,
              96 * 30.0 * std::sin(std::numbers::pi / 48), 1e-3);
}

TEST(CheckBody, SaysWhenTheAxisMayPointTheWrongWay) {
  EXPECT_NE(all_notes(must_check(shapes::limb(40, 30))).find("wrong way"), std::string::npos);
  EXPECT_EQ(all_notes(must_check(shapes::limb())).find("wrong way"), std::string::npos);
}

TEST(CheckBody, GivesTheSameBodyForAnyOrderOfFaces) {
  RawMesh raw = shapes::limb();
  const CheckedBody straight = must_check(raw);
  raw.faces = raw.faces.colwise().reverse().eval();
  const CheckedBody reversed = must_check(raw);
  for (std::size_t i = 0; i < straight.report.girths.size(); ++i)
    EXPECT_NEAR(straight.report.girths[i].girth / mm, reversed.report.girths[i].girth / mm, 1e-9);
  EXPECT_NEAR((straight.body.axis.origin_m - reversed.body.axis.origin_m).norm(), 0.0, 1e-12);
}

}  // namespace
}  // namespace wrapgauge
