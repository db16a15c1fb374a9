#include "bodyforms/ellipsoid_surface.hpp"

#include <cmath>
#include <map>
#include <utility>
#include <vector>

#include "bodyforms/section.hpp"
#include "model/geometry/plane_section.hpp"

namespace wrapgauge {
namespace {

struct Ball {
  std::vector<Vec3> points;  // on the unit sphere
  std::vector<std::array<int, 3>> faces;
};

// Poles at 0 and 11, two rings of five at the heights -1 / sqrt 5 and 1 / sqrt 5.
Ball icosahedron() {
  Ball ball;
  const double height = 1.0 / std::sqrt(5.0), radius = 2.0 / std::sqrt(5.0);
  ball.points.emplace_back(0.0, 0.0, -1.0);
  for (int ring = 0; ring < 2; ++ring)
    for (int k = 0; k < 5; ++k) {
      const double angle = kTurn * (k + 0.5 * ring) / 5.0;
      ball.points.emplace_back(radius * std::cos(angle), radius * std::sin(angle),
                               ring == 0 ? -height : height);
    }
  ball.points.emplace_back(0.0, 0.0, 1.0);
  for (int k = 0; k < 5; ++k) {
    const int a = 1 + k, b = 1 + (k + 1) % 5, c = 6 + k, d = 6 + (k + 1) % 5;
    ball.faces.push_back({0, b, a});
    ball.faces.push_back({a, b, c});
    ball.faces.push_back({b, d, c});
    ball.faces.push_back({c, d, 11});
  }
  return ball;
}

Ball halved(const Ball& ball) {
  Ball finer{ball.points, {}};
  std::map<std::pair<int, int>, int> middles;
  const auto middle = [&](int a, int b) {
    const auto [found, added] = middles.emplace(std::minmax(a, b), static_cast<int>(finer.points.size()));
    if (added) finer.points.push_back((ball.points[a] + ball.points[b]).normalized());
    return found->second;
  };
  for (const auto& [a, b, c] : ball.faces) {
    const int ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
    for (const std::array<int, 3>& face : {std::array{a, ab, ca}, {b, bc, ab}, {c, ca, bc}, {ab, bc, ca}})
      finer.faces.push_back(face);
  }
  return finer;
}

TriangleMesh stretched(const Ball& ball, const Vec3& half_axes_m) {
  TriangleMesh mesh;
  mesh.vertices_m.resize(static_cast<Eigen::Index>(ball.points.size()), 3);
  mesh.faces.resize(static_cast<Eigen::Index>(ball.faces.size()), 3);
  for (std::size_t i = 0; i < ball.points.size(); ++i)
    mesh.vertices_m.row(static_cast<Eigen::Index>(i)) =
        half_axes_m.cwiseProduct(ball.points[i] + Vec3::UnitZ());
  for (std::size_t i = 0; i < ball.faces.size(); ++i)
    mesh.faces.row(static_cast<Eigen::Index>(i)) << ball.faces[i][0], ball.faces[i][1], ball.faces[i][2];
  return mesh;
}

double middle_girth_m(const TriangleMesh& mesh, double height_m) {
  double sum = 0.0;
  for (const SectionLine& line : plane_section(mesh, Vec3(0.0, 0.0, height_m), Vec3::UnitZ()))
    sum += line.length().si();
  return sum;
}

}  // namespace

TriangleMesh ellipsoid_surface(const EllipsoidShape& shape) {
  const double radius = shape.girth.si() / kTurn, half_length = 0.5 * shape.length.si();
  constexpr double kIcosahedronEdge = 1.0515;  // on the unit sphere; derived: 1 / sin(72 degrees)
  Ball ball = icosahedron();
  for (double edge = kIcosahedronEdge * radius; edge > shape.edge.si(); edge *= 0.5) ball = halved(ball);
  TriangleMesh mesh = stretched(ball, {shape.aspect * radius, radius, half_length});
  const double scale = shape.girth.si() / middle_girth_m(mesh, half_length);
  mesh.vertices_m.leftCols<2>() *= scale;
  return mesh;
}

}  // namespace wrapgauge
