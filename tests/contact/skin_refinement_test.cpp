#include "model/contact/skin_refinement.hpp"

#include <gtest/gtest.h>

#include <map>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

double area_m2(const TriangleMesh& mesh) {
  return triangle_areas_m2(mesh).sum();
}

int open_edges(const TriangleMesh& mesh) {
  std::map<std::pair<int, int>, int> uses;
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f)
    for (int k = 0; k < 3; ++k) {
      const int a = mesh.faces(f, k), b = mesh.faces(f, (k + 1) % 3);
      uses[std::minmax(a, b)] += a < b ? 1 : -1;
    }
  int open = 0;
  for (const auto& [edge, count] : uses) open += count != 0 ? 1 : 0;
  return open;
}

TEST(SkinRefinement, KeepsAreaAndStaysWithoutHoles) {
  const TriangleMesh body = hand_made::tube(0.04, 0.0, 0.2, 24, 9);
  const auto near = [](const Vec3& centre, double radius) {
    return (centre - Vec3(0.04, 0.0, 0.1)).norm() < 0.03 + radius;
  };
  const TriangleMesh skin = refined_where(body, near);
  EXPECT_GT(skin.faces.rows(), body.faces.rows());
  EXPECT_NEAR(area_m2(skin), area_m2(body), 1e-12);
  // Away from the layout nothing is split, so the two open ends keep their edges.
  EXPECT_EQ(open_edges(skin), open_edges(body));
}

TEST(SkinRefinement, LeavesNoLongEdgeNearTheLayout) {
  const TriangleMesh body = hand_made::tube(0.04, 0.0, 0.2, 24, 9);
  const auto near = [](const Vec3& centre, double radius) {
    return (centre - Vec3(0.04, 0.0, 0.1)).norm() < 0.03 + radius;
  };
  const TriangleMesh skin = refined_where(body, near, 2e-3);
  for (Eigen::Index f = 0; f < skin.faces.rows(); ++f)
    for (int k = 0; k < 3; ++k) {
      const Vec3 a = skin.vertices_m.row(skin.faces(f, k)),
                 b = skin.vertices_m.row(skin.faces(f, (k + 1) % 3));
      if (near(a, 0.0) && near(b, 0.0)) {
        EXPECT_LE((a - b).norm(), 2e-3);
      }
    }
}

TEST(SkinRefinement, OfNothingNearIsTheBodyItself) {
  const TriangleMesh body = hand_made::tube(0.04, 0.0, 0.2, 24, 9);
  const TriangleMesh skin = refined_where(body, [](const Vec3&, double) { return false; });
  EXPECT_EQ(skin.vertices_m, body.vertices_m);
  EXPECT_EQ(skin.faces, body.faces);
}

}  // namespace
}  // namespace wrapgauge
