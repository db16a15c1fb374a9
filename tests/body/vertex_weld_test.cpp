#include "model/body/vertex_weld.hpp"

#include <gtest/gtest.h>

#include <random>

#include "model/body/union_find.hpp"

namespace wrapgauge {
namespace {

// Faces between random places of a room of 1, every corner a vertex of its own, some of them a little off.
struct Soup {
  Points3 vertices;
  Triangles faces;
};

Soup soup(double off) {
  std::mt19937 random(12);
  std::uniform_real_distribution<double> share(-0.5, 0.5);
  Points3 places(40, 3);
  for (int i = 0; i < places.size(); ++i) places.data()[i] = share(random);
  places.row(3) << 0.0, 0.25, 0.0;
  Soup result;
  result.vertices.resize(600, 3);
  result.faces.resize(200, 3);
  for (int corner = 0; corner < 600; ++corner) {
    const int place = static_cast<int>(random() % 40);
    result.vertices.row(corner) = places.row(place);
    if (place == 3 && corner % 2 == 0) result.vertices(corner, 0) = -0.0;
    if (corner % 5 == 0) result.vertices(corner, corner % 3) += off * share(random);
    result.faces.data()[corner] = corner;
  }
  return result;
}

// Every pair measured.
Triangles welded_by_all_pairs(const Soup& soup, double distance) {
  UnionFind groups(static_cast<int>(soup.vertices.rows()));
  for (int a = 0; a < soup.vertices.rows(); ++a)
    for (int b = a + 1; b < soup.vertices.rows(); ++b)
      if ((soup.vertices.row(a) - soup.vertices.row(b)).norm() <= distance) groups.join(a, b);
  Triangles faces = soup.faces;
  for (int i = 0; i < faces.size(); ++i) faces.data()[i] = groups.root(faces.data()[i]);
  return faces;
}

TEST(VertexWeld, JoinsTheSameVerticesAsMeasuringEveryPair) {
  for (const double off : {0.0, 1e-7, 1e-2}) {
    const Soup given = soup(off);
    const double size = (given.vertices.colwise().maxCoeff() - given.vertices.colwise().minCoeff()).norm();
    Triangles faces = given.faces;
    const int replaced = weld_vertices(given.vertices, faces);
    EXPECT_EQ(faces, welded_by_all_pairs(given, 1e-6 * size)) << off;
    EXPECT_EQ(replaced, 600 - (off > 1e-3 ? 40 + 120 : 40)) << off;
  }
}

}  // namespace
}  // namespace wrapgauge
