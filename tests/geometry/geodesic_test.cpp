#include "model/geometry/geodesic.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

double prism_girth(double radius, int around) {
  return 2.0 * around * radius * std::sin(std::numbers::pi / around);
}

TEST(Geodesic, RoundAPrismComesBackAfterItsGirth) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 60, 33);
  const GeodesicTracer tracer(mesh);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.05, 0.0013, 0.1003));
  const GeodesicPath path = tracer.trace(start, Vec3::UnitY(), prism_girth(0.04, 60));
  EXPECT_EQ(path.missing_m, 0.0);
  EXPECT_LT((path.end.point_m - start.point_m).norm(), 1e-12);
}

TEST(Geodesic, OnAPrismIsAHelix) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.4, 60, 33);
  const GeodesicTracer tracer(mesh);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.05, 0.0013, 0.05));
  const Vec3 tangent = Vec3::UnitZ().cross(tracer.face_normal(start.face));
  const double girth = prism_girth(0.04, 60), climb = 0.3;
  const double length = std::hypot(girth, climb);
  const GeodesicPath path = tracer.trace(start, girth * tangent + climb * Vec3::UnitZ(), length);
  EXPECT_EQ(path.missing_m, 0.0);
  EXPECT_LT((path.end.point_m - start.point_m - Vec3(0, 0, climb)).norm(), 1e-11);
  EXPECT_NEAR(path.length_m(), length, 1e-12);
  EXPECT_NEAR(path.at(length / 3).z(), 0.05 + climb / 3, 1e-11);
}

// On a cone the geodesic is a straight line of the developed sector: from slant distance s, started
// perpendicular to the generator, it is at slant distance hypot(s, length) after turning by atan(length / s)
// in the sector.
TEST(Geodesic, OnAConeIsAStraightLineOfItsDevelopment) {
  const double low = 0.03, high = 0.05, height = 0.25;
  const TriangleMesh mesh = shapes::tube(low, high, height, 720, 50);
  const double sine = (high - low) / std::hypot(high - low, height);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.036, 0, 0.05));
  const double slant = start.point_m.head<2>().norm() / sine;
  const GeodesicPath path = GeodesicTracer(mesh).trace(start, Vec3::UnitY(), 0.1);
  ASSERT_EQ(path.missing_m, 0.0);
  for (double arc : {0.02, 0.05, 0.1}) {
    const Vec3 point = path.at(arc);
    EXPECT_NEAR(point.head<2>().norm() / sine, std::hypot(slant, arc), 2e-5);
    EXPECT_NEAR(std::atan2(point.y(), point.x()), std::atan(arc / slant) / sine, 5e-4);
  }
}

TEST(Geodesic, OnASphereIsAGreatCircle) {
  const TriangleMesh mesh = shapes::sphere(0.05, 160, 320);
  const GeodesicTracer tracer(mesh);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.05, 0.01, 0.005));
  const Vec3 tangent = Vec3(0.0, 1.0, 1.0);
  const Vec3 plane = start.point_m.cross(tangent).normalized();
  const GeodesicPath path = tracer.trace(start, tangent, 0.12);
  for (double arc : {0.03, 0.06, 0.12}) EXPECT_LT(std::abs(path.at(arc).dot(plane)), 4e-4);
}

TEST(Geodesic, SaysHowMuchIsMissingWhenItRunsOffTheSurface) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 60, 33);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.05, 0.0013, 0.15));
  const GeodesicPath path = GeodesicTracer(mesh).trace(start, Vec3::UnitZ(), 0.08);
  EXPECT_NEAR(path.missing_m, 0.03, 1e-12);
  EXPECT_NEAR(path.length_m(), 0.05, 1e-12);
  EXPECT_NEAR(path.end.point_m.z(), 0.2, 1e-12);
}

TEST(Geodesic, AlongAnEdgeAndThroughVerticesStaysStraight) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 60, 20);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.04, 0.0, 0.02));  // a vertex
  const GeodesicPath up = GeodesicTracer(mesh).trace(start, Vec3::UnitZ(), 0.15);
  EXPECT_LT((up.end.point_m - Vec3(0.04, 0.0, 0.17)).norm(), 1e-10);
  const GeodesicPath round = GeodesicTracer(mesh).trace(start, Vec3::UnitY(), prism_girth(0.04, 60));
  EXPECT_LT((round.end.point_m - start.point_m).norm(), 4e-3);  // one facet's slant at the starting vertex
}

TEST(Geodesic, PiecesLieInTheFacesTheyName) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.05, 0.2, 40, 20);
  const SurfacePoint start = NearestPoint(mesh).at(Vec3(0.05, 0.0013, 0.1));
  const GeodesicPath path = GeodesicTracer(mesh).trace(start, Vec3(0, 1, 0.2), 0.1);
  ASSERT_EQ(path.faces.size() + 1, path.points_m.size());
  for (std::size_t i = 0; i < path.faces.size(); ++i) {
    const Vec3 corner = mesh.vertices_m.row(mesh.faces(path.faces[i], 0));
    const Vec3 normal = GeodesicTracer(mesh).face_normal(path.faces[i]);
    EXPECT_NEAR((path.points_m[i] - corner).dot(normal), 0.0, 1e-13);
    EXPECT_NEAR((path.points_m[i + 1] - corner).dot(normal), 0.0, 1e-13);
  }
}

}  // namespace
}  // namespace wrapgauge
