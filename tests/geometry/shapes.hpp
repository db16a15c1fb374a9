#pragma once
// Small closed-form surfaces for the geometry and wrap tests.

#include <cmath>
#include <numbers>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge::shapes {

// Side of a cone or cylinder about z with open ends, outward normals; vertices lie on the true surface.
inline TriangleMesh tube(double radius_low_m, double radius_high_m, double height_m, int around, int along) {
  TriangleMesh mesh;
  mesh.vertices_m.resize(around * (along + 1), 3);
  mesh.faces.resize(2 * around * along, 3);
  for (int j = 0; j <= along; ++j) {
    const double share = static_cast<double>(j) / along;
    const double radius = radius_low_m + share * (radius_high_m - radius_low_m);
    for (int i = 0; i < around; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / around;
      mesh.vertices_m.row(j * around + i) << radius * std::cos(angle), radius * std::sin(angle),
          share * height_m;
    }
  }
  int face = 0;
  for (int j = 0; j < along; ++j) {
    for (int i = 0; i < around; ++i) {
      const int a = j * around + i, b = j * around + (i + 1) % around, c = a + around, d = b + around;
      mesh.faces.row(face++) << a, b, d;
      mesh.faces.row(face++) << a, d, c;
    }
  }
  return mesh;
}

// Sphere of `rings` bands between the poles.
inline TriangleMesh sphere(double radius_m, int rings, int around) {
  TriangleMesh mesh;
  mesh.vertices_m.resize((rings - 1) * around + 2, 3);
  mesh.faces.resize(2 * (rings - 1) * around, 3);
  const int south = (rings - 1) * around, north = south + 1;
  mesh.vertices_m.row(south) << 0, 0, -radius_m;
  mesh.vertices_m.row(north) << 0, 0, radius_m;
  for (int j = 1; j < rings; ++j) {
    const double polar = std::numbers::pi * (1.0 - static_cast<double>(j) / rings);
    for (int i = 0; i < around; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / around;
      mesh.vertices_m.row((j - 1) * around + i) << radius_m * std::sin(polar) * std::cos(angle),
          radius_m * std::sin(polar) * std::sin(angle), radius_m * std::cos(polar);
    }
  }
  int face = 0;
  for (int i = 0; i < around; ++i) {
    const int next = (i + 1) % around;
    mesh.faces.row(face++) << south, next, i;
    mesh.faces.row(face++) << north, (rings - 2) * around + i, (rings - 2) * around + next;
    for (int j = 0; j + 2 < rings; ++j) {
      const int a = j * around + i, b = j * around + next, c = a + around, d = b + around;
      mesh.faces.row(face++) << a, b, d;
      mesh.faces.row(face++) << a, d, c;
    }
  }
  return mesh;
}

}  // namespace wrapgauge::shapes
