#include "model/geometry/nearest_point.hpp"

#include <gtest/gtest.h>

#include <Eigen/Cholesky>
#include <algorithm>
#include <random>
#include <vector>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

// Distance to one triangle by trying its interior, edges and corners in turn: slow, and written another way.
double plain_distance(const Vec3& a, const Vec3& b, const Vec3& c, const Vec3& p) {
  const auto to_segment = [&](const Vec3& from, const Vec3& to) {
    const double t = std::clamp((p - from).dot(to - from) / (to - from).squaredNorm(), 0.0, 1.0);
    return (from + t * (to - from) - p).norm();
  };
  double best = std::min({to_segment(a, b), to_segment(b, c), to_segment(c, a)});
  Eigen::Matrix<double, 3, 2> edges;
  edges << b - a, c - a;
  const Vec2 weights = (edges.transpose() * edges).ldlt().solve(edges.transpose() * (p - a));
  if (weights.minCoeff() >= 0.0 && weights.sum() <= 1.0)
    best = std::min(best, (a + edges * weights - p).norm());
  return best;
}

double plain_distance(const TriangleMesh& mesh, int face, const Vec3& p) {
  return plain_distance(mesh.vertices_m.row(mesh.faces(face, 0)), mesh.vertices_m.row(mesh.faces(face, 1)),
                        mesh.vertices_m.row(mesh.faces(face, 2)), p);
}

TriangleMesh limb() {
  return shapes::tube(0.03, 0.045, 0.1, 31, 17);
}

// In and about limb().
std::vector<Vec3> scattered_points(unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> spread(-0.08, 0.12);
  std::vector<Vec3> points;
  for (int i = 0; i < 400; ++i) points.emplace_back(spread(random), spread(random), spread(random));
  return points;
}

TEST(NearestPoint, AgreesWithTryingEveryFace) {
  const TriangleMesh mesh = limb();
  const NearestPoint nearest(mesh);
  int likely = 0;
  for (const Vec3& point : scattered_points(7)) {
    double expected = 1e9;
    for (int face = 0; face < mesh.faces.rows(); ++face)
      expected = std::min(expected, plain_distance(mesh, face, point));
    const SurfacePoint found = nearest.at(point);
    EXPECT_NEAR(found.distance_m, expected, 1e-15);
    EXPECT_NEAR((found.point_m - point).norm(), expected, 1e-15);
    EXPECT_EQ(found.distance_m, nearest.at(point, likely++ % static_cast<int>(mesh.faces.rows())).distance_m);
    Vec3 mixed = Vec3::Zero();
    for (int corner = 0; corner < 3; ++corner)
      mixed += found.barycentric[corner] * mesh.vertices_m.row(mesh.faces(found.face, corner)).transpose();
    EXPECT_LT((mixed - found.point_m).norm(), 1e-15);
    EXPECT_GE(found.barycentric.minCoeff(), 0.0);
    EXPECT_NEAR(found.barycentric.sum(), 1.0, 1e-14);
  }
}

TEST(NearestPoint, WithinAReachIsTheNearestOrNothing) {
  const TriangleMesh mesh = limb();
  const NearestPoint nearest(mesh);
  for (const Vec3& point : scattered_points(8)) {
    const double distance = nearest.at(point).distance_m;
    for (const double reach : {0.9 * distance, 1.1 * distance}) {
      const auto found = nearest.within(point, reach);
      EXPECT_EQ(found.has_value(), distance < reach);
      EXPECT_EQ(nearest.is_within(point, reach), distance < reach);
      if (found) {
        EXPECT_EQ(found->distance_m, distance);
      }
    }
  }
}

TEST(NearestPoint, FacesNearAPointAreAllThere) {
  constexpr double kReach = 0.01;
  const TriangleMesh mesh = limb();
  const NearestPoint nearest(mesh);
  const Vec3 point = mesh.vertices_m.row(100);
  std::vector<int> near = nearest.near(point, kReach);
  std::sort(near.begin(), near.end());
  EXPECT_EQ(std::adjacent_find(near.begin(), near.end()), near.end());
  EXPECT_LT(near.size(), static_cast<std::size_t>(mesh.faces.rows()) / 2);
  for (int face = 0; face < mesh.faces.rows(); ++face)
    if (plain_distance(mesh, face, point) < kReach) {
      EXPECT_TRUE(std::binary_search(near.begin(), near.end(), face)) << face;
    }
}

TEST(NearestPoint, AtAVertexIsThatVertex) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.045, 0.1, 12, 5);
  const NearestPoint nearest(mesh);
  for (int vertex = 0; vertex < mesh.vertices_m.rows(); ++vertex) {
    const SurfacePoint found = nearest.at(mesh.vertices_m.row(vertex));
    EXPECT_LT(found.distance_m, 1e-16);
    int corner = 0;
    EXPECT_NEAR(found.barycentric.maxCoeff(&corner), 1.0, 1e-12);
    EXPECT_EQ(mesh.faces(found.face, corner), vertex);
  }
}

TEST(NearestPoint, WorksOnASingleFace) {
  TriangleMesh mesh;
  mesh.vertices_m.resize(3, 3);
  mesh.vertices_m << 0, 0, 0, 1, 0, 0, 0, 1, 0;
  mesh.faces.resize(1, 3);
  mesh.faces << 0, 1, 2;
  const SurfacePoint found = NearestPoint(mesh).at(Vec3(2, 2, 1));
  EXPECT_EQ(found.barycentric[0], 0.0);
  EXPECT_NEAR(found.distance_m, std::sqrt(1.5 * 1.5 * 2 + 1), 1e-14);
}

}  // namespace
}  // namespace wrapgauge
