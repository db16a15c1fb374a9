#include "model/geometry/mesh_topology.hpp"

#include <gtest/gtest.h>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

TEST(MeshTopology, NeighboursShareTheEdgeAndPointBackAtEachOther) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.04, 0.1, 12, 5);
  const MeshTopology topology(mesh);
  int open_sides = 0;
  for (int face = 0; face < mesh.faces.rows(); ++face) {
    for (int side = 0; side < 3; ++side) {
      const auto other = topology.across(face, side);
      if (!other) {
        ++open_sides;
        EXPECT_TRUE(topology.on_boundary(mesh.faces(face, side)));
        continue;
      }
      EXPECT_EQ(mesh.faces(face, side), mesh.faces(other->face, (other->side + 1) % 3));
      EXPECT_EQ(mesh.faces(face, (side + 1) % 3), mesh.faces(other->face, other->side));
      EXPECT_EQ(topology.across(other->face, other->side)->face, face);
    }
  }
  EXPECT_EQ(open_sides, 24);
  EXPECT_FALSE(topology.on_boundary(12));
  EXPECT_EQ(topology.faces_at(12).size(), 6u);
  EXPECT_EQ(topology.faces_at(0).size(), 3u);
}

TEST(MeshTopology, AThirdFaceOnAnEdgeMakesItABoundary) {
  TriangleMesh fin;
  fin.vertices_m = Points3::Random(5, 3);
  fin.faces.resize(3, 3);
  fin.faces << 0, 1, 2, 1, 0, 3, 0, 1, 4;
  const MeshTopology topology(fin);
  for (int face = 0; face < 3; ++face) EXPECT_FALSE(topology.across(face, 0).has_value());
}

TEST(VertexNormals, OfASphereAreRadial) {
  const TriangleMesh mesh = shapes::sphere(0.05, 40, 80);
  const Points3 normals = vertex_normals(mesh);
  for (int vertex = 0; vertex < normals.rows(); ++vertex)
    EXPECT_LT((normals.row(vertex) - mesh.vertices_m.row(vertex).normalized()).norm(), 5e-3);
}

TEST(VertexNormals, DoNotDependOnHowACornerIsSplitIntoFaces) {
  TriangleMesh cube_corner;  // three unit squares meeting at the origin, one of them split through the corner
  cube_corner.vertices_m.resize(7, 3);
  cube_corner.vertices_m << 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 1, 1, 0, 1, 0, 1, 0, 1, 1;
  cube_corner.faces.resize(4, 3);
  cube_corner.faces << 0, 1, 4, 0, 4, 2, 0, 3, 1, 0, 2, 3;
  const Vec3 normal = vertex_normals(cube_corner).row(0);
  EXPECT_LT((normal - Vec3(1, 1, 1).normalized()).norm(), 1e-12);
}

}  // namespace
}  // namespace wrapgauge
