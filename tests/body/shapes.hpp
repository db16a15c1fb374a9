#pragma once
// Small bodies in millimetres for the body tests.

#include <cmath>
#include <numbers>

#include "model/body/raw_mesh.hpp"

namespace wrapgauge::shapes {

// An open cone frustum about z, outward normals; as many rows as keep faces about square.
inline RawMesh limb(double radius_low = 30.0, double radius_high = 40.0, double length = 240.0,
                    int around = 48, int along = 60) {
  RawMesh mesh;
  mesh.vertices.resize(around * (along + 1), 3);
  mesh.faces.resize(2 * around * along, 3);
  int face = 0;
  for (int j = 0; j <= along; ++j)
    for (int i = 0; i < around; ++i) {
      const double share = static_cast<double>(j) / along, angle = 2.0 * std::numbers::pi * i / around;
      const double radius = radius_low + share * (radius_high - radius_low);
      const int a = j * around + i, b = j * around + (i + 1) % around;
      mesh.vertices.row(a) << radius * std::cos(angle), radius * std::sin(angle), share * length;
      if (j == along) continue;
      mesh.faces.row(face++) << a, b, b + around;
      mesh.faces.row(face++) << a, b + around, a + around;
    }
  return mesh;
}

// Every face with three vertices of its own.
inline RawMesh unwelded(const RawMesh& mesh) {
  RawMesh soup;
  soup.vertices.resize(mesh.faces.size(), 3);
  soup.faces.resize(mesh.faces.rows(), 3);
  for (int i = 0; i < mesh.faces.size(); ++i) {
    soup.vertices.row(i) = mesh.vertices.row(mesh.faces.data()[i]);
    soup.faces.data()[i] = i;
  }
  return soup;
}

inline void append_face(RawMesh& mesh, int a, int b, int c) {
  mesh.faces.conservativeResize(mesh.faces.rows() + 1, 3);
  mesh.faces.bottomRows(1) << a, b, c;
}

inline int append_vertex(RawMesh& mesh, double x, double y, double z) {
  mesh.vertices.conservativeResize(mesh.vertices.rows() + 1, 3);
  mesh.vertices.bottomRows(1) << x, y, z;
  return static_cast<int>(mesh.vertices.rows()) - 1;
}

inline void append_mesh(RawMesh& mesh, const RawMesh& other, double dx) {
  const int vertices = static_cast<int>(mesh.vertices.rows()), faces = static_cast<int>(mesh.faces.rows());
  mesh.vertices.conservativeResize(vertices + other.vertices.rows(), 3);
  mesh.vertices.bottomRows(other.vertices.rows()) = other.vertices;
  mesh.vertices.bottomRows(other.vertices.rows()).col(0).array() += dx;
  mesh.faces.conservativeResize(faces + other.faces.rows(), 3);
  mesh.faces.bottomRows(other.faces.rows()) = other.faces.array() + vertices;
}

}  // namespace wrapgauge::shapes
