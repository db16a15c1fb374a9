#pragma once
// What a scanner makes of a limb: noise, holes, crumbs, a table, another pose. Millimetres.

#include <Eigen/Geometry>
#include <random>
#include <vector>

#include "model/body/raw_mesh.hpp"
#include "tests/body/shapes.hpp"

namespace wrapgauge::shapes {

// Numbers the standard fixes: the same on every machine.
class Noise {
 public:
  // About normal: the sum of twelve even ones.
  double normal(double sigma) {
    double sum = -6.0;
    for (int i = 0; i < 12; ++i) sum += even();
    return sigma * sum;
  }
  double even() { return static_cast<double>(random_()) / 4294967296.0; }

 private:
  std::mt19937 random_{99};
};

// A limb whose section is egg-shaped, so that it has one way round only.
inline RawMesh egg_limb(double length = 240.0, int around = 60, int along = 72) {
  RawMesh mesh = limb(30.0, 45.0, length, around, along);
  for (Eigen::Index v = 0; v < mesh.vertices.rows(); ++v) {
    const double angle = std::atan2(mesh.vertices(v, 1), mesh.vertices(v, 0));
    const double factor =
        1.0 + 0.15 * std::cos(2.0 * angle) + 0.06 * std::cos(angle) + 0.05 * std::sin(3.0 * angle);
    mesh.vertices(v, 0) *= factor;
    mesh.vertices(v, 1) *= factor;
  }
  return mesh;
}

inline void add_noise(RawMesh& mesh, double sigma) {
  Noise noise;
  for (double& x : mesh.vertices.reshaped()) x += noise.normal(sigma);
}

// Takes out the faces whose first corner lies within `radius` of a vertex.
inline void punch_hole(RawMesh& mesh, Eigen::Index vertex, double radius) {
  const Eigen::RowVector3d centre = mesh.vertices.row(vertex);
  Eigen::Index kept = 0;
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f)
    if ((mesh.vertices.row(mesh.faces(f, 0)) - centre).norm() > radius)
      mesh.faces.row(kept++) = mesh.faces.row(f).eval();
  mesh.faces.conservativeResize(kept, 3);
}

inline void add_crumbs(RawMesh& mesh, int count) {
  Noise noise;
  for (int i = 0; i < count; ++i) {
    const double x = 90.0 + 40.0 * noise.even(), y = 60.0 * noise.even(), z = 240.0 * noise.even();
    const int a = append_vertex(mesh, x, y, z), b = append_vertex(mesh, x + 4.0, y, z),
              c = append_vertex(mesh, x, y + 4.0, z + 2.0);
    append_face(mesh, a, b, c);
  }
}

// A table below the limb, parallel to its axis, `gap` below its lowest point, squares with noise.
inline void add_table(RawMesh& mesh, double gap, double sigma, double square = 5.0) {
  Noise noise;
  const double y = mesh.vertices.col(1).minCoeff() - gap;
  const int across = 50, along = 64;
  const int first = static_cast<int>(mesh.vertices.rows());
  for (int j = 0; j <= along; ++j)
    for (int i = 0; i <= across; ++i)
      append_vertex(mesh, square * (i - 25), y + noise.normal(sigma), square * (j - 8));
  for (int j = 0; j < along; ++j)
    for (int i = 0; i < across; ++i) {
      const int a = first + j * (across + 1) + i;
      append_face(mesh, a, a + across + 1, a + 1);
      append_face(mesh, a + 1, a + across + 1, a + across + 2);
    }
}

inline RawMesh moved(RawMesh mesh, double angle, const Vec3& axis, const Vec3& shift) {
  const Mat3 rotation = Eigen::AngleAxisd(angle, axis.normalized()).toRotationMatrix();
  mesh.vertices = (mesh.vertices * rotation.transpose()).rowwise() + shift.transpose();
  return mesh;
}

// A scan of a clean limb that stands along z: noise, up to eight holes of 5 to 12 mm radius, 20 crumbs, a
// table if wanted, and another pose.
inline RawMesh scan_of_limb(RawMesh limb, double noise_mm, bool on_table) {
  limb.vertices.rowwise() -= Eigen::RowVector3d(limb.vertices.col(0).mean(), limb.vertices.col(1).mean(),
                                                limb.vertices.col(2).minCoeff());
  const double length = limb.vertices.col(2).maxCoeff();
  const auto vertices = static_cast<double>(limb.vertices.rows());
  add_noise(limb, noise_mm);
  Noise draw;
  for (int i = 0; i < 8; ++i) {
    const auto vertex = static_cast<Eigen::Index>(draw.even() * vertices);
    const double station = limb.vertices(vertex, 2);
    if (station > 30.0 && station < length - 30.0) punch_hole(limb, vertex, 5.0 + 7.0 * draw.even());
  }
  add_crumbs(limb, 20);
  if (on_table) add_table(limb, 4.0, 0.4);
  return moved(std::move(limb), 2.1 + noise_mm, {1.0, 0.3, -0.7}, {210.0, -90.0, 500.0});
}

}  // namespace wrapgauge::shapes
