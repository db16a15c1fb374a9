#include "model/body/rim_trim.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "model/body/boundary_loop.hpp"
#include "model/body/mend.hpp"
#include "tests/body/scan_like.hpp"

namespace wrapgauge {
namespace {

void drop_faces(RawMesh& mesh, const std::vector<int>& rows) {
  Triangles kept(mesh.faces.rows() - static_cast<Eigen::Index>(rows.size()), 3);
  Eigen::Index next = 0;
  for (int f = 0; f < mesh.faces.rows(); ++f)
    if (std::find(rows.begin(), rows.end(), f) == rows.end()) kept.row(next++) = mesh.faces.row(f);
  mesh.faces = kept;
}

TEST(RimTrim, LeavesAWholeLimbAndItsEndsAlone) {
  RawMesh mesh = shapes::egg_limb();
  const Triangles before = mesh.faces;
  EXPECT_EQ(trim_rims(mesh.faces), 0);
  EXPECT_EQ(mesh.faces, before);
}

TEST(RimTrim, TakesAFaceOffThatHangsByOneEdge) {
  RawMesh mesh = shapes::egg_limb();
  const auto limb_faces = mesh.faces.rows();
  const int tip = shapes::append_vertex(mesh, 40.0, 0.0, -5.0);
  const int second_tip = shapes::append_vertex(mesh, 41.0, 2.0, -9.0);
  shapes::append_face(mesh, 1, 0, tip);  // a tongue of two faces on the distal rim
  shapes::append_face(mesh, 1, tip, second_tip);
  EXPECT_EQ(trim_rims(mesh.faces), 2);
  EXPECT_EQ(mesh.faces.rows(), limb_faces);
}

// A limb whose skin has two holes that meet at one vertex: of the six faces round it two opposite ones went,
// and so did all faces of the vertices beyond them.
RawMesh limb_with_touching_holes() {
  RawMesh mesh = shapes::egg_limb();
  const int vertex = 60 * 36 + 10;
  std::vector<int> dropped;
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    const auto has = [&](int v) { return (mesh.faces.row(f).array() == v).any(); };
    const bool round = has(vertex), beside = has(vertex - 1) || has(vertex + 1);
    if ((round && !beside) || has(vertex + 120) || has(vertex - 120)) dropped.push_back(f);
  }
  drop_faces(mesh, dropped);
  return mesh;
}

TEST(RimTrim, HolesThatTouchAtAPointBecomeOne) {
  RawMesh mesh = limb_with_touching_holes();
  EXPECT_GT(trim_rims(mesh.faces), 0);
  const auto loops = boundary_loops(mesh.faces);
  EXPECT_EQ(loops.size(), 3u);  // two ends and one hole
  for (const auto& loop : loops) EXPECT_EQ(std::set<int>(loop.begin(), loop.end()).size(), loop.size());
}

// Found on a synthetic scan: a patch tied twice to such a vertex, so that the surface folded there and the
// girth grew by three in a hundred.
TEST(RimTrim, LetsHolesThatTouchBeFilledWithoutAFold) {
  const auto mended =
      mend_body(limb_with_touching_holes(), {"scan", LengthUnit::kMillimetre, Vec3(0, 0, 1)}, {FillHoles{}});
  ASSERT_TRUE(mended.ok()) << mended.problem().message;
  EXPECT_EQ(mended->checked.report.open_ends.size(), 2u);
  EXPECT_TRUE(mended->checked.report.repairs.empty());
}

}  // namespace
}  // namespace wrapgauge
